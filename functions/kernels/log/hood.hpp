#pragma once
// What a hood caught: concentration × flow, summed over the time of a log.

#include "functions/contract/kernel.hpp"
#include "functions/kernels/log/time_mean.hpp"

namespace hearthcell::kernels {

/// mg/min at each time. Columns: times, concentrations, flows (one serves all rows). Numbers: background.
inline Readings caught_by_hood(Given const& given) {
    Block const &times = *given.columns[0], &concentrations = *given.columns[1], &flows = *given.columns[2];
    std::size_t const rows = times.numbers.size();
    bool const one_flow = flows.numbers.size() == 1;
    if (concentrations.numbers.size() != rows || (!one_flow && flows.numbers.size() != rows))
        return {{}, {Reason::columns_differ}};
    Block caught = concentrations;
    for (std::size_t i = 0; i < rows; ++i) {
        double const flow = flows.numbers[one_flow ? 0 : i];
        bool const is_reading = is_number(concentrations.numbers[i]) && is_number(flow);
        caught.numbers[i] = is_reading ? (concentrations.numbers[i] - given.numbers[0]) * flow : absent;
    }
    return read_log(times, caught);
}

/// Numbers: background, from, to. g.
inline Outcome answer_hood(Given const& given) {
    Readings const readings = caught_by_hood(given);
    if (readings.failure.reason != Reason::none)
        return readings.failure;
    TimeMean const caught = time_mean(readings.log, given.numbers[1], given.numbers[2]);
    if (caught.reason != Reason::none)
        return Failure{caught.reason};
    if (caught.mean < 0)
        return Failure{Reason::background_above_reading, 1};
    return caught.mean * caught.minutes / 1000;
}

} // namespace hearthcell::kernels
