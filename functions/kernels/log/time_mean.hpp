#pragma once
// The mean over time of what a log holds, whatever that is: trapezoids, so that readings at unequal times count by the
// time that they stand for. The ends of a stretch that lie between two readings are put on the line between them.

#include "functions/kernels/log/readings.hpp"

namespace hearthcell::kernels {

struct TimeMean {
    Reason reason = Reason::none;
    double mean = 0;
    double minutes = 0;       ///< of the stretch
    std::size_t readings = 0; ///< within the stretch
    double longest_gap = 0;   ///< min
};

/// The value at a minute within the log.
inline double value_at(Log log, double minute) {
    auto const after = std::ranges::lower_bound(log, minute, {}, [](Reading const& reading) { return reading.minute; });
    if (after == log.begin() || after->minute == minute)
        return after->temperature;
    Reading const& before = *(after - 1);
    double const part = (minute - before.minute) / (after->minute - before.minute);
    return before.temperature + part * (after->temperature - before.temperature);
}

/// The ends of the stretch may be absent: the first and the last reading.
inline TimeMean time_mean(Log log, double from, double to) {
    double const first = is_absent(from) ? log.front().minute : from, last = is_absent(to) ? log.back().minute : to;
    if (last <= first)
        return {Reason::to_not_above_from};
    if (first < log.front().minute || last > log.back().minute)
        return {Reason::stretch_beyond_log};
    TimeMean result{.minutes = last - first};
    Reading previous{first, value_at(log, first)};
    double area = 0; // above the first value, so that a large one takes no digits
    double const base = previous.temperature;
    auto const go_to = [&](Reading const& next) {
        double const minutes = next.minute - previous.minute;
        area += minutes * ((previous.temperature - base) + (next.temperature - base)) / 2;
        result.longest_gap = std::max(result.longest_gap, minutes);
        previous = next;
    };
    for (Reading const& reading : between(log, first, last)) {
        ++result.readings;
        if (reading.minute > first)
            go_to(reading);
    }
    if (previous.minute < last)
        go_to({last, value_at(log, last)});
    result.mean = base + area / (last - first);
    return result;
}

} // namespace hearthcell::kernels
