#pragma once
// How many runs of each of two variants a two-sided t test needs.

#include "functions/number/distributions.hpp"
#include "functions/number/reason.hpp"

#include <cmath>

namespace hearthcell::kernels {

/// The chance that so many runs of each variant show a change of `effect` standard deviations: exact, by the
/// noncentral t, both sides counted.
inline double power_of_test(double runs, double effect, double confidence) {
    double const degrees = 2 * (runs - 1);
    return probability_beyond(t_exceeded(1 - confidence, degrees), degrees, effect * std::sqrt(runs / 2));
}

inline constexpr int most_runs = 10000; // nobody runs more: the change is too small to be looked for

/// The least number of runs of each variant. More runs are always more powerful, so that halving finds it.
inline double runs_needed(double variation, double change, double confidence, double power) {
    double const effect = change / variation;
    auto const enough = [&](int runs) { return power_of_test(runs, effect, confidence) >= power; };
    if (!enough(most_runs))
        return failure(Reason::too_many_runs);
    int too_few = 1, sufficient = most_runs;
    while (sufficient - too_few > 1) {
        int const middle = (too_few + sufficient) / 2;
        (enough(middle) ? sufficient : too_few) = middle;
    }
    return sufficient;
}

} // namespace hearthcell::kernels
