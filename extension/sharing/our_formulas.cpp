#include "extension/sharing/our_formulas.hpp"

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Reference;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

bool is_multiple_operations(Word const& word) {
    return word.called && (word.lower == "multiple.operations" || word.lower == "table"); // what getFormula calls it
}

} // namespace

bool calls_us(Word const& word) {
    return word.called && (word.lower.startsWith("hearthcell.stove.") || word.lower.startsWith("stove."));
}

bool needs_us(OUString const& formula, Names const& names) {
    auto const words = words_of(formula);
    return std::any_of(words.begin(), words.end(), [&](Word const& word) {
        return calls_us(word) || is_multiple_operations(word) || is_one_of(names, word.lower);
    });
}

Names names_that_need_us(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    return names_that(definitions_in(document), needs_us);
}

} // namespace hearthcell::sharing
