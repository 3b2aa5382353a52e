#pragma once
// When a log that stops early would have reached the boiling point, and how well that is known.
//
// The heating model is fitted to the readings from a fifth of the logged rise on (before that the fire is catching).
// The standard uncertainty is that of the fit, to first order in level, rate and decay, with the readings' own scatter;
// where each residual resembles the next, as with a coarse display or an unsteady fire, it grows by what that
// correlation takes from the number of readings. It tells nothing of a fire that changes after the last reading.
// A forecast is refused where nobody could stand by it. All limits are common practice, no source.

#include "functions/kernels/log/crossing.hpp"
#include "functions/kernels/log/heating_model.hpp"

namespace hearthcell::kernels {

namespace forecast_rules {
inline constexpr double first_share = 0.2; // of the logged rise, which is left out
inline constexpr std::size_t least_readings = 8;
inline constexpr double least_rise = 5;       // K
inline constexpr double most_uncertain = 0.1; // of the minutes to the boil
inline constexpr double sure = 3;             // standard uncertainties that a speeding up must show
inline constexpr double speeding_up = 1.2;    // last rate by first rate
} // namespace forecast_rules

struct Forecast {
    Reason reason = Reason::none;
    double minutes = 0, uncertainty = 0; ///< from the first reading
    double beyond = 0;                   ///< minutes from the last reading on
    double last = 0;                     ///< fitted temperature at the last reading
    HeatingFit fit{};
};

inline Log steady_heating(Log log) {
    double const first = log.front().temperature;
    Crossing const start = lasting_crossing(log, first + forecast_rules::first_share * (highest(log) - first), true);
    return start.kind == CrossingKind::found ? log.subspan(start.next) : log;
}

/// Of the level, rate and decay to the boil's u, to first order, as a variance.
inline double variance_at(HeatingFit const& fit, double u) {
    double const speed = fit.rate * std::exp(-fit.decay * u); // K per unit of u
    Vector3 const slopes{-1 / speed, -heating::shape(u, fit.decay) / speed,
                         -fit.rate * heating::shape_by_decay(u, fit.decay) / speed};
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            sum += slopes[i] * slopes[j] * fit.inverse[i][j];
    // Of few readings the scatter itself is uncertain: t-distributed, whose standard deviation this is (JCGM 101).
    double const freedom = double(fit.readings) - 3;
    double const of_t = freedom / (freedom - 2);
    bool const correlated = fit.neighbours > 2 / std::sqrt(double(fit.readings));
    double const inflation = correlated ? (1 + fit.neighbours) / (1 - fit.neighbours) : 1;
    return sum * fit.variance * of_t * inflation;
}

inline bool speeds_up(HeatingFit const& fit) {
    double const uncertainty = std::sqrt(fit.inverse[2][2] * fit.variance);
    return fit.decay < -forecast_rules::sure * uncertainty && std::exp(-2 * fit.decay) > forecast_rules::speeding_up;
}

inline Forecast boil_forecast(Log log, double boiling_point) {
    using namespace forecast_rules;
    if (highest(log) - log.front().temperature < least_rise)
        return {Reason::not_heating};
    if (lasting_crossing(log, boiling_point, true).kind != CrossingKind::none)
        return {Reason::log_boils_already};
    Log const steady = steady_heating(log);
    if (steady.size() < least_readings)
        return {Reason::too_few_readings};
    Forecast result;
    result.fit = fit_heating(steady);
    HeatingFit const& fit = result.fit;
    if (speeds_up(fit) || fit.decay <= heating::least_decay)
        return {Reason::heating_speeds_up};
    if (!(fit.rate > 0))
        return {Reason::not_heating};
    double const rise = (boiling_point - fit.level) / fit.rate;
    if (!fit.sound || fit.decay * rise >= 1)
        return {Reason::forecast_never_boils};
    double const u = rise * logarithm_quotient(-fit.decay * rise);
    result.beyond = (u - 1) * fit.half;
    result.minutes = fit.middle + u * fit.half - log.front().minute;
    result.last = fit.level + fit.rate * heating::shape(1, fit.decay);
    if (result.beyond > 2 * fit.half)
        return {Reason::forecast_too_far};
    result.uncertainty = std::sqrt(variance_at(fit, u)) * fit.half;
    if (!(result.uncertainty <= most_uncertain * result.minutes))
        return {Reason::forecast_uncertain};
    return result;
}

} // namespace hearthcell::kernels
