#pragma once
// Which cells of a workbook are those of an example that --compare names.

#include "extension/archive/recalculation/carrying.hpp"
#include "extension/archive/recalculation/old_and_new.hpp"

namespace hearthcell::archive {

/// Whether a pair is of addresses on a sheet of an example, which say nothing of other sheets.
bool is_of_an_example(ComparedPair const& pair, ExampleSet const& examples);

/// The cells of such a pair in a workbook that an example was carried into: where its new cell went, down a column or
/// along a row too, and the old result of the same row or column. found: see cells_of_pair.
std::vector<CellPair> cells_by_example(std::size_t number, ComparedPair const& pair, ExampleSet const& examples,
                                       Plan const& plan, std::vector<bool>& found);

} // namespace hearthcell::archive
