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
#include "functions/number/side_by_side.hpp"

#include <array>
#include <cmath>

namespace hearthcell::kernels {

/// What the filter takes for granted; a boil is worked out for several such fires (heating.hpp).
template <class Real> struct WanderingFire {
    Real loss{};            ///< b, 1/min
    Real deviation{};       ///< standard deviation of w, K/min
    double correlation = 3; ///< min
    double air = 20;        ///< °C
};

/// How the state changes over a stretch of time.
template <class Real> struct Passage {
    Real water_keeps{}, by_rate{}, by_deviation{}; ///< exp(-b t); min: what a and w add to T
    double fire_keeps = 1;                         ///< exp(-t/correlation)
    Real water_noise{}, cross_noise{}, fire_noise{};
};

template <class Real> Passage<Real> passage(WanderingFire<Real> const& fire, double minutes) {
    using hearthcell::exp, std::exp;
    Real const b = fire.loss;
    double const k = 1 / fire.correlation;
    Passage<Real> result;
    result.water_keeps = exp(-b * minutes);
    result.fire_keeps = std::exp(-k * minutes);
    result.by_rate = (1 - result.water_keeps) / b;
    result.by_deviation = (result.water_keeps - result.fire_keeps) / (k - b);
    // The deviation is driven by white noise; the integrals of what a push of it does later.
    double const fire_twice = (1 - result.fire_keeps * result.fire_keeps) / (2 * k);
    Real const both = (1 - result.fire_keeps * result.water_keeps) / (k + b);
    Real const water_twice = (1 - result.water_keeps * result.water_keeps) / (2 * b);
    Real const drive = 2 * k * fire.deviation * fire.deviation;
    result.fire_noise = drive * fire_twice;
    result.cross_noise = drive * (both - fire_twice) / (k - b);
    Real const square = drive * (fire_twice - 2 * both + water_twice) / ((k - b) * (k - b));
    result.water_noise = larger(square, Real{}); // rounding, where the stretch is very short
    return result;
}

/// What is left of water and deviation after some minutes, and what they and the rate then make.
struct Later {
    double water = 0, deviation = 0;
};

/// The three quantities and their covariance.
template <class Real> struct HeatingState {
    Real water{}, deviation{}, rate{};
    Real water2{}, deviation2{}, rate2{}; ///< variances
    Real water_deviation{}, water_rate{}, deviation_rate{};

    /// Their middle, without its uncertainty.
    Later after(WanderingFire<Real> const& fire, double minutes) const {
        double const keeps = std::exp(-fire.loss * minutes), fire_keeps = std::exp(-minutes / fire.correlation);
        double const by_deviation = (keeps - fire_keeps) / (1 / fire.correlation - fire.loss);
        return {fire.air + (water - fire.air) * keeps + rate * (1 - keeps) / fire.loss + deviation * by_deviation,
                deviation * fire_keeps};
    }

    void advance(Passage<Real> const& p, double air) {
        Real const f = p.by_deviation, g = p.by_rate, e = p.water_keeps;
        double const k = p.fire_keeps;
        water = air + (water - air) * e + g * rate + f * deviation;
        deviation *= k;
        Real const cross = e * water_deviation + f * deviation2 + g * deviation_rate;
        Real const with_rate = e * water_rate + f * deviation_rate + g * rate2;
        water2 = e * (e * water2 + f * water_deviation + g * water_rate) + f * cross + g * with_rate + p.water_noise;
        water_deviation = k * cross + p.cross_noise;
        water_rate = with_rate;
        deviation2 = k * k * deviation2 + p.fire_noise;
        deviation_rate *= k;
    }

    /// Takes a reading in; gives how far it was off, squared, in variances of what was foreseen.
    Real take(double reading, Real const& variance) {
        Real const share = 1 / (water2 + variance), off = reading - water;
        Real const of_water = water2 * share, of_deviation = water_deviation * share, of_rate = water_rate * share;
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

/// One of the two.
inline HeatingState<double> one_of(HeatingState<SideBySide> const& both, int which) {
    return {both.water[which],           both.deviation[which],  both.rate[which],
            both.water2[which],          both.deviation2[which], both.rate2[which],
            both.water_deviation[which], both.water_rate[which], both.deviation_rate[which]};
}

} // namespace hearthcell::kernels
