#pragma once
// What the reports say of a workbook.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/recalculation/collecting.hpp"
#include "extension/archive/recalculation/remarks.hpp"
#include "extension/archive/recalculation/tally.hpp"

#include <vector>

namespace hearthcell::archive {

/// What the recalculation of a workbook came to, but for its single changes.
struct Outcome {
    Tally tally;
    std::vector<Problem> problems;
    std::vector<CollectedRow> collected; // one row at least, where it was asked for
    CheckOutcome check;                  // where it was asked for
};

} // namespace hearthcell::archive
