#pragma once
// Which formulas cannot be worked out where Hearthcell is missing.

#include "extension/sharing/names.hpp"
#include "extension/sharing/words.hpp"

namespace hearthcell::sharing {

/// By the stored name, and by the name in the cell, which is what is left of a call where the package is missing.
bool calls_us(Word const& word);

/// Whether a formula, as XCell::getFormula writes it, calls a function of ours or uses one of the names.
/// MULTIPLE.OPERATIONS counts as well: it works other cells' formulas out anew with other inputs, and where these are
/// values by then it would quietly give a wrong number.
bool needs_us(rtl::OUString const& formula, Names const& names);

/// The names of a document that stand for a formula of ours, be it through other names.
Names names_that_need_us(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::sharing
