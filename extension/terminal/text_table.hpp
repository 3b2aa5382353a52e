#pragma once
// Tables in plain text.

#include <string>
#include <vector>

namespace hearthcell {

struct TextTable {
    std::vector<std::vector<std::string>> rows; // of equal length; cells in UTF-8
    std::size_t heading_rows = 0;               // underlined
    std::vector<bool> numeric;                  // columns that stand to the right
};

/// The table as lines of text for a terminal. Wholly empty rows and columns are left out.
std::string draw(TextTable const& table);

} // namespace hearthcell
