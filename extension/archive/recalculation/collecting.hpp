#pragma once
// --collect: results of cells, after a workbook was recalculated.

#include "extension/archive/files/problem.hpp"
#include "extension/office/document.hpp"

#include <string>
#include <vector>

namespace hearthcell::archive {

/// A field of collected.csv: empty where the workbook has no such cell.
struct Collected {
    std::string value; // of a cell that shows a day: the day
    std::string unit;  // where the cell's formula is a call of one of our functions
    bool found = false;
};

/// As the columns of collected.csv are (see columns_of).
using CollectedRow = std::vector<Collected>;

/// One row; with blocks, one for each of their rows that is not empty, where what is one cell stands in all of them.
/// What cannot be collected is listed.
std::vector<CollectedRow> collect(office::Document const& workbook, std::vector<std::string> const& names,
                                  std::vector<Problem>& problems);

} // namespace hearthcell::archive
