#pragma once
// Hand-written formulas that compute what a function of ours does, recognised by their form and constants.

#include "extension/formulas/recognition/expression.hpp"
#include "extension/formulas/recognition/published_form.hpp"

namespace hearthcell::formulas {

/// What the formula of a cell is, whatever the order, brackets and units in which it was typed; constants are looked up
/// in the cells that hold them, helper columns are followed some steps. Nothing where that is not certain: a wrong
/// answer is worse than none.
std::optional<PublishedForm> recognised(std::string_view formula, Place const& cell, Surroundings const& surroundings);

} // namespace hearthcell::formulas
