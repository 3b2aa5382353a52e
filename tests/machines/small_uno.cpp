// So much of LibreOffice's runtime as the add-in's library needs to be loaded and called: the functions of
// extension/machines/uno_functions.txt, for values of the kinds that cells hold. It stands for cppu and for sal, so
// that the library can be tried on machines for which there is no LibreOffice here.

#include <rtl/string.h>
#include <rtl/ustring.h>
#include <typelib/typedescription.h>
#include <uno/any2.h>
#include <uno/data.h>
#include <uno/dispatcher.h>
#include <uno/sequence2.h>

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <cstring>
#include <string>
#include <string_view>

using TypeReference = typelib_TypeDescriptionReference;

namespace {

template <class Thing> Thing& at(void* place) {
    return *static_cast<Thing*>(place);
}
template <class Thing> Thing const& at(void const* place) {
    return *static_cast<Thing const*>(place);
}

template <class Text, class Letter> Text* new_text(Letter const* letters, std::size_t length) {
    auto* const text = static_cast<Text*>(std::malloc(sizeof(Text) + length * sizeof(Letter)));
    text->refCount = 1;
    text->length = sal_Int32(length);
    std::copy_n(letters, length, text->buffer);
    text->buffer[length] = 0;
    return text;
}

template <class Text> void let_go(Text* text) {
    if (text != nullptr && --text->refCount == 0)
        std::free(text);
}

std::u16string name_of(TypeReference const* type) {
    return {reinterpret_cast<char16_t const*>(type->pTypeName->buffer), std::size_t(type->pTypeName->length)};
}

TypeReference* new_type(typelib_TypeClass kind, char const* name) {
    auto* const type = static_cast<TypeReference*>(std::calloc(1, sizeof(TypeReference)));
    type->nRefCount = 1;
    type->eTypeClass = kind;
    rtl_uString_newFromAscii(&type->pTypeName, name);
    return type;
}

/// Of what a sequence is.
typelib_TypeClass element_of(TypeReference const* sequence) {
    std::u16string const element = name_of(sequence).substr(2);
    if (element.starts_with(u"[]"))
        return typelib_TypeClass_SEQUENCE;
    if (element == u"any")
        return typelib_TypeClass_ANY;
    if (element == u"string")
        return typelib_TypeClass_STRING;
    if (element == u"type")
        return typelib_TypeClass_TYPE;
    return typelib_TypeClass_DOUBLE;
}

std::size_t size_of(typelib_TypeClass kind) {
    return kind == typelib_TypeClass_ANY ? sizeof(uno_Any) : sizeof(void*);
}

TypeReference* type_of_elements(TypeReference const* sequence);
void destruct(void* value, TypeReference* type);

void set_void(uno_Any& any) {
    any.pType = *typelib_static_type_getByTypeClass(typelib_TypeClass_VOID);
    any.pData = any.pReserved = nullptr;
}

uno_Sequence* new_sequence(TypeReference const* type, std::size_t length) {
    typelib_TypeClass const kind = element_of(type);
    auto* const sequence =
        static_cast<uno_Sequence*>(std::calloc(1, offsetof(uno_Sequence, elements) + (length + 1) * size_of(kind)));
    sequence->nRefCount = 1;
    sequence->nElements = sal_Int32(length);
    for (std::size_t i = 0; i < length; ++i) {
        char* const place = sequence->elements + i * size_of(kind);
        if (kind == typelib_TypeClass_ANY)
            set_void(at<uno_Any>(place));
        else if (kind == typelib_TypeClass_STRING)
            rtl_uString_new(&at<rtl_uString*>(place));
        else if (kind == typelib_TypeClass_SEQUENCE)
            at<uno_Sequence*>(place) = new_sequence(type_of_elements(type), 0);
    }
    return sequence;
}

/// A value that is not there yet gets a share of another one's.
void copy(void* to, void const* from, TypeReference* type) {
    switch (type->eTypeClass) {
    case typelib_TypeClass_STRING:
        at<rtl_uString*>(to) = at<rtl_uString*>(from);
        ++at<rtl_uString*>(to)->refCount;
        return;
    case typelib_TypeClass_SEQUENCE:
        at<uno_Sequence*>(to) = at<uno_Sequence*>(from);
        ++at<uno_Sequence*>(to)->nRefCount;
        return;
    case typelib_TypeClass_INTERFACE:
        at<uno_Interface*>(to) = at<uno_Interface*>(from);
        at<uno_Interface*>(to)->acquire(at<uno_Interface*>(to));
        return;
    case typelib_TypeClass_DOUBLE:
        at<double>(to) = at<double>(from);
        return;
    default: // an exception: nobody looks into it here
        at<void*>(to) = nullptr;
    }
}

/// What it holds stands apart from the any, which so can be moved.
void construct(uno_Any& any, void const* source, TypeReference* type) {
    if (type == nullptr || type->eTypeClass == typelib_TypeClass_VOID)
        return set_void(any);
    any.pType = type;
    ++type->nRefCount;
    any.pData = std::malloc(sizeof(void*));
    copy(any.pData, source, type);
}

void destruct_any(uno_Any& any) {
    if (any.pType->eTypeClass == typelib_TypeClass_VOID)
        return;
    destruct(any.pData, any.pType);
    std::free(any.pData);
    typelib_typedescriptionreference_release(any.pType);
}

void free_sequence(uno_Sequence* sequence, TypeReference const* type) {
    if (sequence == nullptr || --sequence->nRefCount > 0)
        return;
    typelib_TypeClass const kind = element_of(type);
    for (sal_Int32 i = 0; i < sequence->nElements; ++i)
        destruct(sequence->elements + std::size_t(i) * size_of(kind), type_of_elements(type));
    std::free(sequence);
}

void destruct(void* value, TypeReference* type) {
    switch (type->eTypeClass) {
    case typelib_TypeClass_STRING:
        return let_go(at<rtl_uString*>(value));
    case typelib_TypeClass_SEQUENCE:
        return free_sequence(at<uno_Sequence*>(value), type);
    case typelib_TypeClass_ANY:
        return destruct_any(at<uno_Any>(value));
    case typelib_TypeClass_INTERFACE:
        return at<uno_Interface*>(value)->release(at<uno_Interface*>(value));
    default:
        return;
    }
}

TypeReference* type_of_elements(TypeReference const* sequence) {
    static TypeReference* const rows = new_type(typelib_TypeClass_SEQUENCE, "[]any");
    typelib_TypeClass const kind = element_of(sequence);
    return kind == typelib_TypeClass_SEQUENCE ? rows : *typelib_static_type_getByTypeClass(kind);
}

void append_letter(std::u16string& text, char32_t letter) {
    if (letter < 0x10000) {
        text += char16_t(letter);
        return;
    }
    text += char16_t(0xD800 + ((letter - 0x10000) >> 10U));
    text += char16_t(0xDC00 + ((letter - 0x10000) & 0x3FFU));
}

std::u16string utf16(std::string_view bytes) {
    std::u16string text;
    for (std::size_t i = 0; i < bytes.size();) {
        auto const first = static_cast<unsigned char>(bytes[i]);
        std::size_t const more = first < 0x80 ? 0 : first < 0xE0 ? 1 : first < 0xF0 ? 2 : 3;
        char32_t letter = more == 0 ? first : first & (0x3FU >> more);
        for (std::size_t k = 1; k <= more && i + k < bytes.size(); ++k)
            letter = letter << 6U | (static_cast<unsigned char>(bytes[i + k]) & 0x3FU);
        append_letter(text, letter);
        i += more + 1;
    }
    return text;
}

std::string utf8(std::u16string_view text) {
    std::string bytes;
    for (std::size_t i = 0; i < text.size(); ++i) {
        char32_t letter = text[i];
        if (letter >= 0xD800 && letter < 0xDC00 && i + 1 < text.size())
            letter = 0x10000 + ((letter - 0xD800) << 10U) + (text[++i] - 0xDC00U);
        int const more = letter < 0x80 ? 0 : letter < 0x800 ? 1 : letter < 0x10000 ? 2 : 3;
        constexpr unsigned char starts[] = {0, 0xC0, 0xE0, 0xF0};
        bytes += char(starts[more] | (letter >> (6U * unsigned(more))));
        for (int k = more; k-- > 0;)
            bytes += char(0x80 | ((letter >> (6U * unsigned(k))) & 0x3FU));
    }
    return bytes;
}

void assign_text(rtl_uString** place, std::u16string_view text) {
    let_go(*place);
    *place = new_text<rtl_uString>(reinterpret_cast<sal_Unicode const*>(text.data()), text.size());
}

} // namespace

