#pragma once
// A reading corrected by check points: what an instrument indicated where the truth was known.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/log/line.hpp"

namespace hearthcell::kernels {

/// How far outside its check points a line is believed, in their own span. Common practice, no source.
inline constexpr double farthest_spans = 3;

struct Correction {
    double corrected = 0;
    Line line;              ///< of true values over indicated ones, which stand where it has temperatures and minutes
    bool is_offset = false; ///< for want of a second truth
    std::size_t points = 0; ///< a row in which one of the two is missing is none
    double spans_outside = 0;
    Failure failure;
};

/// A line needs two truths that differ; from one alone, however often it was read, an offset.
inline Correction correct(double reading, Block const& indicated, Block const& truths) {
    Correction result;
    std::vector<Reading> points;
    if (indicated.numbers.size() != truths.numbers.size()) {
        result.failure = {Reason::columns_differ};
        return result;
    }
    for (std::size_t i = 0; i < truths.numbers.size(); ++i)
        if (is_number(indicated.numbers[i]) && is_number(truths.numbers[i]))
            points.push_back({indicated.numbers[i], truths.numbers[i], unsigned(i + 1)});
    result.points = points.size();
    if (points.empty()) {
        result.failure = {Reason::no_rows};
        return result;
    }
    auto const [lowest, highest] = std::ranges::minmax(points, {}, &Reading::minute);
    auto const [least, most] = std::ranges::minmax(points, {}, &Reading::temperature);
    result.is_offset = least.temperature == most.temperature;
    double const span = highest.minute - lowest.minute;
    if (!result.is_offset && span == 0) {
        result.failure = {Reason::check_points_contradict};
        return result;
    }
    result.line = fit_line(points);
    if (result.is_offset) {
        result.line.slope = 1;
    } else {
        if (!(result.line.slope > 0))
            result.failure = {Reason::check_points_contradict};
        result.spans_outside = std::max({0.0, lowest.minute - reading, reading - highest.minute}) / span;
        if (result.failure.reason == Reason::none && result.spans_outside > farthest_spans)
            result.failure = {Reason::far_from_check_points, 0};
    }
    result.corrected = result.line.temperature + result.line.slope * (reading - result.line.minute);
    return result;
}

/// Columns: indicated values, true values. Numbers: reading.
inline Correction correction_of(Given const& given) {
    return correct(given.numbers[0], *given.columns[0], *given.columns[1]);
}
inline Outcome answer_corrected_reading(Given const& given) {
    Correction const correction = correction_of(given);
    return correction.failure.reason == Reason::none ? Outcome(correction.corrected) : Outcome(correction.failure);
}

} // namespace hearthcell::kernels
