// The list of all subjects. It stands above them, so that what is written once of one function may use another.

#include "functions/catalogue/subjects.hpp"
#include "functions/about/the_record.hpp"
#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"

namespace hearthcell {

std::array<Group, 11> catalogue() {
    return {{
        {{"Site and water", "Lieu et eau", "Lugar y agua", "Mahali na maji"}, site_and_water()},
        {{"Moisture of the fuel", "Humidité du combustible", "Humedad del combustible", "Unyevu wa fueli"},
         moisture_of_fuel()},
        {{"Energy of the fuel", "Énergie du combustible", "Energía del combustible", "Nishati ya fueli"}, fuel()},
        {{"Result of a test", "Résultat d’un essai", "Resultado de un ensayo", "Matokeo ya jaribio"}, performance()},
        {{"Boil time under standard conditions", "Temps d’ébullition dans des conditions normalisées",
          "Tiempo de ebullición en condiciones estándar", "Muda wa kuchemka katika hali sanifu"},
         standard_boil_time()},
        {{"Emissions and the room", "Émissions et pièce", "Emisiones y la habitación", "Moshi, gesi na chumba"},
         emissions()},
        {{"A temperature log", "Un relevé de températures", "Un registro de temperaturas", "Rekodi ya halijoto"},
         temperature_log()},
        {{"Repeated runs", "Essais répétés", "Ensayos repetidos", "Majaribio yaliyorudiwa"}, repeated_runs()},
        {{"Variants compared", "Variantes comparées", "Variantes comparadas", "Ulinganisho wa aina"}, comparisons()},
        {{"Households and instruments", "Ménages et instruments", "Hogares e instrumentos",
          "Kaya na vyombo vya kupimia"},
         households()},
        {{"The record itself", "La fiche elle-même", "El registro mismo", "Rekodi yenyewe"}, the_record()},
    }};
}

std::string_view without_prefix(std::string_view name) {
    constexpr std::string_view prefix = "STOVE.";
    name = trimmed(name);
    bool const has_one = name.size() > prefix.size() && same_name(name.substr(0, prefix.size()), prefix);
    return has_one ? name.substr(prefix.size()) : name;
}

Function const* find_function(std::string_view name) {
    name = without_prefix(name);
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            if (same_name(function.name, name) ||
                (!function.once_called.empty() && same_name(function.once_called, name)))
                return &function;
    return nullptr;
}

} // namespace hearthcell
