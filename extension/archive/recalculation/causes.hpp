#pragma once
// Why results changed: by themselves, since what they read changed, or since they are computed in another way.

#include "extension/archive/recalculation/change.hpp"
#include "extension/archive/recalculation/references.hpp"

#include <set>
#include <vector>

namespace hearthcell::archive {

/// Marks the changes that say nothing: of formulas whose results change by themselves (the clock, chance), and of the
/// cells that those feed. The changes must be in the order of their places.
void mark_volatile(std::vector<Change>& changes, Scope const& scope);

/// Marks the changes that do not follow from others, nor from the cells that were set: they say why.
void mark_own(std::vector<Change>& changes, std::set<Place> set_before, Scope const& scope);

} // namespace hearthcell::archive
