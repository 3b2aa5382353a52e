#pragma once
// Heat loss of a pot of water from a log of its cooling: T = air + A exp(-t UA/C) by least squares of the temperatures,
// with the mean heat capacity C between the fitted first and last temperature.

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/log/readings.hpp"

#include <cmath>

namespace hearthcell::kernels {

struct HeatLossQuery {
    double water, air, pot; ///< g, °C, J/K
};

struct HeatLoss {
    Reason reason = Reason::none;
    double loss = 0;            ///< W/K
    double first = 0, last = 0; ///< fitted temperatures at the ends
    double scatter = 0;         ///< K; 0 where two readings fix it
};

namespace cooling {
inline constexpr double warm_up = 2; // K that the log may rise above its first reading before it counts as heating

/// T - air = height exp(-decay u), u from -1 to 1 over the log.
struct Decay {
    double height = 0, decay = 0;
};

/// One more step of Gauss and Newton on the two, on readings as they are: taking logarithms would blow up the noise of
/// readings near the air. The first step, from no decay at all, is the straight line.
inline Decay improved(Log log, double middle, double half, double air, Decay const& start) {
    double aa = 0, ab = 0, bb = 0, a_off = 0, b_off = 0;
    for (Reading const& reading : log) {
        double const u = (reading.minute - middle) / half;
        double const shape = std::exp(-start.decay * u);
        double const by_decay = -u * start.height * shape;
        double const off = reading.temperature - air - start.height * shape;
        aa += shape * shape;
        ab += shape * by_decay;
        bb += by_decay * by_decay;
        a_off += shape * off;
        b_off += by_decay * off;
    }
    double const determinant = aa * bb - ab * ab;
    return {start.height + (bb * a_off - ab * b_off) / determinant,
            start.decay + (aa * b_off - ab * a_off) / determinant};
}
} // namespace cooling

inline HeatLoss heat_loss(Log log, HeatLossQuery const& query) {
    using namespace cooling;
    if (highest(log) > log.front().temperature + warm_up)
        return {Reason::warms_before_cooling};
    double const middle = (log.front().minute + log.back().minute) / 2;
    double const half = (log.back().minute - log.front().minute) / 2;
    double sum = 0;
    for (Reading const& reading : log)
        sum += reading.temperature - query.air;
    Decay fit{sum / double(log.size()), 0};
    if (!(fit.height > 0))
        return {Reason::air_not_below};
    constexpr int most_steps = 100;
    double change = 0; // of the decay, in the last step
    for (int step = 0; step < most_steps; ++step) {
        double const before = fit.decay;
        fit = improved(log, middle, half, query.air, fit);
        if (!(fit.height > 0) || std::abs(fit.decay) > 20) // not the shape of a cooling; NaN ends here too
            return {Reason::not_cooling};
        change = std::abs(fit.decay - before);
        if (change <= 1e-12 * std::abs(fit.decay))
            break;
    }
    // Noise can make the steps go to and fro for ever; a sum of very many readings is never still to the last digits.
    if (!(fit.decay > 0) || change > 1e-9 * fit.decay)
        return {Reason::not_cooling};
    HeatLoss result;
    result.first = query.air + fit.height * std::exp(fit.decay);
    result.last = query.air + fit.height * std::exp(-fit.decay);
    double squares = 0;
    for (Reading const& reading : log) {
        double const off =
            reading.temperature - query.air - fit.height * std::exp(-fit.decay * (reading.minute - middle) / half);
        squares += off * off;
    }
    if (log.size() > 2)
        result.scatter = std::sqrt(squares / double(log.size() - 2));
    double const capacity = water_capacity(query.water, result.first, result.last) + query.pot; // J/K
    result.loss = capacity * fit.decay / (half * 60);
    return result;
}

} // namespace hearthcell::kernels