extern "C" {

TypeReference** SAL_CALL typelib_static_type_getByTypeClass(typelib_TypeClass kind) {
    static TypeReference* types[64] = {};
    if (types[kind] == nullptr)
        types[kind] = new_type(kind, "any");
    return &types[kind];
}
void SAL_CALL typelib_typedescriptionreference_assign(TypeReference** to, TypeReference* from) {
    ++from->nRefCount;
    *to = from;
}
sal_Bool SAL_CALL typelib_typedescriptionreference_equals(TypeReference const* a, TypeReference const* b) {
    return a == b || (a->eTypeClass == b->eTypeClass && name_of(a) == name_of(b)) ? 1 : 0;
}
void SAL_CALL typelib_typedescriptionreference_newByAsciiName(TypeReference** place, typelib_TypeClass kind,
                                                              char const* name) {
    *place = new_type(kind, name);
}
void SAL_CALL typelib_typedescriptionreference_release(TypeReference* type) {
    if (--type->nRefCount > 0)
        return;
    let_go(type->pTypeName);
    std::free(type);
}

void SAL_CALL uno_type_any_assign(uno_Any* any, void* source, TypeReference* type, uno_AcquireFunc, uno_ReleaseFunc) {
    destruct_any(*any);
    construct(*any, source, type);
}
void SAL_CALL uno_type_any_construct(uno_Any* any, void* source, TypeReference* type, uno_AcquireFunc) {
    construct(*any, source, type);
}
void SAL_CALL uno_type_destructData(void* value, TypeReference* type, uno_ReleaseFunc) {
    destruct(value, type);
}
sal_Bool SAL_CALL uno_type_sequence_construct(uno_Sequence** place, TypeReference* type, void*, sal_Int32 length,
                                              uno_AcquireFunc) {
    *place = new_sequence(type, std::size_t(length));
    return 1;
}
sal_Bool SAL_CALL uno_type_sequence_realloc(uno_Sequence** place, TypeReference* type, sal_Int32 length,
                                            uno_AcquireFunc, uno_ReleaseFunc) {
    if ((*place)->nElements != 0)
        std::abort(); // the add-in has only empty ones made longer
    free_sequence(*place, type);
    *place = new_sequence(type, std::size_t(length));
    return 1;
}

void SAL_CALL rtl_uString_new(rtl_uString** place) {
    assign_text(place, {});
}
void SAL_CALL rtl_uString_newFromAscii(rtl_uString** place, char const* letters) {
    assign_text(place, utf16(letters));
}
void SAL_CALL rtl_uString_acquire(rtl_uString* text) {
    ++text->refCount;
}
void SAL_CALL rtl_uString_release(rtl_uString* text) {
    let_go(text);
}
sal_Int32 SAL_CALL rtl_ustr_ascii_compare_WithLength(sal_Unicode const* letters, sal_Int32 length, char const* ascii) {
    return utf8({reinterpret_cast<char16_t const*>(letters), std::size_t(length)}).compare(ascii);
}
sal_Bool SAL_CALL rtl_convertStringToUString(rtl_uString** place, char const* bytes, sal_Int32 length, rtl_TextEncoding,
                                             sal_uInt32) {
    assign_text(place, utf16({bytes, std::size_t(length)}));
    return 1;
}
void SAL_CALL rtl_uString2String(rtl_String** place, sal_Unicode const* letters, sal_Int32 length, rtl_TextEncoding,
                                 sal_uInt32) {
    std::string const bytes = utf8({reinterpret_cast<char16_t const*>(letters), std::size_t(length)});
    let_go(*place);
    *place = new_text<rtl_String>(bytes.data(), bytes.size());
}
void SAL_CALL rtl_string_new(rtl_String** place) {
    let_go(*place);
    *place = new_text<rtl_String>("", 0);
}
void SAL_CALL rtl_string_newFromStr_WithLength(rtl_String** place, char const* bytes, sal_Int32 length) {
    let_go(*place);
    *place = new_text<rtl_String>(bytes, std::size_t(length));
}
void SAL_CALL rtl_string_release(rtl_String* text) {
    let_go(text);
}
}
