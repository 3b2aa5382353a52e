#pragma once
// What can be said of one new result beside one old one.

#include "extension/archive/recalculation/old_and_new.hpp"

namespace hearthcell::archive {

/// Fills in difference, factor and what is odd about the two. False where there is nothing to be compared: both are
/// empty, or both are words. formula: of the new cell.
bool set_beside(ComparedRow& row, std::string const& formula);

} // namespace hearthcell::archive
