#include "simulated.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr double second = 1 / 60.0, capacity = 4.4 * 4186, air = 20, mark = 0.5, simmer_sets_in = 1;

/// The power as a share of its mean.
class Fire {
public:
    Fire(Bench const& given, Random& draws)
        : bench(given), random(draws), height(draws.uniform(bench.batch_low, bench.batch_high)),
          period(draws.uniform(2, 4)), phase(draws.uniform(0, 1)), keeps(std::exp(-second / bench.correlation)),
          deviation(bench.wander * draws.normal()) {}

    double at(double minute) {
        deviation = keeps * deviation + bench.wander * std::sqrt(1 - keeps * keeps) * random.normal();
        double const in_batch = minute / period + phase - std::floor(minute / period + phase);
        double const caught = bench.catching > 0 ? 1 - std::exp(-minute / bench.catching) : 1;
        return std::max(0.0, (1 + deviation + height * (0.5 - in_batch)) * caught * (1 - bench.dying * minute));
    }

private:
    Bench const& bench;
    Random& random;
    double height, period, phase, keeps, deviation;
};

class Probe {
public:
    Probe(Bench const& given, Random& draws, double start)
        : bench(given), random(draws), offset(bench.offset * draws.normal()), shown(start) {}

    void follow(double water) { shown += (water - shown) * (bench.lag > 0 ? 1 - std::exp(-second / bench.lag) : 1); }
    double read() {
        double value = shown + offset + bench.noise * random.normal();
        if (random.uniform(0, 1) < bench.wild)
            value += random.uniform(5, 30) * (random.below(2) == 0 ? 1 : -1);
        return std::round(value / bench.rounding) * bench.rounding;
    }

private:
    Bench const& bench;
    Random& random;
    double offset, shown;
};

} // namespace

SimulatedBoil simulate(Bench const& bench, Random& random) {
    double const power = random.uniform(1000, 2200), loss = random.uniform(2, 6), start = random.uniform(15, 25);
    double const phase = random.uniform(0, bench.step);
    double const held = random.uniform(bench.shortest_hold, bench.longest_hold);
    double const drop = random.uniform(bench.least_drop, bench.most_drop);
    Fire fire(bench, random);
    Probe probe(bench, random, start);
    SimulatedBoil result;
    double water = start, boiled = absent;
    constexpr double longest = 600; // min
    bool recording = true;
    for (int i = 0; i * second < longest && (recording || result.truth == 0); ++i) {
        double const minute = i * second, read_at = phase + double(result.log.size()) * bench.step;
        probe.follow(water);
        recording = recording && !(minute > boiled + bench.after) && !(water >= bench.stops_at); // absent: false
        if (recording && minute >= read_at) {
            result.log.push_back({read_at, probe.read(), unsigned(result.log.size() + 1)});
            recording = !(bench.ends_at_boil && result.truth > 0);
        }
        double const before = water;
        water += (power * fire.at(minute) - loss * (water - air)) / capacity * 60 * second;
        if (minute > boiled + held)
            water = simulated_boiling_point - drop * (1 - std::exp(-(minute - boiled - held) / simmer_sets_in));
        water = std::min(water, simulated_boiling_point);
        double const level = simulated_boiling_point - mark;
        if (result.truth == 0 && water >= level)
            result.truth = minute + second * (level - before) / (water - before);
        if (is_absent(boiled) && water == simulated_boiling_point)
            boiled = minute;
    }
    return result;
}

} // namespace hearthcell::tests
