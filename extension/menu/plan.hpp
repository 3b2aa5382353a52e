#pragma once
// What hearthcell-archive would carry from an example into a folder, as its reports say. No UNO here.

#include "extension/menu/csv_rows.hpp"

namespace hearthcell::menu {

/// The rows of carried.csv, constants.csv and pairs.csv.
struct Plan {
    std::vector<CsvRow> cells;     // sheet, cell, kind, before, after, note
    std::vector<CsvRow> constants; // sheet, cell, function, argument, value, sheets
    std::vector<CsvRow> pairs;     // new, old

    /// Whether there is anything that is not left out.
    [[nodiscard]] bool carries_anything() const;
};

Plan read_plan(std::string const& folder);

/// A line for each cell: what it gets, instead of what, or why it gets nothing. The texts hold a %1.
std::string lines_of_cells(Plan const& plan, std::string_view instead_of, std::string_view not_carried);
std::string lines_of_constants(Plan const& plan);
/// As the program takes it: Runs.C11=Runs.B11.
std::string argument_of_pair(CsvRow const& pair);

/// What a few workbooks gave each argument, of read.csv.
std::string lines_of_readings(std::string const& folder);

} // namespace hearthcell::menu
