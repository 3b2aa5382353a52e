#pragma once
// Boils as a bench sees them, with the truth known: a fire that wanders, heat loss, the boil, and a tester or logger
// who reads a probe that is a little out. Everything is drawn from a seed, so that a log is the same in every run.
//
// The pot: 4.4 kg of water, 1.0 to 2.2 kW into it, 2 to 6 W/K lost to air of 20 °C. The truth is the minute, from the
// lighting on, at which the water itself comes within half a kelvin of its boiling temperature.

#include "functions/kernels/log/readings.hpp"
#include "logs.hpp"

namespace hearthcell::tests {

struct Bench {
    double step = 5, rounding = 0.5, noise = 0.1; ///< min, K, K
    double wander = 0.1, correlation = 3;         ///< standard deviation of the power as a share; min
    double catching = 0;                          ///< min: the power grows as 1 - exp(-t/catching)
    double batch_low = 0, batch_high = 0;         ///< height of a saw-tooth of the power every 2 to 4 min, as a share
    double dying = 0;                             ///< share of the power a minute
    double offset = 0.4;                          ///< K, standard deviation of the probe's error
    double lag = 0;                               ///< min, of the probe
    double shortest_hold = 10, longest_hold = 10; ///< min that the boil is held, then
    double least_drop = 0, most_drop = 0;         ///< K that the simmer lies below it
    double after = 10;                            ///< min of the log after the boil set in
    double wild = 0;                              ///< share of readings that stand 5 to 30 K off
    bool ends_at_boil = false;                    ///< the reading that shows the boil is the last
    double stops_at = absent;                     ///< °C of the water: the log ends there, short of the boil
};

struct SimulatedBoil {
    std::vector<kernels::Reading> log;
    double truth = 0; ///< min from the lighting
};

inline constexpr double simulated_boiling_point = 94.983; // °C, at 1500 m

SimulatedBoil simulate(Bench const& bench, Random& random);

} // namespace hearthcell::tests
