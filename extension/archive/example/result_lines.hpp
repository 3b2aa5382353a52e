#pragma once
// How a result goes on: down the rows of a table, or along tests side by side.

#include "extension/archive/example/seen_workbook.hpp"

namespace hearthcell::archive {

/// The cells of a column (all below the same label), or of a row, that hold the same formula as one of them, seen from
/// each.
std::vector<Place> same_down(SeenWorkbook const& workbook, Place const& cell);
std::vector<Place> same_to_the_right(SeenWorkbook const& workbook, Place const& cell);

/// Whether what takes the place of a result may take that of the same results below it, or to its right.
bool may_go_down(SeenWorkbook const& workbook, Place const& cell);
bool may_go_right(SeenWorkbook const& workbook, Place const& cell);

} // namespace hearthcell::archive
