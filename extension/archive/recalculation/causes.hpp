#pragma once
// Why results changed: by themselves, since what they read changed, or since they are computed in another way.

#include "extension/archive/recalculation/change.hpp"
#include "extension/formulas/place.hpp"

#include <set>
#include <vector>

namespace hearthcell::archive {

/// What the formula of each change reads, in the order of the changes.
using Read = std::vector<std::vector<formulas::Range>>;

/// Marks the changes that say nothing: of the cells that those feed whose results change by themselves (the clock,
/// chance), which are marked already. The changes must be in the order of their places.
void mark_what_follows(std::vector<Change>& changes, Read const& read);

/// Marks the changes that do not follow from others, nor from the cells that were set: they say why.
void mark_own(std::vector<Change>& changes, std::set<Place> set_before, Read const& read);

} // namespace hearthcell::archive
