#pragma once
// Arguments that recur: name, unit, range and help are written here once and reused.

#include "functions/catalogue/catalogue.hpp"

namespace hearthcell::arguments {

/// The same argument, free to be left out: then it is `fallback`.
constexpr Argument optional(Argument argument, double fallback) {
    argument.optional = true;
    argument.fallback = fallback;
    // An empty cell gives 0, which is not always what leaving the argument out gives.
    argument.zero_is_doubtful = argument.low <= 0 && fallback != 0;
    return argument;
}
/// The same argument, free to be left out, where that has a meaning of its own.
constexpr Argument optional(Argument argument, Wording meaning) {
    argument.optional = true;
    argument.absent_means = meaning;
    return argument;
}
constexpr Argument named(Argument argument, std::string_view name, Wording help) {
    argument.name = name;
    argument.help = help;
    return argument;
}

inline constexpr Argument altitude{.name = "altitude",
                                   .measure = Measure::altitude,
                                   .low = -450,
                                   .high = 9000,
                                   .help = "Height of the place above sea level",
                                   .zero_is_doubtful = true};
inline constexpr Argument sea_level_pressure{.name = "sea-level pressure",
                                             .measure = Measure::pressure,
                                             .low = 870,
                                             .high = 1085,
                                             .help = "The day's air pressure reduced to sea level (QNH), as weather "
                                                     "reports give it"};
inline constexpr Argument station_pressure{.name = "station pressure",
                                           .measure = Measure::pressure,
                                           .low = 300,
                                           .high = 1100,
                                           .help = "Air pressure read at the place itself, not reduced to sea level"};
// Liquid water is above 0 °C, so that an empty cell is an error here.
inline constexpr Argument temperature{.name = "temperature",
                                      .measure = Measure::temperature,
                                      .low = 0.01,
                                      .high = 105,
                                      .help = "Temperature of the water"};
inline constexpr Argument start = named(temperature, "start", "Temperature of the water at the start");
inline constexpr Argument end = named(temperature, "end", "Temperature of the water at the end");
inline constexpr Argument boiling_point{.name = "boiling point",
                                        .measure = Measure::temperature,
                                        .low = 60,
                                        .high = 105,
                                        .help = "Local boiling point of water, see STOVE.BOILINGPOINT"};
inline constexpr Argument air{.name = "air",
                              .measure = Measure::temperature,
                              .low = -40,
                              .high = 60,
                              .help = "Temperature of the air around the stove",
                              .zero_is_doubtful = true};
inline constexpr Argument water_mass{.name = "water mass",
                                     .measure = Measure::water_mass,
                                     .low = 50,
                                     .high = 500000,
                                     .help = "Mass of the water at the start, without the pot"};
inline constexpr Argument water_left = named(water_mass, "water left", "Mass of the water at the end, without the pot");
inline constexpr Argument evaporated{.name = "mass evaporated",
                                     .measure = Measure::evaporated_mass,
                                     .low = 0,
                                     .high = 500000,
                                     .help = "Mass of the water that left as steam",
                                     .zero_is_doubtful = true};
inline constexpr Argument wood_mass{.name = "mass",
                                    .measure = Measure::wood_mass,
                                    .low = 1,
                                    .high = 100000,
                                    .help = "Mass of the fuel as fired, moisture included"};
inline constexpr Argument wood_left{.name = "wood left",
                                    .measure = Measure::wood_mass,
                                    .low = 0,
                                    .high = 100000,
                                    .help = "Mass of the unburned wood at the end",
                                    .zero_is_doubtful = true};
inline constexpr Argument dry_wood{.name = "equivalent dry wood",
                                   .measure = Measure::wood_mass,
                                   .low = 1,
                                   .high = 100000,
                                   .help = "Dry wood with the energy that was set free, see STOVE.DRYWOOD"};
inline constexpr Argument net_char{.name = "net char",
                                   .measure = Measure::char_mass,
                                   .low = -50000,
                                   .high = 50000,
                                   .help = "Mass of the char at the end less that at the start; negative where earlier "
                                           "char was burned",
                                   .zero_is_doubtful = true};
inline constexpr Argument char_value{.name = "char calorific value",
                                     .measure = Measure::calorific_value,
                                     .low = 5,
                                     .high = 50,
                                     .help = "Net calorific value of the char",
                                     .optional = true,
                                     .fallback = 29.5};
inline constexpr Argument pot_empty{.name = "pot empty",
                                    .measure = Measure::metal_mass,
                                    .low = 10,
                                    .high = 200000,
                                    .help = "Mass of the empty pot, with whatever stays on it while it is weighed"};
inline constexpr Argument pot_and_water{.name = "pot and water",
                                        .measure = Measure::water_mass,
                                        .low = 60,
                                        .high = 700000,
                                        .help = "Mass of the pot with its water"};
inline constexpr Argument moisture{.name = "moisture",
                                   .measure = Measure::moisture_wet,
                                   .low = 0,
                                   .high = 0.75,
                                   .help = "Share of water in the fuel as fired (wet basis), see STOVE.MOISTURE and "
                                           "STOVE.WETBASIS",
                                   .zero_is_doubtful = true};
inline constexpr Argument dry_basis_moisture{.name = "moisture on dry basis",
                                             .measure = Measure::moisture_dry,
                                             .low = 0,
                                             .high = 3,
                                             .help =
                                                 "Mass of water by mass of dry wood, as meters of the pin type read",
                                             .zero_is_doubtful = true};
inline constexpr Argument net_dry{.name = "net calorific value",
                                  .measure = Measure::calorific_value,
                                  .low = 5,
                                  .high = 50,
                                  .help = "Net calorific value of the dry fuel, see STOVE.CALORIFICVALUE and "
                                          "STOVE.NETFROMGROSS"};
inline constexpr Argument fuel_energy{.name = "fuel energy",
                                      .measure = Measure::energy,
                                      .low = 1,
                                      .high = 1e7,
                                      .help = "Energy of the fuel burned, see STOVE.FUELENERGY"};
inline constexpr Argument useful_heat{.name = "useful heat",
                                      .measure = Measure::energy,
                                      .low = 1,
                                      .high = 1e7,
                                      .help = "Heat that the water took up, see STOVE.USEFULHEAT"};
// Half a minute at least: a Calc time handed over as a part of a day stays below that up to noon.
inline constexpr Argument minutes{
    .name = "minutes", .measure = Measure::minutes, .low = 0.5, .high = 1440, .help = "Duration in minutes"};
inline constexpr Argument power_of_fire{
    .name = "power", .measure = Measure::power, .low = 0.01, .high = 60, .help = "Power of the fire"};
inline constexpr Argument pot_capacity{.name = "pot capacity",
                                       .measure = Measure::heat_capacity,
                                       .low = 0,
                                       .high = 50000,
                                       .help = "Heat capacity of the pot itself",
                                       .optional = true,
                                       .fallback = 0};
inline constexpr Argument method{.name = "method",
                                 .measure = Measure::words,
                                 .help = "Whose definition is computed",
                                 .kind = Kind::choice,
                                 .choices = {"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"},
                                 .optional = true};

} // namespace hearthcell::arguments
