#pragma once
// How many runs of each of two variants a two-sided t test needs.

#include "functions/number/distributions.hpp"
#include "functions/number/reason.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::kernels {

/// The chance that so many runs of each variant show a change of `effect` standard deviations: exact, by the
/// noncentral t, both sides counted.
inline double power_of_test(double runs, double effect, double confidence) {
    double const degrees = 2 * (runs - 1);
    return probability_beyond(t_exceeded(1 - confidence, degrees), degrees, effect * std::sqrt(runs / 2));
}

inline constexpr int most_runs = 10000; // nobody runs more: the change is too small to be looked for

/// About as many: the normal approximation with the first correction for the t test (W. C. Guenther, The American
/// Statistician 35 (1981) 243, from memory). Only where the search begins, the result does not depend on it.
inline int runs_to_begin_with(double effect, double confidence, double power) {
    double const beyond = normal_exceeded((1 - confidence) / 2);
    double const sum = (beyond + normal_exceeded(1 - power)) / effect;
    double const runs = 2 * sum * sum + beyond * beyond / 4;
    return runs < most_runs ? std::max(2, int(std::ceil(runs))) : most_runs; // a NaN begins at the end
}

/// The least number of runs of each variant. More runs are always more powerful, so that going up from a first guess,
/// or halving what lies below it, finds it. The guess is mostly right, and never seen to be too low by more than one.
inline double runs_needed(double variation, double change, double confidence, double power) {
    double const effect = change / variation;
    auto const enough = [&](int runs) { return power_of_test(runs, effect, confidence) >= power; };
    int sufficient = runs_to_begin_with(effect, confidence, power);
    while (!enough(sufficient)) {
        if (sufficient == most_runs)
            return failure(Reason::too_many_runs);
        ++sufficient;
    }
    int too_few = sufficient - 1;
    if (too_few > 1 && enough(too_few)) {
        sufficient = too_few;
        too_few = 1; // which tells nothing of the scatter
    }
    while (sufficient - too_few > 1) {
        int const middle = (too_few + sufficient) / 2;
        (enough(middle) ? sufficient : too_few) = middle;
    }
    return sufficient;
}

} // namespace hearthcell::kernels
