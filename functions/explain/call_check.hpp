#pragma once
// A call as the check of a workbook wants it told: no sentence for people, but lines that a program reads.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// A line for each thing that there is to say, nothing where all is well; fields with tabs between:
///
///   wrong   sentence   result meant           the call gives no result
///   odd     sentence   result meant   result   it gives one
///   empty   argument   (empty)        result   the cell of an argument is empty, which counts as 0
///   note    kind       text                   what holds for every call of the kind: said once for a workbook
///
/// 'result meant' is that with the slip mended, where it is sure what was meant; else empty. A result that is a share
/// ends with a %. Kinds of notes: method, source (both from memory), default, runs, caution.
///
/// An empty text is an empty cell, of which the caller knows for sure, and any 0 is one.
std::string check_call(Function const& function, std::span<Value const> arguments, Language language);

} // namespace hearthcell
