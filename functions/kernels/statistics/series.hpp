#pragma once
// Repeated runs of one test: how many, their mean and scatter, and where the true mean may lie.

#include "functions/contract/kernel.hpp"
#include "functions/number/distributions.hpp"
#include "functions/number/twice.hpp"

#include <cmath>

namespace hearthcell::kernels {

struct Series {
    std::size_t runs = 0;
    double mean = 0;
    double variance = 0; ///< of one run (n - 1); 0 while there are fewer than two

    double deviation() const { return std::sqrt(variance); }
    double variance_of_mean() const { return variance / double(runs); }
};

/// What lies nearer to 0 counts as 0: no measurement is that small, and the square of a mean or of a scatter that were
/// would be lost.
inline constexpr double least_size = 1e-100;
inline double or_zero(double x, double least) {
    return std::fabs(x) < least ? 0 : x;
}

/// Mean and variance in two passes, both summed in twice the digits. A blank is no run.
inline Series describe(Block const& column) {
    Series series;
    Twice sum;
    for (double const run : column.numbers) {
        if (is_absent(run))
            continue;
        sum.add(run);
        ++series.runs;
    }
    if (series.runs == 0)
        return series;
    Twice const mean = sum.divided_by(double(series.runs));
    series.mean = or_zero(mean.rounded(), least_size);
    if (series.runs == 1)
        return series;
    Twice squares;
    for (double const run : column.numbers) {
        if (is_absent(run))
            continue;
        double const deviation = (run - mean.high) - mean.low;
        squares.add(deviation * deviation);
    }
    series.variance = or_zero(squares.rounded() / double(series.runs - 1), least_size * least_size);
    return series;
}

/// Values side by side. A coded failure among them is an error in its own cell only.
inline Block one_row(std::vector<double> values) {
    std::size_t const columns = values.size();
    return {1, columns, std::move(values), {}};
}

/// Columns: values. Numbers: confidence.
inline Outcome series(Given const& given) {
    Series const series = describe(*given.columns[0]);
    if (series.runs < 2)
        return Failure{Reason::too_few_runs, 0};
    double const confidence = given.numbers[0];
    double const half_width =
        t_exceeded(1 - confidence, double(series.runs - 1)) * std::sqrt(series.variance_of_mean());
    double const variation = series.mean > 0 ? series.deviation() / series.mean : failure(Reason::mean_not_positive, 0);
    return one_row({series.mean, double(series.runs), series.deviation(), variation, series.mean - half_width,
                    series.mean + half_width, confidence});
}

} // namespace hearthcell::kernels
