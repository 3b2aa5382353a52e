#pragma once
// Where the readings of a table end.

#include "extension/archive/example/seen_workbook.hpp"

namespace hearthcell::archive {

/// The last of the readings that begin with this cell and follow each other down its column; nothing where that cannot
/// be told, since something else stands below them that no word calls a mean or total.
std::optional<int> last_of_readings(SeenWorkbook const& workbook, int sheet, LabelledSheet::Where const& first);

} // namespace hearthcell::archive
