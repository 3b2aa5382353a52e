#pragma once
// STOVE.UNCERTAINTY and STOVE.BUDGET: uncertainty carried through any function of the catalogue that is an equation of
// numbers, by its name.

#include "functions/contract/values.hpp"

#include <span>

namespace hearthcell {

Outcome uncertainty_of(std::span<Value const> given);

/// A row beside each value up to the last one given: the argument's name, sensitivity, contribution (times the
/// coverage factor) and share of the variance. Where no number was given, only the name.
Outcome budget_of(std::span<Value const> given);

} // namespace hearthcell
