#pragma once
// STOVE.MONTECARLO: the distribution of a function's result, by drawing its uncertain arguments.

#include "functions/contract/kernel.hpp"

namespace hearthcell {

/// Side by side: mean, standard uncertainty, lower and upper limit of the shortest interval, share of draws without a
/// result.
Outcome monte_carlo_of(std::span<Value const> given);

/// How many draws had no result, what the limits are and how well all of it is known.
Remarks remark_on_monte_carlo(std::span<Value const> given, Language language);

} // namespace hearthcell
