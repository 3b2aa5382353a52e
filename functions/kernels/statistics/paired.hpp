#pragma once
// Pairs: the same household, day or tester before and after a change. What differs between the pairs falls out.

#include "functions/kernels/statistics/saving.hpp"

#include <algorithm>

namespace hearthcell::kernels {

/// What the pairs say together. Rows of which one value is missing are left out and counted; a row without either is
/// none.
struct Pairs {
    Block before, after;
    std::size_t left_out = 0;

    std::size_t count() const { return before.numbers.size(); }

    /// after − factor · before, pair by pair.
    Block differences(double factor) const {
        Block result = after;
        for (std::size_t i = 0; i < count(); ++i)
            result.numbers[i] -= factor * before.numbers[i];
        return result;
    }
};

/// Of columns of one length.
inline Pairs pairs_of(Block const& before, Block const& after) {
    Pairs result;
    for (std::size_t i = 0; i < before.numbers.size(); ++i) {
        bool const has_before = !is_absent(before.numbers[i]), has_after = !is_absent(after.numbers[i]);
        if (has_before != has_after)
            ++result.left_out;
        if (!has_before || !has_after)
            continue;
        result.before.numbers.push_back(before.numbers[i]);
        result.after.numbers.push_back(after.numbers[i]);
    }
    result.before.rows = result.after.rows = result.count();
    result.before.columns = result.after.columns = 1;
    return result;
}

/// The pairs of both columns, or why there are none to be judged.
inline Failure read_pairs(Given const& given, Pairs& pairs) {
    if (given.columns[0]->numbers.size() != given.columns[1]->numbers.size())
        return {Reason::pairs_differ, 1};
    pairs = pairs_of(*given.columns[0], *given.columns[1]);
    return {pairs.count() < 2 ? Reason::too_few_pairs : Reason::none};
}

/// Columns: before, after. Numbers: confidence. The mean of after − before.
inline Outcome paired_difference(Given const& given) {
    Pairs pairs;
    if (Failure const why = read_pairs(given, pairs); why.reason != Reason::none)
        return why;
    Series const change = describe(pairs.differences(1));
    if (change.variance == 0)
        return Failure{Reason::no_scatter};
    double const confidence = given.numbers[0], degrees = double(pairs.count() - 1);
    double const uncertainty = std::sqrt(change.variance_of_mean());
    double const half_width = t_exceeded(1 - confidence, degrees) * uncertainty;
    return one_row({change.mean, change.mean - half_width, change.mean + half_width,
                    probability_beyond(change.mean / uncertainty, degrees), degrees, confidence, double(pairs.count()),
                    double(pairs.left_out)});
}

/// Every ratio Q that the paired t test of after − Q · before would not refuse (Fieller's theorem with what the pairs
/// have in common). The roots of (b² − t² vb) Q² − 2 (a b − t² c) Q + (a² − t² va) = 0, with the variances and the
/// covariance of the means.
inline Limits limits_of_paired_ratio(Pairs const& pairs, double t) {
    Series const before = describe(pairs.before), after = describe(pairs.after);
    Twice products;
    for (std::size_t i = 0; i < pairs.count(); ++i)
        products.add((pairs.before.numbers[i] - before.mean) * (pairs.after.numbers[i] - after.mean));
    double const n = double(pairs.count()), covariance = products.rounded() / (n - 1) / n;
    double const vb = before.variance_of_mean(), va = after.variance_of_mean(), t2 = t * t;
    double const leading = before.mean * before.mean - t2 * vb;
    if (!(leading > 0))
        return {};
    double const middle = after.mean * before.mean - t2 * covariance;
    // Never below 0 but for rounding: the ratio that was found is not refused.
    double const root = std::max(0.0, middle * middle - leading * (after.mean * after.mean - t2 * va));
    return {(middle - std::sqrt(root)) / leading, (middle + std::sqrt(root)) / leading};
}

/// Columns: before, after. Numbers: confidence. 1 − sum of after/sum of before; p as PAIREDDIFFERENCE has it, and
/// limits that leave out 0 exactly when p is below 1 − confidence.
inline Outcome paired_saving(Given const& given) {
    Pairs pairs;
    if (Failure const why = read_pairs(given, pairs); why.reason != Reason::none)
        return why;
    Series const before = describe(pairs.before), after = describe(pairs.after);
    for (unsigned place : {0U, 1U})
        if (!((place == 0 ? before : after).mean > 0))
            return Failure{Reason::mean_not_positive, place};
    Series const change = describe(pairs.differences(1));
    if (change.variance == 0)
        return Failure{Reason::no_scatter};
    double const confidence = given.numbers[0], degrees = double(pairs.count() - 1);
    Limits const ratios = limits_of_paired_ratio(pairs, t_exceeded(1 - confidence, degrees));
    bool const bounded = !failed(ratios.high);
    return one_row({1 - after.mean / before.mean, bounded ? 1 - ratios.high : ratios.high,
                    bounded ? 1 - ratios.low : ratios.low,
                    probability_beyond(change.mean / std::sqrt(change.variance_of_mean()), degrees), degrees,
                    confidence, double(pairs.count()), double(pairs.left_out)});
}

} // namespace hearthcell::kernels
