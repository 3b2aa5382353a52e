#pragma once
// What the reports say of a workbook.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/recalculation/collecting.hpp"
#include "extension/archive/recalculation/remarks.hpp"
#include "extension/archive/recalculation/tally.hpp"

#include <vector>

namespace hearthcell::archive {

/// How much of an example went into it.
struct CarriedOutcome {
    std::uint64_t formulas = 0, sheets = 0;
};

/// What an argument of a carried function read in it.
struct ReadOutcome {
    std::string function, argument;
    std::uint64_t values = 0;
    double lowest = 0, median = 0, highest = 0;
};

/// What the recalculation of a workbook came to, but for its single changes.
struct Outcome {
    Tally tally;
    std::vector<Problem> problems;
    std::vector<CollectedRow> collected; // one row at least, where it was asked for
    CheckOutcome check;                  // where it was asked for
    CarriedOutcome carried;              // of an example
    std::vector<ReadOutcome> read;       // by what was carried
    std::vector<bool> compared;          // of each pair two: whether the workbook has the new cells, and the old ones
};

} // namespace hearthcell::archive
