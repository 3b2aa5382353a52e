#pragma once
// The heating of a pot over a fire that wanders, followed reading by reading.
//
//   dT/dt = a + w - b (T - air)
//
// T is the water's temperature, a the mean rate at which the fire would heat it at the temperature of the air, w the
// fire's deviation from that mean, b the heat loss by the pot's heat capacity. w is a first-order process: what is left
// of it after a time t is exp(-t/correlation). A Kalman filter carries the three and their covariance from reading to
// reading by the exact solution, so that readings may be as far apart as they like. Units: min, °C, K/min.

#include "functions/kernels/log/readings.hpp"

#include <array>
#include <cmath>

namespace hearthcell::kernels {

/// What the filter takes for granted; a boil is worked out for several such fires (heating.hpp).
struct WanderingFire {
    double loss = 0;        ///< b, 1/min
    double deviation = 0;   ///< standard deviation of w, K/min
    double correlation = 3; ///< min
    double air = 20;        ///< °C
};

/// How the state changes over a stretch of time.
struct Passage {
    double water_keeps = 1, fire_keeps = 1; ///< exp(-b t), exp(-t/correlation)
    double by_rate = 0, by_deviation = 0;   ///< min: what a and w add to T
    double water_noise = 0, cross_noise = 0, fire_noise = 0;
};

inline Passage passage(WanderingFire const& fire, double minutes) {
    double const b = fire.loss, k = 1 / fire.correlation;
    Passage result;
    result.water_keeps = std::exp(-b * minutes);
    result.fire_keeps = std::exp(-k * minutes);
    result.by_rate = (1 - result.water_keeps) / b;
    result.by_deviation = (result.water_keeps - result.fire_keeps) / (k - b);
    // The deviation is driven by white noise; the integrals of what a push of it does later.
    double const fire_twice = (1 - result.fire_keeps * result.fire_keeps) / (2 * k);
    double const both = (1 - result.fire_keeps * result.water_keeps) / (k + b);
    double const water_twice = (1 - result.water_keeps * result.water_keeps) / (2 * b);
    double const drive = 2 * k * fire.deviation * fire.deviation;
    result.fire_noise = drive * fire_twice;
    result.cross_noise = drive * (both - fire_twice) / (k - b);
    double const square = drive * (fire_twice - 2 * both + water_twice) / ((k - b) * (k - b));
    result.water_noise = std::max(square, 0.0); // rounding, where the stretch is very short
    return result;
}

/// What is left of water and deviation after some minutes, and what they and the rate then make.
struct Later {
    double water = 0, deviation = 0;
};

/// The three quantities and their covariance.
struct HeatingState {
    double water = 0, deviation = 0, rate = 0;
    double water2 = 0, deviation2 = 0, rate2 = 0; ///< variances
    double water_deviation = 0, water_rate = 0, deviation_rate = 0;

    /// Their middle, without its uncertainty.
    Later after(WanderingFire const& fire, double minutes) const {
        double const keeps = std::exp(-fire.loss * minutes), fire_keeps = std::exp(-minutes / fire.correlation);
        double const by_deviation = (keeps - fire_keeps) / (1 / fire.correlation - fire.loss);
        return {fire.air + (water - fire.air) * keeps + rate * (1 - keeps) / fire.loss + deviation * by_deviation,
                deviation * fire_keeps};
    }

    void advance(Passage const& p, double air) {
        double const f = p.by_deviation, g = p.by_rate, e = p.water_keeps, k = p.fire_keeps;
        water = air + (water - air) * e + g * rate + f * deviation;
        deviation *= k;
        double const cross = e * water_deviation + f * deviation2 + g * deviation_rate;
        double const with_rate = e * water_rate + f * deviation_rate + g * rate2;
        water2 = e * (e * water2 + f * water_deviation + g * water_rate) + f * cross + g * with_rate + p.water_noise;
        water_deviation = k * cross + p.cross_noise;
        water_rate = with_rate;
        deviation2 = k * k * deviation2 + p.fire_noise;
        deviation_rate *= k;
    }

    /// Takes a reading in; gives how far it was off, squared, in variances of what was foreseen.
    double take(double reading, double variance) {
        double const share = 1 / (water2 + variance), off = reading - water;
        double const of_water = water2 * share, of_deviation = water_deviation * share, of_rate = water_rate * share;
        water += of_water * off;
        deviation += of_deviation * off;
        rate += of_rate * off;
        rate2 -= of_rate * water_rate;
        deviation_rate -= of_rate * water_deviation;
        deviation2 -= of_deviation * water_deviation;
        water_rate -= of_rate * water2;
        water_deviation -= of_deviation * water2;
        water2 -= of_water * water2;
        return off * off * share;
    }
};

} // namespace hearthcell::kernels
