// Readings that do not go together: of place, weather, water and fuel.

#include "functions/explain/odd_combinations.hpp"
#include "functions/kernels/atmosphere.hpp"
#include "functions/words/sentences.hpp"

namespace hearthcell {
namespace {

double water_of(Arguments const& n) {
    return first_given(n["pot and water at start"] - n["pot empty"], n["water mass"]);
}
double evaporated_of(Arguments const& n) {
    return first_given(n["pot and water at start"] - n["pot and water at end"], n["mass evaporated"]);
}
double burned_of(Arguments const& n) {
    return first_given(n["wood laid out"] - n["wood left"], n["wood burned"]);
}

bool altitude_is_a_pressure(Arguments const& n) {
    double const altitude = n["altitude"];
    bool const said_already = altitude >= 1013 && altitude <= 1013.25; // among the accepted numbers above
    return altitude > 500 && altitude < 1090 && altitude != std::floor(altitude) && !said_already;
}

/// As weather reports give it; a village there types its pressure, too, or is asked once.
bool altitude_is_a_usual_pressure(Arguments const& n) {
    double const altitude = n["altitude"];
    bool const said_already = altitude >= 1013 && altitude <= 1013.25;
    return altitude >= 1005 && altitude <= 1025 && altitude == std::floor(altitude) && !said_already &&
           std::isnan(n["sea-level pressure"]) && std::isnan(n["station pressure"]);
}

bool altitude_is_the_pressure(Arguments const& n) {
    return n["altitude"] == n["sea-level pressure"];
}

bool station_pressure_is_from_the_forecast(Arguments const& n) {
    return std::isnan(n["altitude"]) && n["station pressure"] > 1000;
}

bool station_pressure_does_not_go_with_the_altitude(Arguments const& n) {
    double const implied = kernels::sea_level_pressure(n["station pressure"], n["altitude"]);
    return implied < 950 || implied > 1050;
}

bool altitude_is_in_kilometres(Arguments const& n) {
    double const altitude = n["altitude"];
    return altitude > 0 && altitude < 9 && altitude != std::floor(altitude);
}

bool char_energy_is_a_mass(Arguments const& n) {
    double const energy = n["char energy"];
    return energy > 0 && energy < 0.02 * n["fuel energy"];
}

/// By more than a simmer lets it.
bool water_cools_much(Arguments const& n) {
    return n.function_name() == "USEFULHEAT" && start_of(n) - end_of(n) > 15;
}

bool heat_is_given_up(Arguments const& n) {
    return n.function_name() == "USEFULHEAT" && n.result() < 0 && !water_cools_much(n);
}

bool sea_level_pressure_is_low(Arguments const& n) {
    return n["sea-level pressure"] < 950;
}

// Net values of dry wood are 18 to 20 MJ/kg, gross ones 20 to 22; char starts at 26.
bool calorific_value_is_gross(Arguments const& n) {
    auto const is_gross = [](double value) { return value > 20.2 && value < 24; };
    return is_gross(n["net calorific value"]) || n.any("net calorific values", is_gross);
}
bool moistures_are_on_dry_basis(Arguments const& n) {
    return n.any("moistures", [](double moisture) { return moisture > 0.35; });
}
bool fuel_energy_is_in_megajoules(Arguments const& n) {
    return n["fuel energy"] < 50;
}
bool gross_value_is_net(Arguments const& n) {
    double const value = n["gross calorific value"];
    return value > 15 && value < 19;
}

bool start_is_fahrenheit(Arguments const& n) {
    double const start = start_of(n);
    return start > 40 && start < 80 && end_of(n) > start;
}

bool warmer_than_boiling(Arguments const& n) {
    return end_of(n) > n["boiling point"] + 1.5;
}

bool much_evaporated(Arguments const& n) {
    return evaporated_of(n) > 0.4 * water_of(n);
}

bool much_char(Arguments const& n) {
    return n["net char"] > 0.3 * first_given(burned_of(n) * (1 - n["moisture"]), n["dry mass"]);
}

constexpr Combination of_readings[] = {
    {altitude_is_a_pressure, sentences::altitude_is_a_pressure},
    {altitude_is_a_usual_pressure, sentences::altitude_is_a_usual_pressure},
    {altitude_is_the_pressure, sentences::altitude_is_the_pressure},
    {altitude_is_in_kilometres, sentences::altitude_is_in_kilometres, {"altitude"}, 1000},
    {char_energy_is_a_mass, sentences::char_energy_is_a_mass},
    {water_cools_much, sentences::water_cools_much},
    {heat_is_given_up, sentences::heat_is_given_up},
    {station_pressure_is_from_the_forecast, sentences::station_pressure_is_from_the_forecast},
    {station_pressure_does_not_go_with_the_altitude, sentences::station_pressure_does_not_go_with_the_altitude},
    {sea_level_pressure_is_low, sentences::sea_level_pressure_is_low},
    {calorific_value_is_gross, sentences::calorific_value_is_gross},
    {moistures_are_on_dry_basis, sentences::moistures_are_on_dry_basis},
    {fuel_energy_is_in_megajoules, sentences::fuel_energy_is_in_megajoules, {"fuel energy"}, 1000},
    {gross_value_is_net, sentences::gross_value_is_net},
    {start_is_fahrenheit, sentences::start_is_fahrenheit, {"start", "water start"}, 1 / 1.8, -32 / 1.8},
    {warmer_than_boiling, sentences::warmer_than_boiling},
    {much_evaporated, sentences::much_evaporated},
    {much_char, sentences::much_char},
};

} // namespace

std::span<Combination const> odd_readings() {
    return of_readings;
}

} // namespace hearthcell
