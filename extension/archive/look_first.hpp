#pragma once
// Before an example is carried: a look at all workbooks without an office, which tells what the labels of each sheet
// are; and what would go where, for the user to confirm.

#include "extension/archive/workers/task.hpp"

namespace hearthcell::archive {

struct LookedFirst {
    int signal = 0;                      // that stopped it
    std::string to_confirm;              // in words; empty: there is nothing
    std::vector<std::size_t> sheets_fit; // of each workbook: how many sheets an example may fit
};

/// Gives the task its examples, and writes carried.csv, constants.csv and pairs.csv. Throws std::exception where
/// nothing can be carried.
LookedFirst look_first(Task& task);

} // namespace hearthcell::archive
