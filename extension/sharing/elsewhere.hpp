#pragma once
// Formulas in names, conditional formats and validity rules, in a copy for sharing.

#include "extension/sharing/conditional_formats.hpp"

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

namespace hearthcell::sharing {

/// Formulas of ours outside of cells: in defined names, conditional formats and validity rules.
struct Elsewhere {
    sal_Int32 replaced = 0; // names and rules that do without us now
    sal_Int32 left = 0;     // that do not, since their value depends on the cell that they are used in
    Held held;
};

/// Puts values in their place, wherever one value is right for all cells. For a document that calculates by itself and
/// whose sheets can be written to.
///
/// Not seen: a formula that gives the limit of a colour scale or data bar, which LibreOffice tells nobody.
Elsewhere
replace_elsewhere(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::sharing
