#include "extension/sharing/our_formulas.hpp"

#include "extension/formulas/calls.hpp"
#include "extension/formulas/letters.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/names.hpp"

namespace css = com::sun::star;
using css::uno::Reference;

namespace hearthcell::sharing {
namespace {

bool is_multiple_operations(formulas::Token const& token) {
    using formulas::is_same_name;
    return token.kind == formulas::TokenKind::function &&
           (is_same_name(token.text, "MULTIPLE.OPERATIONS") || is_same_name(token.text, "TABLE")); // as getFormula says
}

/// A single thing to say, or nothing.
std::vector<bool> needs_us(formulas::Token const& token) {
    return std::vector<bool>(formulas::is_ours(token) || is_multiple_operations(token) ? 1 : 0, true);
}

} // namespace

OurFormulas::OurFormulas(Reference<css::sheet::XSpreadsheetDocument> const& document)
    : names_(definitions_in(document)), calls_(names_, needs_us) {}

bool OurFormulas::need_us(rtl::OUString const& formula, std::string const& sheet) const {
    return !calls_.in(office::narrow(formula), sheet).empty();
}

} // namespace hearthcell::sharing
