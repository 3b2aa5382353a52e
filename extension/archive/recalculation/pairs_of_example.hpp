#pragma once
// Which cells of a workbook are those that --compare names, also where it names those of an example.

#include "extension/archive/recalculation/carrying.hpp"
#include "extension/archive/recalculation/old_and_new.hpp"

namespace hearthcell::archive {

/// All cells that are to be compared in a workbook. Addresses on a sheet of an example are those of the example: they
/// say nothing of other sheets. What was carried down a column or along a row is compared along it, with the old result
/// of the same row or column. examples, plan: null where there are none. found: see cells_of_pair.
std::vector<CellPair> cells_to_compare(office::Document const& workbook, std::vector<ComparedPair> const& pairs,
                                       ExampleSet const* examples, Plan const* plan, std::vector<bool>& found,
                                       std::vector<Problem>& problems);

} // namespace hearthcell::archive
