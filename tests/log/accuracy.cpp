#include "accuracy.hpp"

#include "functions/kernels/log/boil.hpp"
#include "functions/kernels/log/forecast.hpp"
#include "functions/kernels/log/wild.hpp"

namespace hearthcell::tests {
namespace {

constexpr double none = 0, logger = 1 / 6.0;

// clang-format off
constexpr AccuracyRow boil_rows[] = {
    {"every 5 min, to 0.5 K", {}, {0.1, 0.5, 0.92, 0.99}, {1.866, 2.205, 0, 0.94}},
    {"every 5 min, to 1 K", {.rounding = 1}, {0.1, 0.55, 0.92, 0.99}, {1.96, 2.342, 0, 0.89}},
    {"every 2 min, to 0.5 K", {.step = 2}, {0.08, 0.35, 0.92, 0.99}, {0.637, 0.762, 0, 1}},
    {"every minute, to 0.1 K", {.step = 1, .rounding = 0.1}, {0.05, 0.12, 0.92, 0.99}, {0.229, 0.288, 0, 1}},
    {"logger, 10 s", {.step = logger, .rounding = 0.1}, {0.03, 0.08, 0.92, 0.99}, {0, 0.028, 0, 1}},
    {"every minute, boil held 3 min, then a simmer 1 to 3 K lower",
     {.step = 1, .rounding = 0.1, .shortest_hold = 3, .longest_hold = 3, .least_drop = 1, .most_drop = 3},
     {0.05, 0.15, 0.92, 0.99}, {0.193, 0.283, 0, 1}},
    {"every 5 min, fire that catches over 3 min", {.catching = 3}, {0.2, 0.55, 0.92, 0.99}, {1.809, 2.146, 0, 0.944}},
    {"every 5 min, fed in batches", {.batch_low = 0.2, .batch_high = 0.4}, {0.15, 0.7, 0.9, 0.99}, {1.867, 2.205, 0, 0.94}},
    {"every minute, fed in batches", {.step = 1, .rounding = 0.1, .batch_low = 0.2, .batch_high = 0.4},
     {0.15, 0.7, 0.9, 0.99}, {0.227, 0.286, 0, 1}},
    {"every 5 min, fire that dies by 0.6 %/min", {.dying = 0.006}, {0.15, 0.7, 0.9, 0.99}, {1.848, 2.172, 0, 0.942}},
    {"every minute, fire that dies by 0.6 %/min", {.step = 1, .rounding = 0.1, .dying = 0.006}, {0.15, 0.7, 0.9, 0.99}, {0.212, 0.268, 0, 1}},
    {"every 5 min, fire remembered for 1 min", {.correlation = 1}, {0.15, 0.7, 0.9, 0.99}, {1.899, 2.226, 0, 0.936}},
    {"every 5 min, fire remembered for 8 min", {.correlation = 8}, {0.15, 0.7, 0.9, 0.99}, {1.851, 2.21, 0, 0.944}},
    {"every minute, fire remembered for 1 min", {.step = 1, .rounding = 0.1, .correlation = 1}, {0.15, 0.7, 0.9, 0.99}, {0.229, 0.284, 0, 1}},
    {"every minute, fire remembered for 8 min", {.step = 1, .rounding = 0.1, .correlation = 8}, {0.15, 0.7, 0.9, 0.99}, {0.228, 0.281, 0, 1}},
    // The commonest tests. Who ends there on a probe that reads low never sees a boil: #N/A.
    {"every 5 min, ends at the boil", {.ends_at_boil = true}, {0.1, 0.5, 0.92, 0.9}, {1.114, 1.554, 0, 0.072}},
    {"every minute, ends at the boil", {.step = 1, .rounding = 0.1, .ends_at_boil = true}, {0.1, 0.15, 0.92, 0.8}, {absent, absent, absent, 0}},
    {"every 5 min, fan down within a minute of the boil, simmer 1 to 3 K lower",
     {.shortest_hold = 0, .longest_hold = 1, .least_drop = 1, .most_drop = 3}, {0.3, 0.55, 0.92, 0.75}, {0.419, 1.444, 0, 0.188}},
    {"every minute, fan down within a minute of the boil",
     {.step = 1, .rounding = 0.1, .shortest_hold = 0, .longest_hold = 1, .least_drop = 1, .most_drop = 3},
     {0.05, 0.15, 0.92, 0.7}, {-0.44, 0.508, 0, 0.916}},
    {"logger, 10 s, fan down within a minute of the boil",
     {.step = logger, .rounding = 0.1, .shortest_hold = 0, .longest_hold = 1, .least_drop = 1, .most_drop = 3},
     {0.06, 0.1, 0.92, 0.8}, {-0.465, 0.517, 0, 0.942}},
    {"every 5 min, one reading in 50 wild", {.wild = 0.02}, {0.15, 0.8, 0.92, 0.97}, {1.8, 2.236, 0, 0.924}},
    {"every minute, one reading in 50 wild", {.step = 1, .rounding = 0.1, .wild = 0.02}, {0.05, 0.25, 0.92, 0.99}, {0.233, 0.335, 0, 1}},
    {"logger, 10 s, one reading in 50 wild", {.step = logger, .rounding = 0.1, .wild = 0.02}, {0.03, 0.08, 0.92, 0.99}, {0.001, 0.036, 0, 1}},
    {"every minute, to 0.5 K, readings scatter by 0.3 K", {.step = 1, .noise = 0.3}, {0.05, 0.2, 0.92, 0.99}, {0.437, 0.922, 0, 0.998}},
    {"logger, 10 s, readings scatter by 0.3 K", {.step = logger, .rounding = 0.1, .noise = 0.3}, {0.03, 0.08, 0.92, 0.99}, {0.036, 0.124, 0, 1}},
    // No uncertainty of ours holds a probe that lags: the boil comes late by the lag.
    {"every minute, probe that lags by 10 s", {.step = 1, .rounding = 0.1, .lag = logger}, {0.2, 0.25, none, 0.99}, {0.409, 0.44, 0, 1}},
};

constexpr AccuracyRow forecast_rows[] = {
    {"logger, 10 s, to 85 °C", {.step = logger, .rounding = 0.1, .stops_at = 85}, {0.1, 0.4, 0.92, 0.95}, {0.111, 0.586, 0.429, 0.918}},
    {"every 30 s to 70 °C", {.step = 0.5, .rounding = 0.1, .stops_at = 70}, {0.15, 1, 0.9, 0.95}, {0.033, 1.179, 0.464, 0.81}},
    {"logger to 85 °C, fire that catches over 3 min", {.step = logger, .rounding = 0.1, .catching = 3, .stops_at = 85},
     {0.1, 0.4, 0.92, 0.95}, {-0.07, 0.536, 0.483, 0.782}},
    {"every 2 min, to 0.5 K, to 85 °C", {.step = 2, .stops_at = 85}, {0.1, 0.55, 0.92, 0.95}, {0.128, 0.876, 0.634, 0.142}},
    {"logger to 85 °C, wandering by 5 %", {.step = logger, .rounding = 0.1, .wander = 0.05, .stops_at = 85},
     {0.1, 0.5, 0.88, 0.95}, {0.012, 0.289, 0.311, 0.998}},
    {"logger to 85 °C, wandering by 15 %", {.step = logger, .rounding = 0.1, .wander = 0.15, .stops_at = 85},
     {0.1, 0.5, 0.88, 0.95}, {0.271, 0.95, 0.543, 0.828}},
    {"logger to 85 °C, fed in batches",
     {.step = logger, .rounding = 0.1, .batch_low = 0.2, .batch_high = 0.4, .stops_at = 85}, {0.1, 0.5, 0.88, 0.95}, {0.103, 0.582, 0.595, 0.914}},
    {"logger to 85 °C, fire remembered for 1 min", {.step = logger, .rounding = 0.1, .correlation = 1, .stops_at = 85},
     {0.1, 0.5, 0.88, 0.95}, {0.062, 0.478, 0.565, 0.948}},
    {"logger to 85 °C, fire remembered for 8 min", {.step = logger, .rounding = 0.1, .correlation = 8, .stops_at = 85},
     {0.1, 0.5, 0.88, 0.95}, {0.055, 0.458, 0.325, 0.954}},
    {"logger to 85 °C, fire that dies by 0.6 %/min", {.step = logger, .rounding = 0.1, .dying = 0.006, .stops_at = 85},
     {0.15, 0.5, 0.88, 0.95}, {0.066, 0.734, 0.379, 0.966}},
    {"logger to 85 °C, one reading in 50 wild", {.step = logger, .rounding = 0.1, .wild = 0.02, .stops_at = 85},
     {0.1, 0.4, 0.92, 0.95}, {0.099, 0.647, 0.485, 0.932}},
    {"every 2 min to 85 °C, one reading in 50 wild", {.step = 2, .wild = 0.02, .stops_at = 85}, {0.1, 0.8, 0.9, 0.9}, {0.119, 1.005, 0.603, 0.126}},
    {"every 30 s to 70 °C, fire that catches over 10 min", {.step = 0.5, .rounding = 0.1, .catching = 10, .stops_at = 70},
     {1.5, 2, 0.9, 0.9}, {0.129, 1.246, 0.596, 0.208}},
};
// clang-format on

constexpr std::size_t logs = 500;

/// The seeds are the same for every row: its logs differ in what the row is about alone.
template <class Answer> Accuracy measured(Bench const& bench, Answer answer) {
    Accuracy result;
    double squares = 0, count = 0, within = 0;
    for (std::size_t i = 0; i < logs; ++i) {
        Random random(1000 + i);
        SimulatedBoil boil = simulate(bench, random);
        kernels::tame(boil.log);
        auto const [reason, minute, uncertainty] = answer(kernels::Log(boil.log));
        if (reason != Reason::none)
            continue;
        double const off = minute - boil.truth;
        ++count;
        result.bias += off;
        squares += off * off;
        within += std::abs(off) <= 2 * uncertainty ? 1 : 0;
    }
    result.bias /= count;
    result.rms = std::sqrt(squares / count);
    result.within = within / count;
    result.answered = count / double(logs);
    return result;
}

struct Answered {
    Reason reason;
    double minute, uncertainty;
};

} // namespace

std::span<AccuracyRow const> boils() {
    return boil_rows;
}
std::span<AccuracyRow const> forecasts() {
    return forecast_rows;
}

Accuracy accuracy_of_boils(Bench const& bench) {
    return measured(bench, [](kernels::Log log) {
        kernels::Boil const boil = kernels::find_boil(log, {simulated_boiling_point, 0.5, 0, 2});
        return Answered{boil.reason, boil.minutes, boil.uncertainty};
    });
}
Accuracy accuracy_of_forecasts(Bench const& bench) {
    return measured(bench, [](kernels::Log log) {
        kernels::Forecast const forecast = kernels::boil_forecast(log, simulated_boiling_point, absent);
        return Answered{forecast.reason, log.front().minute + forecast.minutes, forecast.uncertainty};
    });
}

} // namespace hearthcell::tests
