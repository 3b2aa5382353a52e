#include "functions/catalogue/catalogue.hpp"

#include "functions/catalogue/tables.hpp"

#include <algorithm>

namespace hearthcell {

std::array<Group, 8> catalogue() {
    return {{
        {{"Site and water", "Lieu et eau", "Lugar y agua", "Mahali na maji"}, "site_and_water", site_and_water()},
        {{"Moisture of the fuel", "Humidité du combustible", "Humedad del combustible", "Unyevu wa fueli"},
         "moisture_of_fuel",
         moisture_of_fuel()},
        {{"Energy of the fuel", "Énergie du combustible", "Energía del combustible", "Nishati ya fueli"},
         "fuel",
         fuel()},
        {{"Result of a test", "Résultat d’un essai", "Resultado de un ensayo", "Matokeo ya jaribio"},
         "performance",
         performance()},
        {{"Boil time under standard conditions", "Temps d’ébullition dans des conditions normalisées",
          "Tiempo de ebullición en condiciones estándar", "Muda wa kuchemka katika hali sanifu"},
         "standard_boil_time",
         standard_boil_time()},
        {{"A temperature log", "Un relevé de températures", "Un registro de temperaturas", "Rekodi ya halijoto"},
         "temperature_log",
         temperature_log()},
        {{"Repeated runs and comparisons", "Essais répétés et comparaisons", "Ensayos repetidos y comparaciones",
          "Majaribio yaliyorudiwa na ulinganisho"},
         "repeated_runs",
         repeated_runs()},
        {{"The record itself", "Le relevé lui-même", "El registro mismo", "Rekodi yenyewe"},
         "the_record",
         the_record()},
    }};
}

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
        return "g";
    case Measure::specific_heat:
        return "kJ/(kg K)";
    case Measure::heat_capacity:
        return "J/K";
    case Measure::heat_loss:
        return "W/K";
    case Measure::energy:
        return "kJ";
    case Measure::electric_power:
        return "W";
    case Measure::power:
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

namespace {
// The C library's tolower asks the locale; names are plain ASCII.
constexpr char lower(char c) {
    return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}
} // namespace

bool same_name(std::string_view a, std::string_view b) {
    return std::ranges::equal(trimmed(a), trimmed(b), [](char x, char y) { return lower(x) == lower(y); });
}

Function const* find_function(std::string_view name) {
    name = trimmed(name);
    constexpr std::string_view prefix = "STOVE.";
    if (name.size() > prefix.size() && same_name(name.substr(0, prefix.size()), prefix))
        name.remove_prefix(prefix.size());
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            if (same_name(function.name, name))
                return &function;
    return nullptr;
}

Named const* find_name(NameTable const& table, std::string_view name) {
    auto const row = std::ranges::find_if(table.rows, [&](Named const& named) { return same_name(named.name, name); });
    return row == table.rows.end() ? nullptr : &*row;
}

} // namespace hearthcell
