#pragma once
// --try: an example is carried into a few workbooks first.

#include "extension/archive/workers/task.hpp"

namespace hearthcell::archive {

/// Leaves five of the workbooks that an example may fit: the oldest, the newest and three between. sheets_fit: of each
/// workbook, how many of its sheets an example may fit.
void leave_a_few(Task& task, std::vector<std::size_t> const& sheets_fit);

} // namespace hearthcell::archive
