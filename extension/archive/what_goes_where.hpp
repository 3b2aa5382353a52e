#pragma once
// What the examples of a run put into its workbooks, for the user to read before it is done: carried.csv,
// constants.csv and pairs.csv, and in words what has to be confirmed.

#include "extension/archive/example/plan.hpp"
#include "extension/archive/workers/inputs.hpp"

namespace hearthcell::archive {

/// sheets_by_workbook: for each sheet of the examples that has something to carry, in their order, on how many sheets
/// of each workbook it may go. Gives what has to be confirmed, a line each; nothing: there is none.
std::string write_what_goes_where(std::filesystem::path const& output, ExampleSet const& set,
                                  std::vector<Input> const& workbooks,
                                  std::vector<std::vector<std::size_t>> const& sheets_by_workbook);

} // namespace hearthcell::archive
