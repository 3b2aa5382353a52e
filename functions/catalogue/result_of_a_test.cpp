#include "functions/catalogue/arguments.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/performance.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace sources;

constexpr Argument evaporated_or_none = optional(evaporated, 0);
constexpr Argument boils_at_end = optional(boiling_point, "the water boiled at its end temperature");
constexpr Argument other_energy{.name = "other energy",
                                .measure = Measure::energy,
                                .low = 0,
                                .high = 1e6,
                                .help = "Energy from elsewhere: firelighter, kindling, fan",
                                .optional = true,
                                .fallback = 0};
constexpr Argument char_energy_credit{.name = "char energy",
                                      .measure = Measure::energy,
                                      .low = -1e6,
                                      .high = 1e7,
                                      .help = "Energy left in the char, if it is credited, see STOVE.CHARENERGY",
                                      .optional = true,
                                      .fallback = 0};
constexpr Argument standard_rise{.name = "standard rise",
                                 .measure = Measure::temperature_rise,
                                 .low = 1,
                                 .high = 105,
                                 .help = "Rise of temperature that results are scaled to"};
constexpr Argument standard_mass = named(water_mass, "standard mass", "Mass of water that the time is scaled to");
constexpr Argument heat_loss{.name = "heat loss",
                             .measure = Measure::heat_loss,
                             .low = 0,
                             .high = 200,
                             .help = "Heat that the pot loses per kelvin above the air",
                             .zero_is_doubtful = true};

