#pragma once
// When a log that stops early would have boiled, and how well that is known: the minute at which the water would have
// come within half a kelvin of the boiling point, BOILTIME's own mark.
//
// The fire is followed from a third of the logged rise on (before that it may be catching) and carried on to the mark.
// The standard uncertainty holds for a fire that goes on wandering as it did and for a probe that is out by 0.4 K; it
// tells nothing of a probe that lags, of wood laid on or of a lid lifted after the last reading. A forecast is refused
// where nobody could stand by it. All limits are common practice, no source.

#include "functions/kernels/log/crossing.hpp"
#include "functions/kernels/log/heating.hpp"
#include "functions/kernels/log/line.hpp"
#include "functions/kernels/log/scatter.hpp"

namespace hearthcell::kernels {

namespace forecast_rules {
inline constexpr std::size_t least_readings = 4;
inline constexpr double least_rise = 5;       // K
inline constexpr double most_uncertain = 0.1; // of the minutes to the boil
inline constexpr double speeding_up = 1.3;    // of the heating rate, from the first half to the second
inline constexpr double sure = 2;             // standard uncertainties that this must show
inline constexpr double mark = 0.5;           // K below the boiling point
inline constexpr double probe_offset = 0.4;   // K
} // namespace forecast_rules

struct Forecast {
    Reason reason = Reason::none;
    double minutes = 0, uncertainty = 0; ///< from the first reading
    double beyond = 0;                   ///< minutes from the last reading on
    double last = 0;                     ///< temperature of the last point
    double rate = 0;                     ///< K/min, at the boil
    std::size_t readings = 0;
    double span = 0; ///< min of the readings that it rests on
};

/// The readings from a third of the rise on; of a sparse log its second half, four readings at least.
inline Log steady_heating(Log log) {
    double const first = log.front().temperature;
    Crossing const start = lasting_crossing(log, first + heating::first_share * (highest(log) - first), true);
    std::size_t const from = start.kind == CrossingKind::found ? start.next : 0;
    std::size_t const least = std::max(forecast_rules::least_readings, log.size() / 2);
    return log.size() - from >= forecast_rules::least_readings || log.size() < least ? log.subspan(from)
                                                                                     : log.last(least);
}

/// Whether the second half of the readings heats so much faster than the first that no wandering makes it.
inline bool speeds_up(Log steady) {
    double const middle = (steady.front().minute + steady.back().minute) / 2;
    Log const first = between(steady, steady.front().minute, middle),
              second = between(steady, middle, steady.back().minute);
    if (first.size() < 2 || second.size() < 2)
        return false;
    Line const slow = fit_line(first), fast = fit_line(second);
    double const more = fast.slope - forecast_rules::speeding_up * slow.slope;
    double const doubt = std::hypot(fast.slope_uncertainty, forecast_rules::speeding_up * slow.slope_uncertainty);
    return more > forecast_rules::sure * doubt;
}

inline Forecast boil_forecast(Log log, double boiling_point, double air) {
    using namespace forecast_rules;
    double const target = boiling_point - mark;
    if (highest(log) - log.front().temperature < least_rise)
        return {Reason::not_heating};
    if (lasting_crossing(log, target, true).kind != CrossingKind::none)
        return {Reason::log_boils_already};
    Log const steady = steady_heating(log);
    if (steady.size() < least_readings)
        return {Reason::too_few_readings};
    if (speeds_up(steady))
        return {Reason::heating_speeds_up};
    Forecast result;
    std::vector<HeatingPoint> const points = taken_together(steady, fineness_of(steady).variance);
    Arrival const boil = arrival(points, target, is_absent(air) ? heating::usual_air : air);
    if (!(boil.never < heating::most_never))
        return {Reason::forecast_never_boils};
    result.readings = steady.size();
    result.span = steady.back().minute - steady.front().minute;
    result.rate = boil.rate;
    result.beyond = boil.minute - log.back().minute;
    result.minutes = boil.minute - log.front().minute;
    result.last = points.back().temperature;
    if (result.beyond > steady.back().minute - log.front().minute)
        return {Reason::forecast_too_far};
    result.uncertainty = std::hypot(boil.uncertainty, probe_offset / boil.rate);
    if (!(result.uncertainty <= most_uncertain * result.minutes))
        return {Reason::forecast_uncertain};
    return result;
}

} // namespace hearthcell::kernels
