#pragma once
// STOVE.UNCERTAINTY and STOVE.BUDGET: uncertainty carried through any function of the catalogue that is an equation of
// numbers, by its name.

#include "functions/contract/values.hpp"

#include <span>

namespace hearthcell {

Outcome uncertainty_of(std::span<Value const> given);

/// A row beside each value, and further ones for the defaults: the argument's name, sensitivity, contribution (times
/// the coverage factor) and share of the variance, which are 0 for what was not given and counts as exact. Where there
/// is no number at all, only the name.
Outcome budget_of(std::span<Value const> given);

} // namespace hearthcell
