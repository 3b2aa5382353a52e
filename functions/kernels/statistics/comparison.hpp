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
    Compared const compared = with_own_variances(baseline, fresh, 1);
    double const change = fresh.mean - baseline.mean;
    double const uncertainty = std::sqrt(compared.baseline_variance + compared.new_variance);
    double const half_width = t_exceeded(1 - confidence, compared.degrees_of_freedom) * uncertainty;
    return one_row({change, change - half_width, change + half_width,
                    probability_beyond(change / uncertainty, compared.degrees_of_freedom), compared.degrees_of_freedom,
                    confidence});
}

struct Limits {
    double low = failure(Reason::unbounded_limits), high = failure(Reason::unbounded_limits);
};

/// Fieller's limits of the ratio of two means: every ratio Q that a t test of new − Q · baseline would not refuse. The
/// roots of (b² − t² vb) Q² − 2 a b Q + (a² − t² va) = 0; where the baseline could be 0, there is no such interval.
inline Limits limits_of_ratio(double baseline, double fresh, Compared const& compared, double t) {
    double const vb = compared.baseline_variance, va = compared.new_variance;
    double const leading = baseline * baseline - t * t * vb;
    if (!(leading > 0))
        return {};
    double const spread = t * std::sqrt(fresh * fresh * vb + va * leading);
    return {(fresh * baseline - spread) / leading, (fresh * baseline + spread) / leading};
}

/// Columns: baseline, new. Numbers: confidence, pooled variance (0 or 1). The saving is 1 − new/baseline. Limits, p and
/// degrees of freedom belong together: the limits leave out 0 exactly when p is below 1 − confidence.
inline Outcome saving(Given const& given) {
    double const confidence = given.numbers[0], pooled = given.numbers[1];
    if (pooled != 0 && pooled != 1)
        return Failure{Reason::neither_true_nor_false, 3};
    Series const baseline = describe(*given.columns[0]), fresh = describe(*given.columns[1]);
    if (Failure const why = check_series(baseline, fresh); why.reason != Reason::none)
        return why;
    for (unsigned place : {0U, 1U})
        if (!((place == 0 ? baseline : fresh).mean > 0))
            return Failure{Reason::mean_not_positive, place};
    double const ratio = fresh.mean / baseline.mean;
    Compared const compared =
        pooled != 0 ? with_pooled_variance(baseline, fresh) : with_own_variances(baseline, fresh, ratio);
    Limits const limits =
        limits_of_ratio(baseline.mean, fresh.mean, compared, t_exceeded(1 - confidence, compared.degrees_of_freedom));
    bool const bounded = !failed(limits.high);
    double const uncertainty = std::sqrt(compared.baseline_variance + compared.new_variance);
    double const t_of_no_change = (fresh.mean - baseline.mean) / uncertainty;
    return one_row({1 - ratio, bounded ? 1 - limits.high : limits.high, bounded ? 1 - limits.low : limits.low,
                    probability_beyond(t_of_no_change, compared.degrees_of_freedom), compared.degrees_of_freedom,
                    confidence});
}

} // namespace hearthcell::kernels
