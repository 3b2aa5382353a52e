#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <rtl/ustring.hxx>

namespace hearthcell::sharing {

struct Frozen {
    sal_Int32 formulas = 0;     // replaced
    rtl::OUString locked_sheet; // protected by a password and with formulas of ours: then nothing was replaced
};

/// Replaces every formula that needs Hearthcell by what its cell shows, array formulas included, and keeps the formula,
/// as the user sees it, in the cell's comment, below what the comment says already. Other formulas stay.
///
/// For a copy that can be written to; works in the office's own process as well as from another. UNO's exceptions pass.
Frozen freeze(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document);

} // namespace hearthcell::sharing
