#pragma once
// The columns of changes.csv, named once: for the row that is written, and for the one that is read again.

#include "extension/archive/recalculation/change.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A row as it stands in the file.
struct ChangeRow {
    std::string file, sheet, cell, formula, before, after, relative_change, kind, changes_by_itself;
};

struct ChangeColumn {
    char const* heading;
    std::string ChangeRow::*field;
};

inline constexpr std::array change_columns{
    ChangeColumn{"file", &ChangeRow::file},
    ChangeColumn{"sheet", &ChangeRow::sheet},
    ChangeColumn{"cell", &ChangeRow::cell},
    ChangeColumn{"formula", &ChangeRow::formula},
    ChangeColumn{"before", &ChangeRow::before},
    ChangeColumn{"after", &ChangeRow::after},
    ChangeColumn{"relative_change", &ChangeRow::relative_change},
    ChangeColumn{"kind", &ChangeRow::kind},
    ChangeColumn{"volatile", &ChangeRow::changes_by_itself},
};

std::vector<std::string> headings_of_changes();

/// file: the workbook, relative to the base.
std::vector<std::string> fields_of(std::string const& file, Change const& change);

/// Nothing where the record has another number of fields.
std::optional<ChangeRow> change_row(std::vector<std::string> const& fields);

/// Whether it counts as a change: it does not when the result changes by itself.
bool counts(ChangeRow const& row);

} // namespace hearthcell::archive