constexpr Function functions[] = {
    {.name = "USEFULHEAT",
     .stored = "usefulHeat",
     .summary = "Heat that the water took up and carried off as steam",
     .arguments = {named(water_mass, "water mass", "Mass of the water at the start, without the pot"), start, end,
                   method, evaporated_or_none, boils_at_end},
     .result = {"useful heat", Measure::energy, -3e5, 2e6},
     .kernel = numeric<[]<class Real>(Real const& water, Real const& from, Real const& to, Real const& steam,
                                      Real const& boils, Choice how) {
         return kernels::useful_heat(water, from, to, steam, boils, method_of(how));
     }>,
     .equations = {"m [h(end) - h(start)] + e r(boiling point)", "4.18 m (end - start) + e r(boiling point)",
                   "4.186 m (end - start) + 2260 e", "4.186 m (end - start) + 2260 e"},
     .sources = {iapws_liquid, iapws_steam, iso_19867_1, wbt_4_2_3},
     .examples = {{{5000, 20, 94.983, omitted, 250}, {2137.5554, 5e-5}, "IAPWS SR6-08 and SR1-86, computed apart"},
                  {{5000, 20, 94.983, "ISO 19867-1", 250}, {2134.5809, 5e-5}, "1567.1447 + 567.4362, by hand"},
                  {{5000, 20, 94.983, "WBT 4.2.3", 250}, {2134.3942, 5e-5}, "1569.3942 + 565, by hand"},
                  {{4750, 94.983, 92.5, omitted, 600, 94.983}, {1312.207, 5e-4}, "A simmer, computed apart"}}},
    {.name = "EFFICIENCY",
     .stored = "efficiency",
     .summary = "Efficiency from useful heat and fuel energy",
     .arguments = {useful_heat, fuel_energy, char_energy_credit,
                   named(other_energy, "auxiliary energy", "Energy of a fan, see STOVE.AUXILIARYENERGY")},
     .result = {"efficiency", Measure::share, 0, 1},
     .kernel = numeric<[]<class Real>(Real const& useful, Real const& burned, Real const& credit, Real const& fan) {
         return kernels::efficiency(useful, burned, credit, fan);
     }>,
     .equations = {"useful heat/(fuel energy - char energy + auxiliary energy)"},
     .sources = {definition, iso_19867_1},
     .examples = {{{2137.5554, 9592.104}, {0.2228453, 5e-8}, "By hand"},
                  {{2137.5554, 9592.104, 1475}, {0.2633397, 5e-8}, "By hand"},
                  {{2137.5554, 9592.104, omitted, 3.6}, {0.2227617, 5e-8}, "By hand"},
                  {{2137.5554, 959.2104}, {Error::number}, "An efficiency above 1"}}},
    {.name = "BENCHEFFICIENCY",
     .stored = "benchEfficiency",
     .summary = "Efficiency of one run from its raw readings",
     .arguments = {pot_empty,
                   named(pot_and_water, "pot and water at start", "Mass of the pot with its water at the start"),
                   named(temperature, "water start", "Temperature of the water at the start"),
                   named(wood_mass, "wood laid out", "Mass of the wood laid out for the run, moisture included"),
                   named(temperature, "water end", "Temperature of the water at the end"),
                   named(pot_and_water, "pot and water at end", "Mass of the pot with its water at the end"), wood_left,
                   moisture, net_dry, method, optional(net_char, "char is not credited"), char_value, boils_at_end,
                   optional(air, "the air is as warm as the water at the start"), other_energy},
     .result = {"efficiency", Measure::share, 0, 1},
     .kernel = numeric<[]<class Real>(Real const& pot, Real const& pot_start, Real const& from, Real const& laid,
                                      Real const& to, Real const& pot_end, Real const& left, Real const& m,
                                      Real const& dry, Real const& coal, Real const& coal_value, Real const& boils,
                                      Real const& ambient, Real const& other, Choice how) {
         return kernels::bench_efficiency(kernels::BenchReadings<Real>{pot, pot_start, from, laid, to, pot_end, left, m,
                                                                       dry, coal, coal_value, boils, ambient, other},
                                          method_of(how));
     }>,
     .equations = {"Q/(E - char energy + other energy), char only where given; real properties of water",
                   "Q/(E - char energy + other energy), char only where given",
                   "Q/(H × equivalent dry wood + other energy), char needed",
                   "Q/(H × equivalent dry wood + other energy), char needed"},
     .sources = {iapws_liquid, iso_19867_1, wbt_4_2_3, wbt_3},
     .examples = {{{800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5}, {0.2228453, 5e-8}, "Computed apart"},
                  {{800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, "properties", 50},
                   {0.2633397, 5e-8},
                   "Computed apart"},
                  {{800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, "ISO 19867-1", 50},
                   {0.2629732, 5e-8},
                   "Equation of the method, by hand"},
                  {{800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, "WBT 4.2.3", 50},
                   {0.2632488, 5e-8},
                   "Equation of the method, by hand"},
                  {{800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, "WBT 3", 50},
                   {0.2596378, 5e-8},
                   "Equation of the method, by hand"},
                  {{800, 5800, 20, 1000, 94.983, 5550, 400, 12, 18.5}, {Error::number}, "12 is 1200 %"}}},
    {.name = "FIREPOWER",
     .stored = "firepower",
     .summary = "Mean power of the fire",
     .arguments = {fuel_energy, minutes},
     .result = {"firepower", Measure::power, 0, 60},
     .kernel =
         numeric<[]<class Real>(Real const& energy, Real const& time) { return kernels::mean_power(energy, time); }>,
     .equations = {"fuel energy/time"},
     .sources = {definition},
     .examples = {{{9592.104, 30}, {5.328947, 5e-7}, "9592.104/1800, by hand"},
                  {{9592.104, 1.25}, {Error::number}, "A firepower above 60 kW"}}},
    {.name = "COOKINGPOWER",
     .stored = "cookingPower",
     .summary = "Mean power that reached the water",
     .arguments = {useful_heat, minutes},
     .result = {"cooking power", Measure::power, 0, 60},
     .kernel = numeric<[]<class Real>(Real const& heat, Real const& time) { return kernels::mean_power(heat, time); }>,
     .equations = {"useful heat/time"},
     .sources = {definition},
     .examples = {{{2137.5554, 30}, {1.187531, 5e-7}, "2137.5554/1800, by hand"}}},
    {.name = "BURNRATE",
     .stored = "burnRate",
     .summary = "Dry wood burned in a minute",
     .arguments = {named(wood_mass, "dry mass", "Dry mass of the wood burned, see STOVE.DRYMASS"), minutes},
     .result = {"burn rate", Measure::burn_rate, 0, 300},
     .kernel = numeric<[]<class Real>(Real const& mass, Real const& time) { return Real(mass / time); }>,
     .equations = {"dry mass/time"},
     .sources = {definition},
     .examples = {{{528, 30}, {17.6, 1e-12}, "By hand"}, {{528, 1}, {Error::number}, "A burn rate above 300 g/min"}}},
    {.name = "SPECIFICFUEL",
     .stored = "specificFuel",
     .summary = "Dry wood used per kilogram of water",
     .arguments = {dry_wood, water_left, method, optional(start, "no rise is known"), optional(end, "no rise is known"),
                   optional(boiling_point, "none; WBT 4.2.3 needs it where a rise is given"),
                   optional(standard_rise, "the result is not scaled")},
     .result = {"specific fuel use", Measure::fuel_per_water, 0, 20000},
     .kernel = numeric<[]<class Real>(Real const& wood, Real const& left, Real const& from, Real const& to,
                                      Real const& boils, Real const& rise, Choice how) {
         return kernels::specific_fuel(wood, left, from, to, boils, rise, method_of(how));
     }>,
     .equations =
         {"dry wood/water left, × standard rise/(end - start) where one is given", "not defined by this standard",
          "dry wood/[water left (end - start)/(boiling point - start)], × standard rise/(end - start) where one "
          "is given; a plain division without a rise",
          "dry wood/water left, × standard rise/(end - start) where one is given"},
     .sources = {definition, wbt_4_2_3, wbt_3},
     .examples = {{{438.7624, 4750}, {92.37103, 5e-6}, "438.7624/4.75, by hand"},
                  {{438.2647, 4750, "WBT 4.2.3", 20, 94.983, 94.983}, {92.26625, 1e-5}, "By hand"},
                  {{436.3337, 4150, "WBT 4.2.3"}, {105.1406, 1e-4}, "A simmer, by hand"},
                  {{438.7624, 4750, "ISO 19867-1"}, {Error::not_available}, "Not defined by this standard"}}},
    {.name = "SIMMERENERGY",
     .stored = "simmerEnergy",
     .summary = "Fuel energy that keeps a litre simmering for a minute",
     .arguments = {dry_wood, net_dry, water_left, minutes},
     .result = {"low-power fuel use", Measure::simmer_energy, 0, 10},
     .kernel = numeric<[]<class Real>(Real const& wood, Real const& dry, Real const& left, Real const& time) {
         return kernels::simmer_energy(wood, dry, left, time);
     }>,
     .equations = {"dry wood × H/(water left × time)"},
     .sources = {wbt_4_2_3},
     .examples = {{{436.3337, 18.5, 4150, 45}, {0.0432245, 5e-8}, "By hand"}}},
    {.name = "TURNDOWN",
     .stored = "turndown",
     .summary = "Ratio of high to low power",
     .arguments = {named(power_of_fire, "high power", "Firepower at full fire"),
                   named(power_of_fire, "low power", "Firepower at the lowest steady fire")},
     .result = {"turn-down ratio", Measure::ratio, 0, 6000},
     .kernel = numeric<[]<class Real>(Real const& high, Real const& low) { return Real(high / low); }>,
     .equations = {"high power/low power"},
     .sources = {definition},
     .examples = {{{6, 2.4}, {2.5, 1e-12}, "By hand"}}},
    {.name = "NORMALBOILTIME",
     .stored = "normalBoilTime",
     .summary = "Boil time scaled to a standard rise and mass of water",
     .arguments = {minutes, start, end, optional(standard_rise, 75),
                   optional(water_mass, "the time is not scaled by mass"),
                   optional(standard_mass, "the time is not scaled by mass")},
     .result = {"normalised boil time", Measure::minutes, 0.1, 14400},
     .kernel = numeric<[]<class Real>(Real const& time, Real const& from, Real const& to, Real const& rise,
                                      Real const& water, Real const& standard) {
         return kernels::normal_boil_time(time, from, to, rise, water, standard);
     }>,
     .equations = {"time × standard rise/(end - start), × standard mass/water mass where given"},
     .sources = {wbt_3, wbt_4_2_3},
     .examples = {{{28, 20, 94.983}, {28.006348, 5e-7}, "28 × 75/74.983, by hand"},
                  {{17, 28, 86.6, 75, 4000, 5000}, {27.197099, 5e-7}, "By hand"},
                  {{17, 28, 86.6}, {21.757679, 5e-7}, "By hand"},
                  {{17, 95, 20}, {Error::number}, "The water did not warm up"}}},
    {.name = "MODELBOILTIME",
     .stored = "modelBoilTime",
     .summary = "Boil time under standard conditions, with heat loss",
     .arguments = {minutes, start, end, air, water_mass, heat_loss, pot_capacity,
                   optional(named(start, "standard start", "Start temperature that the time is carried to"), 25),
                   optional(named(end, "standard end", "End temperature that the time is carried to"), 100),
                   optional(standard_mass, "the mass of water of the test"),
                   optional(named(air, "standard air", "Temperature of the air that the time is carried to"),
                            "the standard start temperature")},
     .result = {"boil time under standard conditions", Measure::minutes, 0.1, 14400},
     .kernel =
         numeric<[]<class Real>(Real const& time, Real const& from, Real const& to, Real const& ambient,
                                Real const& water, Real const& loss, Real const& pot, Real const& standard_from,
                                Real const& standard_to, Real const& standard_water, Real const& standard_ambient) {
             kernels::Heating<Real> const test{water, from, to, ambient};
             kernels::Heating<Real> const standard{is_absent(standard_water) ? water : standard_water, standard_from,
                                                   standard_to,
                                                   is_absent(standard_ambient) ? standard_from : standard_ambient};
             return kernels::model_boil_time(time, test, standard, loss, pot);
         }>,
     .equations = {"C dT/dt = P - UA (T - air): P from the test, the time from P at standard conditions"},
     .sources = {lumped_heating, iapws_liquid},
     .examples =
         {{{28, 20, 94.983, 20, 5000, 5, 450}, {28.020941, 5e-7}, "The closed form, computed apart"},
          {{17, 28, 86.6, 26, 4000, 5, 450, 25, 100, 5000}, {28.104332, 5e-7}, "The closed form, computed apart"},
          {{17, 28, 86.6, 26, 4000, 10, 450, 25, 100, 5000}, {29.611844, 5e-7}, "The closed form, computed apart"},
          {{100, 20, 80, 20, 5000, 15, 450}, {Error::number}, "913.6 W against a loss of 1200 W: never boils"}}},
};

} // namespace

std::span<Function const> result_of_a_test() {
    return functions;
}

} // namespace hearthcell
