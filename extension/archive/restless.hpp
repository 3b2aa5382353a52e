#pragma once

#include "archive/change.hpp"
#include "archive/references.hpp"

#include <vector>

namespace hearthcell::archive {

/// Marks the changes that say nothing: of formulas whose results change by themselves (the clock, chance), and of the
/// cells that those feed. The changes must be in the order of their places.
void mark_restless(std::vector<Change>& changes, Scope const& scope);

} // namespace hearthcell::archive
