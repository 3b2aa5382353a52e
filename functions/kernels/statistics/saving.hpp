#pragma once
// The share that a new series of runs saves against a baseline, with its limits.

#include "functions/kernels/statistics/comparison.hpp"

#include <algorithm>
#include <numbers>

namespace hearthcell::kernels {

/// Of a ratio of two means. Unbounded while nothing else is known.
struct Limits {
    double low = failure(Reason::unbounded_limits), high = failure(Reason::unbounded_limits);
};

/// Fieller's limits of the ratio of two means whose variances have one number of degrees of freedom, whatever the
/// ratio: every ratio Q that a t test of new − Q · baseline would not refuse. The roots of (b² − t² vb) Q² − 2 a b Q +
/// (a² − t² va) = 0; where the baseline could be 0, there is no such interval.
inline Limits limits_of_ratio(double baseline, double fresh, Compared const& compared, double t) {
    double const vb = compared.baseline_variance, va = compared.new_variance;
    double const leading = baseline * baseline - t * t * vb;
    if (!(leading > 0))
        return {};
    double const spread = t * std::sqrt(fresh * fresh * vb + va * leading);
    return {(fresh * baseline - spread) / leading, (fresh * baseline + spread) / leading};
}

/// The same where each series has its own variance, so that the degrees of freedom move with Q (Welch). With
/// Q = √(va/vb) tan θ the test statistic is R sin(θ' − θ), R and θ' being the length and the angle of (a/√va, b/√vb):
/// it grows on either side of the ratio that was found, at θ', and nothing has to be searched but two angles.
class WelchTestOfRatio {
public:
    WelchTestOfRatio(Series const& baseline, Series const& fresh)
        : of_baseline(baseline.mean / std::sqrt(baseline.variance_of_mean())),
          of_new(fresh.mean / std::sqrt(fresh.variance_of_mean())),
          scale(std::sqrt(fresh.variance_of_mean() / baseline.variance_of_mean())),
          baseline_degrees(double(baseline.runs - 1)), new_degrees(double(fresh.runs - 1)) {}

    Limits limits(double confidence) const {
        double const found = std::atan2(of_new, of_baseline), beyond = 1 - confidence;
        double const farthest_up = std::numbers::pi / 2, farthest_down = found - std::numbers::pi / 2;
        if (!(std::max(probability(farthest_up), probability(farthest_down)) < beyond))
            return {};
        double const high = border(found, farthest_up, beyond), low = border(found, farthest_down, beyond);
        bool const of_two_runs = baseline_degrees == 1 || new_degrees == 1;
        if (of_two_runs && int(comes_back(high, farthest_up, beyond)) + int(comes_back(low, -farthest_up, beyond)) > 0)
            return {};
        return {scale * std::tan(low), scale * std::tan(high)};
    }

private:
    bool refuses(double angle, double beyond) const { return probability(angle) < beyond; }

    double probability(double angle) const {
        double const sine = std::sin(angle), cosine = std::cos(angle);
        double const share = sine * sine, rest = cosine * cosine;
        return probability_beyond(of_new * cosine - of_baseline * sine,
                                  1 / (share * share / baseline_degrees + rest * rest / new_degrees));
    }

    /// Where the test begins to refuse, on the way from an angle that it does not refuse to one that it does.
    double border(double kept, double refused, double beyond) const {
        for (double middle = kept + (refused - kept) / 2; middle != kept && middle != refused;
             middle = kept + (refused - kept) / 2)
            (refuses(middle, beyond) ? refused : kept) = middle;
        return kept;
    }

    /// Whether somewhere beyond its border the test does not refuse again: t is so large for two runs that it can fall
    /// faster than the statistic grows.
    bool comes_back(double border, double end, double beyond) const {
        constexpr int steps = 200;
        for (int i = 1; i < steps; ++i)
            if (!refuses(border + (end - border) * i / steps, beyond))
                return true;
        return false;
    }

    double of_baseline, of_new; ///< the means in units of their own standard error
    double scale;
    double baseline_degrees, new_degrees;
};

/// `no_change` is how the two compare at a ratio of 1, with a pooled variance or each with its own.
inline Limits limits_of_ratio(Series const& baseline, Series const& fresh, bool pooled, Compared const& no_change,
                              double confidence) {
    // Where one series has no scatter, the degrees of freedom are those of the other, whatever the ratio.
    bool const degrees_move = !pooled && baseline.variance > 0 && fresh.variance > 0;
    return degrees_move ? WelchTestOfRatio(baseline, fresh).limits(confidence)
                        : limits_of_ratio(baseline.mean, fresh.mean, no_change,
                                          t_exceeded(1 - confidence, no_change.degrees_of_freedom));
}

/// Columns: baseline, new. Numbers: confidence, pooled variance (0 or 1). The saving is 1 − new/baseline. p and degrees
/// of freedom are those of no change, as DIFFERENCE has them; the limits are the savings that the same test would just
/// not refuse. So they leave out 0 exactly when p is below 1 − confidence.
inline Outcome saving(Given const& given) {
    double const confidence = given.numbers[0];
    bool const pooled = given.numbers[1] == 1;
    if (!pooled && given.numbers[1] != 0)
        return Failure{Reason::neither_true_nor_false, 3};
    Series const baseline = describe(*given.columns[0]), fresh = describe(*given.columns[1]);
    if (Failure const why = check_series(baseline, fresh); why.reason != Reason::none)
        return why;
    for (unsigned place : {0U, 1U})
        if (!((place == 0 ? baseline : fresh).mean > 0))
            return Failure{Reason::mean_not_positive, place};
    Compared const no_change = compared(baseline, fresh, pooled);
    Limits const ratios = limits_of_ratio(baseline, fresh, pooled, no_change, confidence);
    bool const bounded = !failed(ratios.high);
    double const uncertainty = std::sqrt(no_change.baseline_variance + no_change.new_variance);
    double const t_of_no_change = (fresh.mean - baseline.mean) / uncertainty;
    return one_row(
        {1 - fresh.mean / baseline.mean, bounded ? 1 - ratios.high : ratios.high, bounded ? 1 - ratios.low : ratios.low,
         probability_beyond(t_of_no_change, no_change.degrees_of_freedom), no_change.degrees_of_freedom, confidence});
}

} // namespace hearthcell::kernels
