#pragma once
// The net power that reached the water (and the pot, with its heat capacity) over a stretch of the heating: the slope
// of the least-squares line times the mean heat capacity of the stretch.
//
// The stretch is given in °C. Its ends are turned into minutes by lasting crossings and all readings between them are
// taken: picking the readings by their own temperature would flatten the line. Left out, it goes from 30 % to 80 % of
// the rise, where the fire has caught and evaporation is still small, and ends 10 K below the highest temperature (the
// boiling point, in a log that boils). Common practice, no source.

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/log/crossing.hpp"
#include "functions/kernels/log/line.hpp"

namespace hearthcell::kernels {

struct HeatGainQuery {
    double water, from, to, pot; ///< g, °C, °C, J/K; the stretch may be absent
};

struct HeatGain {
    Reason reason = Reason::none;
    double power = 0; ///< kW
    double from = 0, to = 0;
    std::size_t readings = 0;
    Line line{};
};

namespace heat_gain_rules {
inline constexpr double first_share = 0.3, last_share = 0.8, below_highest = 10;
inline constexpr std::size_t least_readings = 3;
inline constexpr double start_gap = 1; // K that the log may start above the stretch
} // namespace heat_gain_rules

inline HeatGain heat_gain(Log log, HeatGainQuery const& query) {
    using namespace heat_gain_rules;
    double const first = log.front().temperature, top = highest(log), rise = top - first;
    HeatGain result;
    result.from = is_absent(query.from) ? first + first_share * rise : query.from;
    result.to = is_absent(query.to) ? std::min(first + last_share * rise, top - below_highest) : query.to;
    if (result.to <= result.from)
        return {is_absent(query.from) || is_absent(query.to) ? Reason::stretch_not_covered : Reason::to_not_above_from};
    Crossing const begin = lasting_crossing(log, result.from, true), end = lasting_crossing(log, result.to, true);
    bool const starts_late = begin.kind == CrossingKind::beyond_from_start && first > result.from + start_gap;
    if (begin.kind == CrossingKind::none || starts_late || end.kind != CrossingKind::found)
        return {Reason::stretch_not_covered};
    Log const stretch = between(log, begin.minute, end.minute);
    if (stretch.size() < least_readings)
        return {Reason::too_few_readings};
    result.readings = stretch.size();
    result.line = fit_line(stretch);
    double const capacity = water_capacity(query.water, result.from, result.to) + query.pot; // J/K
    result.power = result.line.slope / 60 * capacity / 1000;
    return result;
}

} // namespace hearthcell::kernels
