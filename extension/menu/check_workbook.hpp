#pragma once
// The menu's commands that check a workbook, and that leave out what was seen.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Puts every call of a function of ours to EXPLAIN, beside the office, and opens a workbook with what came of it. The
/// document stays as it is.
Answer check_workbook(Surroundings const& surroundings, bool selected_cells_only);

/// In such a workbook: the remarks with a word in their last cell are kept in the document's own properties, and are
/// not made again until something that they rest on changes.
Answer leave_seen_remarks(Surroundings const& surroundings);

} // namespace hearthcell::menu
