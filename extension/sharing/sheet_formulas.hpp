#pragma once
// The formulas of one sheet in a copy for sharing: found, and replaced.

#include "extension/sharing/kept_cell.hpp"
#include "extension/sharing/our_formulas.hpp"

#include <com/sun/star/table/CellRangeAddress.hpp>

#include <vector>

namespace hearthcell::sharing {

/// The formulas of a sheet that need us, with what they show.
struct SheetFormulas {
    std::vector<KeptCell> cells;                                 // down one column after the other
    std::vector<com::sun::star::table::CellRangeAddress> blocks; // of array formulas; their cells are in `cells`, too
};

/// Changes nothing, and has nothing recalculated.
SheetFormulas read_formulas(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                            OurFormulas const& ours);

} // namespace hearthcell::sharing
