#pragma once
// Two series of runs against each other: the difference of their means, or the share that the new one saves.

#include "functions/kernels/statistics/series.hpp"

namespace hearthcell::kernels {

/// What two independent series say together, for a difference new − factor · baseline of their means.
struct Compared {
    double baseline_variance, new_variance; ///< of the means
    double degrees_of_freedom;
};

/// Each series with its own variance: Welch's difference, degrees of freedom by Satterthwaite. One of the
/// variances at least is above 0; the least that series.hpp tells from 0 keeps the scaled one above it, too.
inline Compared with_own_variances(Series const& baseline, Series const& fresh, double factor) {
    double const of_baseline = baseline.variance_of_mean(), of_new = fresh.variance_of_mean();
    double const scaled = factor * factor * of_baseline;
    // A ratio first: the square of a small variance would be lost.
    double const share = scaled / (scaled + of_new), rest = of_new / (scaled + of_new);
    return {of_baseline, of_new,
            1 / (share * share / double(baseline.runs - 1) + rest * rest / double(fresh.runs - 1))};
}

/// Both series with one variance in common.
inline Compared with_pooled_variance(Series const& baseline, Series const& fresh) {
    double const degrees = double(baseline.runs + fresh.runs - 2);
    double const pooled =
        (double(baseline.runs - 1) * baseline.variance + double(fresh.runs - 1) * fresh.variance) / degrees;
    return {pooled / double(baseline.runs), pooled / double(fresh.runs), degrees};
}

/// For no change at all.
inline Compared compared(Series const& baseline, Series const& fresh, bool pooled) {
    return pooled ? with_pooled_variance(baseline, fresh) : with_own_variances(baseline, fresh, 1);
}

inline Failure check_series(Series const& baseline, Series const& fresh) {
    if (baseline.runs < 2)
        return {Reason::too_few_runs, 0};
    if (fresh.runs < 2)
        return {Reason::too_few_runs, 1};
    return {baseline.variance == 0 && fresh.variance == 0 ? Reason::no_scatter : Reason::none};
}

/// Columns: baseline, new. Numbers: confidence. The difference is new − baseline.
inline Outcome difference(Given const& given) {
    Series const baseline = describe(*given.columns[0]), fresh = describe(*given.columns[1]);
    if (Failure const why = check_series(baseline, fresh); why.reason != Reason::none)
        return why;
    double const confidence = given.numbers[0];
    Compared const compared = kernels::compared(baseline, fresh, false);
    double const change = fresh.mean - baseline.mean;
    double const uncertainty = std::sqrt(compared.baseline_variance + compared.new_variance);
    double const half_width = t_exceeded(1 - confidence, compared.degrees_of_freedom) * uncertainty;
    return one_row({change, change - half_width, change + half_width,
                    probability_beyond(change / uncertainty, compared.degrees_of_freedom), compared.degrees_of_freedom,
                    confidence});
}

} // namespace hearthcell::kernels
