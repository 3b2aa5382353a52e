#pragma once
// The default tiers of the voluntary performance targets (ISO/TR 19867-3:2018, from memory of its table). Each measure
// is judged for itself; tiers are never merged into one.

#include "functions/contract/kernel.hpp"
#include "functions/number/distributions.hpp"

#include <limits>

namespace hearthcell::kernels {

struct TierLimits {
    double limits[5]; ///< of tiers 1 to 5
    bool more_is_better;
    bool limit_included; ///< whether a result equal to the limit still has the tier
    double least, most;  ///< what a result can be, both allowed. Common practice, no source
};

// In the order of the choices: efficiency as a fraction; CO in g and PM2.5 in mg per MJ delivered; safety score;
// durability score. An efficiency or emission of exactly 0 is no result but an empty cell.
inline constexpr double above_zero = 1e-9;
inline constexpr TierLimits tier_limits[] = {
    {{0.10, 0.20, 0.30, 0.40, 0.50}, true, true, above_zero, 1},
    {{18.3, 11.5, 7.2, 4.4, 3.0}, false, true, above_zero, 1000},
    {{1031, 481, 218, 62, 5}, false, true, above_zero, 100000},
    {{60, 68, 77, 86, 95}, true, true, above_zero, 100},
    {{35, 25, 20, 15, 10}, false, false, 0, 1000},
};

/// Within this of a limit a result counts as equal to it: 0.7 − 0.4 is a last digit below 0.3.
inline constexpr double rounding_of_a_sheet = 1e-12;

inline bool reaches(TierLimits const& measure, double limit, double value) {
    double const beyond = measure.more_is_better ? value - limit : limit - value;
    double const rounding = rounding_of_a_sheet * limit;
    return measure.limit_included ? beyond >= -rounding : beyond > rounding;
}

/// Fails where the measure cannot be that.
inline Reason check_measure(TierLimits const& judged, double value) {
    return value >= judged.least && value <= judged.most ? Reason::none : Reason::beyond_measure;
}

/// 0 to 5.
inline double performance_tier(double value, Choice measure) {
    TierLimits const& judged = tier_limits[measure.index];
    if (check_measure(judged, value) != Reason::none)
        return failure(Reason::beyond_measure, 1);
    int tier = 0;
    for (double const limit : judged.limits)
        tier += reaches(judged, limit, value) ? 1 : 0;
    return tier;
}

/// Numbers: value, standard uncertainty. Choices: measure. The probability of each tier, 0 to 5, of a result that is
/// distributed normally (JCGM 106): that of lying between the tier's own limit and that of the next.
inline Outcome tier_probability(Given const& given) {
    TierLimits const& judged = tier_limits[given.choices[0].index];
    double const value = given.numbers[0], uncertainty = given.numbers[1];
    if (Reason const why = check_measure(judged, value); why != Reason::none)
        return Failure{why, 1};
    if (uncertainty > (judged.most - judged.least) / 2)
        return Failure{Reason::uncertainty_too_large, 2};
    constexpr double infinite = std::numeric_limits<double>::infinity();
    Block probabilities{1, 6, {}, {}};
    double reached = -infinite; // how far the limit of the tier lies below the result, which every result reaches
    for (double const limit : judged.limits) {
        double const next = (judged.more_is_better ? limit - value : value - limit) / uncertainty;
        probabilities.numbers.push_back(normal_between(reached, next));
        reached = next;
    }
    probabilities.numbers.push_back(normal_between(reached, infinite));
    return probabilities;
}

/// Within this share of a limit a result needs its uncertainty to be judged. Good tests are known to a few per cent;
/// the figure is this project's.
inline constexpr double near_a_limit = 0.05;

inline bool is_near_a_limit(TierLimits const& judged, double value) {
    for (double const limit : judged.limits)
        if (std::fabs(value - limit) <= near_a_limit * limit)
            return true;
    return false;
}

} // namespace hearthcell::kernels
