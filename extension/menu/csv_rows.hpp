#pragma once
// The reports of hearthcell-archive, read back. No UNO here.

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::menu {

/// A row by the names of its columns.
using CsvRow = std::map<std::string, std::string, std::less<>>;

/// The rows below the first, which names the columns; what stands beyond those is left out. Without the backslashes
/// that the reports put before what a spreadsheet might take for a formula.
std::vector<CsvRow> csv_rows(std::string_view text);

/// Of a file; none where it cannot be read. Of a very long one the first.
std::vector<CsvRow> csv_rows_of(std::string const& path);

/// What a row has in a column; empty where there is none.
std::string_view in_column(CsvRow const& row, std::string_view column);

} // namespace hearthcell::menu
