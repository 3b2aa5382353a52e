#pragma once
// How finely a log is read: the step of its display, and how its readings scatter.

#include "functions/kernels/log/readings.hpp"
#include "functions/number/median.hpp"

#include <cmath>

namespace hearthcell::kernels {

struct Fineness {
    double step = 0;     ///< K between the values that the display can show; 0 where none is seen
    double variance = 0; ///< of a reading, K²: scatter and rounding
};

namespace fineness {
inline constexpr double steps[] = {1, 0.5, 0.2, 0.1, 0.05};        // K
inline constexpr std::size_t enough = 200;                         // readings to tell the step from
inline constexpr double least_scatter = 0.05, usual_scatter = 0.1; // K
inline constexpr double close = 2; // min between readings, up to which their scatter shows
/// What a fire that wanders by 10 % bends the line through three readings, a part of the heating rate, at a minute
/// between them; it grows as that time does to the power 1.5.
inline constexpr double bend = 0.033;
} // namespace fineness

inline double display_step(Log log) {
    Log const some = log.first(std::min(log.size(), fineness::enough));
    for (double const step : fineness::steps)
        if (std::ranges::all_of(some, [&](Reading const& reading) {
                double const times = (reading.temperature - log.front().temperature) / step;
                return std::abs(times - std::round(times)) < 1e-4;
            }))
            return step;
    return 0;
}

/// Of a heating.
inline Fineness fineness_of(Log log) {
    using namespace fineness;
    Fineness result{display_step(log), 0};
    double const rounding = result.step * result.step / 12 + least_scatter * least_scatter;
    result.variance = std::max(rounding, usual_scatter * usual_scatter);
    constexpr std::size_t least_readings = 9;
    if (log.size() < least_readings)
        return result;
    std::vector<double> offs;
    offs.reserve(log.size());
    for (std::size_t i = 1; i + 1 < log.size(); ++i) {
        double const part = (log[i].minute - log[i - 1].minute) / (log[i + 1].minute - log[i - 1].minute);
        double const line = log[i - 1].temperature + part * (log[i + 1].temperature - log[i - 1].temperature);
        offs.push_back(std::abs(log[i].temperature - line));
    }
    double const span = log.back().minute - log.front().minute, apart = span / double(log.size() - 1);
    if (apart > close)
        return result;
    double const rate = (log.back().temperature - log.front().temperature) / span;
    double const of_fire = bend * rate * std::pow(apart, 1.5);
    double const seen = median(offs) / 0.6745; // of a normal distribution
    result.variance = std::max(rounding, (seen * seen - of_fire * of_fire) / 1.5);
    return result;
}

} // namespace hearthcell::kernels
