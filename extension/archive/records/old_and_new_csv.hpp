#pragma once
// The columns of old-and-new.csv, named once: for the row that is written, and for the one that is read again.

#include "extension/archive/recalculation/old_and_new.hpp"

#include <string>
#include <vector>

namespace hearthcell::archive {

/// A row as it stands in the file.
struct OldAndNewRow {
    std::string workbook, compared, sheet, row, new_cell, old_cell, old_result, new_result, factor, difference,
        relative_difference, remark;
    std::array<std::string, methods.size()> by_methods;
};

std::vector<std::string> headings_of_old_and_new();

/// As old-and-new.csv and the summary call a pair: "Run.C20=Run.B20".
std::string words(ComparedPair const& pair);

/// workbook: relative to the base.
std::vector<std::string> fields_of(std::string const& workbook, ComparedPair const& pair, ComparedRow const& row);

/// Nothing where the record has another number of fields.
std::optional<OldAndNewRow> old_and_new_row(std::vector<std::string> const& fields);

} // namespace hearthcell::archive
