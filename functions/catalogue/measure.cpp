#include "functions/catalogue/measure.hpp"

namespace hearthcell {

std::string_view unit_of(Measure measure) {
    switch (measure) {
    case Measure::altitude:
        return "m";
    case Measure::pressure:
        return "hPa";
    case Measure::temperature:
        return "°C";
    case Measure::temperature_rise:
        return "K";
    case Measure::heating_rate:
        return "K/min";
    case Measure::volume:
        return "L";
    case Measure::density:
        return "kg/L";
    case Measure::water_mass:
    case Measure::wood_mass:
    case Measure::char_mass:
    case Measure::metal_mass:
    case Measure::evaporated_mass:
    case Measure::gas_mass:
        return "g";
    case Measure::specific_heat:
        return "kJ/(kg K)";
    case Measure::heat_capacity:
        return "J/K";
    case Measure::heat_loss:
        return "W/K";
    case Measure::energy:
        return "kJ";
    case Measure::power_in_watts:
        return "W";
    case Measure::power_in_kilowatts:
        return "kW";
    case Measure::calorific_value:
        return "MJ/kg";
    case Measure::minutes:
        return "min";
    case Measure::burn_rate:
        return "g/min";
    case Measure::fuel_per_water:
        return "g/kg";
    case Measure::simmer_energy:
        return "MJ/(min L)";
    case Measure::days:
        return "d";
    case Measure::gas_share:
    case Measure::carbon_dioxide_share:
        return "ppm";
    case Measure::molar_mass:
        return "g/mol";
    case Measure::concentration:
        return "mg/m³";
    case Measure::gas_flow:
        return "m³/min";
    case Measure::sample_flow:
        return "L/min";
    case Measure::filter_mass:
        return "mg";
    case Measure::emission_rate:
        return "mg/min";
    case Measure::room_volume:
        return "m³";
    case Measure::air_changes:
        return "1/h";
    case Measure::fuel_per_adult:
        return "g/d";
    case Measure::people:
    case Measure::moisture_wet:
    case Measure::moisture_dry:
    case Measure::mass_fraction:
    case Measure::share:
    case Measure::ratio:
    case Measure::confidence:
    case Measure::coverage_factor:
    case Measure::words:
        break;
    }
    return "";
}

} // namespace hearthcell
