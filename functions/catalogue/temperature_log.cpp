#include "functions/catalogue/arguments.hpp"
#include "functions/catalogue/log_examples.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/explain/log_remarks.hpp"
#include "functions/kernels/log/answers.hpp"
#include "functions/kernels/log/log_check.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace log_examples;
using namespace sources;

constexpr Source least_squares{"Linear least squares, checked with the Norris set of NIST StRD"};
constexpr Source common_practice{"Common practice, no source"};

// Seven hundred days: a date with its time, of the same unit, is below it as well.
constexpr Argument times{.name = "times",
                         .measure = Measure::minutes,
                         .low = 0,
                         .high = 1e6,
                         .help = "Times of the readings in minutes, running forwards; empty cells are no readings",
                         .kind = Kind::column,
                         .headed = true};
// What a probe in a pot of water can read. A log in °F or K leaves it at the boil at the latest.
constexpr double coldest = -10, warmest = 120;
constexpr Argument temperatures{.name = "temperatures",
                                .measure = Measure::temperature,
                                .low = coldest,
                                .high = warmest,
                                .help = "Temperatures of the readings, in the same rows as the times",
                                .kind = Kind::column,
                                .headed = true};
constexpr Argument any_times{.name = "times",
                             .measure = Measure::minutes,
                             .help = "Times of the readings as they are, in minutes",
                             .kind = Kind::mixed};
constexpr Argument any_temperatures{.name = "temperatures",
                                    .measure = Measure::temperature,
                                    .help = "Temperatures of the readings as they are",
                                    .kind = Kind::mixed};
constexpr Argument target{.name = "target",
                          .measure = Measure::temperature,
                          .low = coldest,
                          .high = warmest,
                          .help = "Temperature that the log passes, upwards or downwards",
                          .zero_is_doubtful = true};
constexpr Argument tolerance{.name = "tolerance",
                             .measure = Measure::temperature_rise,
                             .low = 0.05,
                             .high = 3,
                             .help = "How near to its boil the water counts as boiling",
                             .optional = true,
                             .fallback = 0.5};
constexpr Argument minute_of_log{
    .name = "start minute", .measure = Measure::minutes, .low = 0, .high = 1e6, .optional = true};
constexpr Argument start_minute = optional(
    named(minute_of_log, "start minute", "When the fire was lit, on the clock of the log"), "the first reading");
constexpr Argument from_minute = optional(
    named(minute_of_log, "from minute", "Where the stretch begins, on the clock of the log"), "the first reading");
constexpr Argument to_minute =
    optional(named(minute_of_log, "to minute", "Where the stretch ends, on the clock of the log"), "the last reading");
constexpr Argument hold{.name = "hold",
                        .measure = Measure::minutes,
                        .low = 0,
                        .high = 60,
                        .help = "How long the boil must last to count; 0 where the test ends with it",
                        .optional = true,
                        .fallback = 2};
constexpr Argument stretch_end{.name = "from", .measure = Measure::temperature, .low = 0.01, .high = 105};
constexpr Argument from = optional(named(stretch_end, "from", "Temperature at which the stretch begins"),
                                   "30 % of the rise from the first reading");
constexpr Argument to = optional(named(stretch_end, "to", "Temperature at which the stretch ends"),
                                 "80 % of the rise, but 10 K below the highest temperature at most");
constexpr Argument largest_power{.name = "largest power",
                                 .measure = Measure::power,
                                 .low = 0.1,
                                 .high = 60,
                                 .help = "Power that no fire under this pot exceeds",
                                 .optional = true,
                                 .fallback = 8};

