#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

namespace hearthcell::sharing {

struct Frozen {
    sal_Int32 formulas = 0;     // of cells, replaced
    sal_Int32 left = 0;         // names, conditional formats and validity rules that still need Hearthcell
    rtl::OUString locked_sheet; // protected by a password and with formulas of ours: then nothing was replaced
};

/// Replaces every formula that needs Hearthcell by what its cell shows, array formulas included, and keeps the formula,
/// as the user sees it, and the edition in the cell's comment, below what the comment says already. Other formulas
/// stay. In defined names, conditional formats and validity rules our functions' calls become values, where these are
/// the same for all cells.
///
/// For a copy that can be written to; works in the office's own process as well as from another. UNO's exceptions pass.
Frozen freeze(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
              rtl::OUString const& edition);

} // namespace hearthcell::sharing
