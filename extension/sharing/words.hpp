#pragma once

#include <rtl/ustring.hxx>

#include <vector>

namespace hearthcell::sharing {

/// A function's or another name in a formula.
struct Word {
    sal_Int32 start = 0, end = 0; // end: behind its last letter
    rtl::OUString lower;          // in lower case
    bool called = false;          // a bracket follows
};

/// The words of a formula in the order in which they stand; what is in quotes is none.
std::vector<Word> words_of(rtl::OUString const& formula);

/// Behind the bracket that closes the call that begins with this word.
sal_Int32 end_of_call(rtl::OUString const& formula, Word const& called);

} // namespace hearthcell::sharing