constexpr Function functions[] = {
    {.name = "TIMEAT",
     .stored = "timeAt",
     .summary = "Minute at which a log passes a temperature for good",
     .arguments = {times, temperatures, target},
     .result = {"passes the target at", Measure::minutes, 0, 1e6},
     .kernel = Columnar{kernels::answer_time_at},
     .equations = {"the first crossing beyond which three in four readings of the next minute (three at least) stay; a "
                   "straight line between the two readings around it"},
     .sources = {definition, common_practice},
     .examples = {{{every_minute, to_the_boil, 50}, {10, 1e-9}, "20 + 3 t, by hand"},
                  {{around_the_boil, about_the_boil, 94.983}, {23.6209, 5e-5}, "22 + 2 (94.983 - 93.2)/2.2, by hand"},
                  {{every_minute, with_a_spike, 80}, {20, 1e-9}, "A spike is no crossing, an empty cell no reading"},
                  {{cooling_minutes, cooling_temperatures, 86}, {8, 1e-9}, "A cooling, by hand"},
                  {{every_minute, to_the_boil, 99}, {Error::not_available}, "The log never gets there"},
                  {{time_run_back, to_the_boil, 50}, {Error::number}, "A time runs backwards"}},
     .remark = remark_on_time_at},
    {.name = "BOILTIME",
     .stored = "boilTime",
     .summary = "Minutes to the boil, found on the plateau of the log",
     .arguments = {times, temperatures, boiling_point, tolerance, start_minute, hold},
     .result = {"minutes to the boil", Measure::minutes, 0, 1e6},
     .kernel = Columnar{kernels::answer_boil_time},
     .equations = {"first lasting crossing of (plateau - tolerance), or of (boiling point - tolerance) where the log "
                   "has no plateau within 3 K of the boiling point"},
     .sources = {common_practice},
     .examples = {{{every_minute, to_the_boil, 95}, {24.8333333, 5e-8}, "20 + 3 t = 94.5, by hand"},
                  {{every_minute, to_the_boil, 96.4}, {24.8333333, 5e-8}, "The probe reads 1.4 K low: the same boil"},
                  {{every_minute, to_the_boil, 95, 2, 5}, {19.3333333, 5e-8}, "20 + 3 t = 93 less 5 minutes, by hand"},
                  {{every_minute, to_the_boil, 99.9}, {Error::not_available}, "4.9 K below is no boil"},
                  {{every_minute, to_the_boil, 95, omitted, 27}, {Error::number}, "It boils already"},
                  {{every_minute, to_the_boil, 95, omitted, omitted, 10},
                   {Error::not_available},
                   "The log ends before ten minutes of boiling"}},
     .remark = remark_on_boil_time},
    {.name = "HEATINGRATE",
     .stored = "heatingRate",
     .summary = "How fast a log heats or cools",
     .arguments = {times, temperatures, from_minute, to_minute},
     .result = {"heating rate", Measure::heating_rate, -100, 100},
     .kernel = Columnar{kernels::answer_heating_rate},
     .equations = {"slope of the least-squares line"},
     .sources = {least_squares},
     .examples = {{{every_minute, to_the_boil, 2, 20}, {3, 1e-12}, "20 + 3 t"},
                  {{every_minute, with_a_spike, 6, 20}, {3, 1e-12}, "An empty cell is no reading"},
                  {{cooling_minutes, cooling_temperatures}, {-0.5, 1e-12}, "A cooling, by hand"},
                  {{every_minute, to_the_boil, 20, 10}, {Error::number}, "The stretch ends before it starts"}},
     .remark = remark_on_heating_rate},
    {.name = "HEATGAIN",
     .stored = "heatGain",
     .summary = "Net power that reaches the water while it heats",
     .arguments = {times, temperatures, water_mass, from, to, pot_capacity},
     .result = {"net power", Measure::power, 0, 60},
     .kernel = Columnar{kernels::answer_heat_gain},
     .equations = {"(m [h(to) - h(from)]/(to - from) + C) × slope of the least-squares line"},
     .sources = {iapws_liquid, least_squares, common_practice},
     .examples = {{{every_minute, to_the_boil, 5000, 30, 80}, {1.0461592, 5e-8}, "3 K/min, computed apart"},
                  {{every_minute, to_the_boil, 5000, 30, 80, 450}, {1.0686592, 5e-8}, "With 450 J/K of pot, by hand"},
                  {{every_minute, to_the_boil, 5000}, {1.0465951, 5e-8}, "From 42.5 to 80 °C, computed apart"},
                  {{every_minute, to_the_boil, 5000, 30, 99}, {Error::not_available}, "The log never gets there"}},
     .remark = remark_on_heat_gain},
    {.name = "HEATLOSS",
     .stored = "heatLoss",
     .summary = "Heat loss of a pot of water from a log of its cooling",
     .arguments = {times, temperatures, water_mass, air, pot_capacity},
     .result = {"heat loss", Measure::heat_loss, 0, 200},
     .kernel = Columnar{kernels::answer_heat_loss},
     .equations = {"T = air + A exp(-t UA/(m c + C)) by least squares"},
     .sources = {lumped_heating, iapws_liquid},
     .examples = {{{cooling_minutes, cooling_temperatures, 5000, 20, 450},
                   {2.7560, 5e-5},
                   "21454.5 J/K × ln(70/60)/1200 s, computed apart"},
                  {{every_minute, to_the_boil, 5000, 20}, {Error::number}, "This log heats"},
                  {{cooling_minutes, cooling_temperatures, 5000, 100}, {Error::number}, "No such air"}},
     .remark = remark_on_heat_loss},
    {.name = "BOILFORECAST",
     .stored = "boilForecast",
     .summary = "When a log that stops early would have reached the boiling point",
     .arguments = {times, temperatures, boiling_point, optional(air, "the loss to the air is not told")},
     .result = {"forecast of the boil",
                Measure::minutes,
                0,
                1e6,
                {{"minutes from the first reading", Measure::minutes}, {"standard uncertainty", Measure::minutes}}},
     .kernel = Columnar{kernels::answer_forecast},
     .equations = {"C dT/dt = P - UA (T - air) fitted by least squares from a fifth of the logged rise on"},
     .sources = {lumped_heating, common_practice},
     .examples = {{{early_minutes, stopped_early, 95}, {the_models_boil}, "1230.129 s by the model itself"},
                  {{early_minutes, stopped_early, 76}, {Error::number}, "It boils already"},
                  {{cooling_minutes, cooling_temperatures, 95}, {Error::number}, "It cools"}},
     .remark = remark_on_forecast},
    {.name = "LOGCHECK",
     .stored = "logCheck",
     .summary = "What looks wrong in a log, a finding a row",
     .arguments = {any_times, any_temperatures, optional(boiling_point, "101.5 °C, the highest of any kitchen"),
                   optional(water_mass, "2500 g"), optional(air, "a start from 2 to 40 °C passes"), largest_power},
     .result = {"findings", Measure::words, 0, 0, {{"finding", Measure::words}, {"row", Measure::ratio}}, true},
     .kernel = Wordy{kernels::log_check},
     .equations = {"limits of common practice, and the rise that the largest power can give"},
     .sources = {common_practice},
     .examples = {{{every_minute, to_the_boil}, {nothing_to_remark}, "A clean log"},
                  {{lost_digit_minutes, slow_readings}, {a_lost_digit}, "8:40 typed for 18:40"},
                  {{every_minute, with_a_spike, 95, 5000, 20},
                   {wild_and_half_empty, 2},
                   "A wild reading, an empty cell"},
                  {{every_minute, to_the_boil, 92}, {above_boiling}, "The boiling point of another altitude"}}},
};

} // namespace

std::span<Function const> temperature_log() {
    return functions;
}

} // namespace hearthcell
