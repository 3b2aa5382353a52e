#pragma once
// What kinds of quantity there are, and their units.

#include <string_view>

namespace hearthcell {

/// What a quantity is; decides its unit and which slips of the pen are looked for.
enum class Measure {
    altitude,
    pressure,
    temperature,
    temperature_rise,
    heating_rate,
    volume,
    density,
    water_mass,
    wood_mass,
    char_mass,
    metal_mass,
    evaporated_mass,
    specific_heat,
    heat_capacity,
    heat_loss,
    energy,
    power_in_watts,
    power_in_kilowatts,
    calorific_value,
    moisture_wet,
    moisture_dry,
    mass_fraction,
    share,
    minutes,
    days,
    burn_rate,
    fuel_per_water,
    simmer_energy,
    gas_share,
    carbon_dioxide_share,
    molar_mass,
    gas_mass,
    concentration,
    gas_flow,
    sample_flow,
    filter_mass,
    emission_rate,
    room_volume,
    air_changes,
    people,
    fuel_per_adult,
    ratio,
    confidence,
    coverage_factor,
    words,
};

/// The unit as a heading shows it; empty for a text or a plain ratio.
std::string_view unit_of(Measure measure);

} // namespace hearthcell
