#pragma once
// The SDK's header of this name holds the sizes of the machine that it was packed for. These are those of 64-bit Windows.

#define SAL_TYPES_ALIGNMENT2 2
#define SAL_TYPES_ALIGNMENT4 4
#define SAL_TYPES_ALIGNMENT8 8
#define SAL_TYPES_SIZEOFSHORT 2
#define SAL_TYPES_SIZEOFINT 4
#define SAL_TYPES_SIZEOFLONG 4
#define SAL_TYPES_SIZEOFLONGLONG 8
#define SAL_TYPES_SIZEOFPOINTER 8
