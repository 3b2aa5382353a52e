#pragma once
// Which of several runs stands apart from the others.

#include "functions/kernels/statistics/series.hpp"

namespace hearthcell::kernels {

/// What the farthest of n runs exceeds, in standard deviations, only once in 1/`beyond` series. Grubbs' test,
/// two-sided.
inline double critical_distance(std::size_t runs, double beyond) {
    double const n = double(runs);
    double const t = t_exceeded(beyond / n, n - 2);
    return (n - 1) / std::sqrt(n) * std::sqrt(t * t / (n - 2 + t * t));
}

// With three runs the critical distance all but equals the largest that three runs can have; with four it is close.
inline constexpr std::size_t least_runs_for_outlier = 5;

/// Columns: values. Numbers: confidence. The place of the run among the cells as they are given, blanks counted; of two
/// runs equally far out the first. 0 for none.
inline Outcome outlier(Given const& given) {
    Block const& column = *given.columns[0];
    Series const series = describe(column);
    if (series.runs < least_runs_for_outlier)
        return Failure{Reason::too_few_for_outlier, 0};
    double farthest = 0;
    std::size_t place = 0;
    for (std::size_t i = 0; i < column.numbers.size(); ++i) {
        if (is_absent(column.numbers[i]))
            continue;
        double const distance = std::fabs(column.numbers[i] - series.mean);
        if (distance > farthest) {
            farthest = distance;
            place = i + 1;
        }
    }
    double const critical = critical_distance(series.runs, 1 - given.numbers[0]) * series.deviation();
    bool const apart = series.variance > 0 && farthest > critical;
    return apart ? double(place) : 0.0;
}

} // namespace hearthcell::kernels
