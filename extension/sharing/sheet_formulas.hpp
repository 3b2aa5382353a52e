#pragma once

#include "extension/sharing/kept_cell.hpp"
#include "extension/sharing/our_formulas.hpp"

#include <com/sun/star/table/CellRangeAddress.hpp>

#include <vector>

namespace hearthcell::sharing {

/// The formulas of a sheet that need us.
struct SheetFormulas {
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet;
    std::vector<KeptCell> cells;
    std::vector<com::sun::star::table::CellRangeAddress> blocks; // of array formulas; their cells are in `cells`, too
};

SheetFormulas read_formulas(com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> const& sheet,
                            OurFormulas const& ours);

void replace_formulas(SheetFormulas const& formulas, rtl::OUString const& edition);

} // namespace hearthcell::sharing
