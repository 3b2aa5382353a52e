#pragma once
// Heat loss of a pot of water from a log of its cooling: T = air + A exp(-t UA/C) by least squares of the temperatures,
// with the mean heat capacity C between the fitted first and last temperature. The standard uncertainty is that of the
// fit, with the readings' own scatter (of which a display's rounding and 0.05 K are the least), and grows where each
// residual resembles the next, as it does when the draught changes; the air counts as exactly known.

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/log/scatter.hpp"

namespace hearthcell::kernels {

struct HeatLossQuery {
    double water, air, pot; ///< g, °C, J/K
};

struct HeatLoss {
    Reason reason = Reason::none;
    double loss = 0, uncertainty = 0; ///< W/K
    double first = 0, last = 0;       ///< fitted temperatures at the ends
    double scatter = 0;               ///< K; 0 where two readings fix it
};

namespace cooling {
inline constexpr double warm_up = 2;   // K that the log may rise above its first reading before it counts as heating
inline constexpr double steepest = 60; // time constants that a log may last

/// T - air = height exp(-decay u), u from 0 to 1 over the log.
struct Decay {
    double height = 0, decay = 0;
};

/// What a step of the fit needs, and what its uncertainty is made from.
struct Sums {
    double aa = 0, ab = 0, bb = 0, a_off = 0, b_off = 0, squares = 0, neighbours = 0;

    double determinant() const { return aa * bb - ab * ab; }
};

/// Of the readings as they are: taking logarithms would blow up the noise of readings near the air.
inline Sums sums_of(Log log, double air, Decay const& fit) {
    Sums s;
    double const first = log.front().minute, span = log.back().minute - first;
    double previous = 0;
    for (Reading const& reading : log) {
        double const u = (reading.minute - first) / span, shape = std::exp(-fit.decay * u);
        double const by_decay = -u * fit.height * shape, off = reading.temperature - air - fit.height * shape;
        s.aa += shape * shape;
        s.ab += shape * by_decay;
        s.bb += by_decay * by_decay;
        s.a_off += shape * off;
        s.b_off += by_decay * off;
        s.squares += off * off;
        s.neighbours += off * previous;
        previous = off;
    }
    return s;
}

/// One more step of Gauss and Newton. From no decay at all it is the straight line.
inline Decay improved(Sums const& s, Decay const& start) {
    return {start.height + (s.bb * s.a_off - s.ab * s.b_off) / s.determinant(),
            start.decay + (s.aa * s.b_off - s.ab * s.a_off) / s.determinant()};
}

/// Where the search begins: where half of the drop is done within the log, that time tells the decay, so that a cooling
/// that has ended long since is found, too.
inline Decay beginning(Log log, double air) {
    double const first = log.front().temperature - air, span = log.back().minute - log.front().minute;
    for (Reading const& reading : log)
        if (reading.temperature - air < first / 2)
            return {first, std::log(2.0) * span / (reading.minute - log.front().minute)};
    double sum = 0;
    for (Reading const& reading : log)
        sum += reading.temperature - air;
    return {sum / double(log.size()), 0};
}

/// Relative uncertainty of the decay.
inline double uncertainty_of(Log log, Sums const& s, double decay) {
    double const n = double(log.size()), step = display_step(log);
    double const least = step * step / 12 + fineness::least_scatter * fineness::least_scatter;
    double const variance = std::max(log.size() > 2 ? s.squares / (n - 2) : 0, least);
    double const alike = s.squares > 0 ? s.neighbours / s.squares : 0;
    double const inflation = alike > 2 / std::sqrt(n) ? (1 + alike) / (1 - alike) : 1;
    return std::sqrt(variance * inflation * s.aa / s.determinant()) / decay;
}
} // namespace cooling

inline HeatLoss heat_loss(Log log, HeatLossQuery const& query) {
    using namespace cooling;
    if (highest(log) > log.front().temperature + warm_up)
        return {Reason::warms_before_cooling};
    double mean = 0;
    for (Reading const& reading : log)
        mean += (reading.temperature - query.air) / double(log.size());
    if (!(mean > 0) || !(log.front().temperature > query.air))
        return {Reason::air_not_below};
    Decay fit = beginning(log, query.air);
    constexpr int most_steps = 100;
    double change = 0; // of the decay, in the last step
    Sums sums;
    for (int step = 0; step < most_steps; ++step) {
        double const before = fit.decay;
        sums = sums_of(log, query.air, fit);
        fit = improved(sums, fit);
        if (!(fit.height > 0) || std::abs(fit.decay) > steepest) // not the shape of a cooling; NaN ends here too
            return {Reason::cooling_unsettled};
        change = std::abs(fit.decay - before);
        if (change <= 1e-12 * std::abs(fit.decay))
            break;
    }
    if (!(fit.decay > 0))
        return {Reason::not_cooling};
    // Noise can make the steps go to and fro for ever; a sum of very many readings is never still to the last digits.
    if (change > 1e-9 * fit.decay)
        return {Reason::cooling_unsettled};
    HeatLoss result;
    result.first = query.air + fit.height;
    result.last = query.air + fit.height * std::exp(-fit.decay);
    if (!(result.first > result.last)) // but in digits that a temperature does not hold
        return {Reason::not_cooling};
    sums = sums_of(log, query.air, fit);
    if (log.size() > 2)
        result.scatter = std::sqrt(sums.squares / double(log.size() - 2));
    double const capacity = water_capacity(query.water, result.first, result.last) + query.pot; // J/K
    result.loss = capacity * fit.decay / ((log.back().minute - log.front().minute) * 60);
    result.uncertainty = result.loss * uncertainty_of(log, sums, fit.decay);
    return result;
}

} // namespace hearthcell::kernels
