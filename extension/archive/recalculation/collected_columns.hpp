#pragma once
// The columns of collected.csv: known before any workbook is opened.

#include <string>
#include <vector>

namespace hearthcell::archive {

/// One for each name; of a block, one for the rows of its sheet and one for each of its columns.
struct CollectedColumn {
    std::string heading;     // as the name was given, "Season.A5:A14" or "Season.A5:P14 row"
    std::size_t name;        // its number among those that are collected
    bool row_number = false; // of the sheet
};

/// Throws std::invalid_argument for a block of more columns than a table should have.
std::vector<CollectedColumn> columns_of(std::vector<std::string> const& names);

} // namespace hearthcell::archive
