#pragma once
// Logs with a known truth, and calls of the log functions on them.

#include "functions/call/call.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include <cstdint>
#include <string>
#include <vector>

namespace hearthcell::tests {

/// Numbers that are the same on every machine and in every run (splitmix64).
class Random {
public:
    explicit Random(std::uint64_t seed) : state(seed) {}
    double uniform(double low, double high);
    double normal(); ///< mean 0, standard deviation 1
    std::size_t below(std::size_t count);

private:
    std::uint64_t next();
    std::uint64_t state;
};

using Readings = std::vector<double>;
inline constexpr double nothing = absent; // an empty cell

struct LogColumns {
    Readings minutes, temperatures;
};

/// A pot over a steady fire: C dT/dt = P - UA (T - air).
struct Pot {
    double capacity = 21380, power = 1500, loss = 5, start = 20, air = 20; // J/K, W, W/K, °C, °C

    double at(double minute) const;
    double minutes_to(double temperature) const;
    /// A pot of 2 to 6 kg of water over 0.8 to 2.5 kW that does come to the boil.
    static Pot any(Random& random);
};

/// Readings every so many minutes up to a time, with normal noise of a standard deviation in K; at the boiling point
/// the temperature stays.
LogColumns log_of(Pot const& pot, double step, double until, double boiling_point = 1e9);
void add_noise(LogColumns& log, double deviation, Random& random);
void round_to(LogColumns& log, double display_step);

Readings every(double step, int count); ///< times from 0 on
Readings with(Readings readings, Readings const& more);
/// A reading every minute, of which every second has no temperature.
LogColumns half_empty(int rows);

Block column(Readings const& readings);
Block row(Readings const& readings);

Outcome call_log(std::string_view function, LogColumns const& log, std::vector<Value> more = {});
double number_of(Outcome const& outcome); ///< the first of several; fails the test when it is none
Reason reason_of(Outcome const& outcome); ///< Reason::none for a result
unsigned row_of(Outcome const& outcome);  ///< the row that a failure names

std::string explained(std::string_view function, LogColumns const& log, std::vector<Value> more = {});

} // namespace hearthcell::tests
