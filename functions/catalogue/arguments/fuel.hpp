#pragma once
// Of the fuel: its mass, its moisture, its char and what it is worth.

#include "functions/catalogue/arguments.hpp"
#include "functions/catalogue/fuels.hpp"

namespace hearthcell::arguments {

inline constexpr Argument wood_mass{
    .name = "mass",
    .measure = Measure::wood_mass,
    .low = 1,
    .high = 100000,
    .help = {"Mass of the fuel as fired, moisture included", "Masse du combustible tel que brûlé, humidité comprise",
             "Masa del combustible tal como se quema, con su humedad",
             "Uzito wa fueli kama inavyochomwa, pamoja na unyevu wake"},
};
inline constexpr Argument wood_left{
    .name = "wood left",
    .measure = Measure::wood_mass,
    .low = 0,
    .high = 100000,
    .help = {"Mass of the unburned wood at the end", "Masse du bois non brûlé à la fin",
             "Masa de la leña sin quemar al final", "Uzito wa kuni zisizoungua mwishoni"},
    .zero_is_doubtful = true,
};
inline constexpr Argument burned = named(wood_mass, "wood burned",
                                         {"Mass of the wood fed in less that left over, moisture included",
                                          "Masse du bois chargé moins celle du bois restant, humidité comprise",
                                          "Masa de la leña cargada menos la sobrante, con su humedad",
                                          "Uzito wa kuni zilizotiwa kutoa zilizobaki, pamoja na unyevu wake"});
inline constexpr Argument dry_fuel{
    .name = "equivalent dry fuel",
    .measure = Measure::wood_mass,
    .low = 1,
    .high = 100000,
    .help = {"Dry fuel with the energy that was set free, see STOVE.EQUIVALENTDRYFUEL",
             "Combustible sec de même énergie que celle libérée, voir STOVE.EQUIVALENTDRYFUEL",
             "Combustible seco con la misma energía que la liberada, véase STOVE.EQUIVALENTDRYFUEL",
             "Fueli kavu yenye nishati sawa na iliyotolewa, tazama STOVE.EQUIVALENTDRYFUEL"},
};
inline constexpr Argument net_char{
    .name = "net char",
    .measure = Measure::char_mass,
    .low = -50000,
    .high = 50000,
    .help = {"Char at the end less char at the start; negative if old char burned",
             "Charbon final moins charbon initial\u00a0; négatif si du vieux a brûlé",
             "Carbón final menos carbón inicial; negativo si se quemó carbón viejo",
             "Makaa ya mwishoni kutoa ya mwanzoni; hasi ya zamani yakiungua"},
    .zero_is_doubtful = true,
};
inline constexpr Argument char_value{
    .name = "char calorific value",
    .measure = Measure::calorific_value,
    .low = 5,
    .high = 50,
    .help = {"Net calorific value of the char, or a name, see STOVE.CALORIFICVALUE",
             "Pouvoir calorifique inférieur du charbon, ou un nom, voir STOVE.CALORIFICVALUE",
             "Poder calorífico inferior del carbón, o un nombre, véase STOVE.CALORIFICVALUE",
             "Thamani halisi ya kalori ya makaa, au jina, tazama STOVE.CALORIFICVALUE"},
    .kind = ArgumentKind::number_or_name,
    .table = &fuel_table,
    .optional = true,
    .fallback = 29.5,
};
inline constexpr Argument moisture{
    .name = "moisture",
    .measure = Measure::moisture_wet,
    .low = 0,
    .high = 0.75,
    .help = {"Share of water in the fuel as fired (wet basis), see STOVE.MOISTURE and STOVE.WETBASIS",
             "Part d’eau dans le combustible tel que brûlé (base humide), voir STOVE.MOISTURE et STOVE.WETBASIS",
             "Fracción de agua en el combustible tal como se quema (base húmeda), véanse STOVE.MOISTURE y "
             "STOVE.WETBASIS",
             "Sehemu ya maji katika fueli kama inavyochomwa (msingi mbichi), tazama STOVE.MOISTURE na STOVE.WETBASIS"},
    .zero_is_doubtful = true,
};
inline constexpr Argument dry_basis_moisture{
    .name = "moisture on dry basis",
    .measure = Measure::moisture_dry,
    .low = 0,
    .high = 3,
    .help = {"Mass of water by mass of dry wood, as meters of the pin type read",
             "Masse d’eau rapportée à la masse de bois sec, comme l’indiquent les humidimètres à pointes",
             "Masa de agua por masa de leña seca, como la indican los medidores de púas",
             "Uzito wa maji kwa uzito wa kuni kavu, kama vinavyosoma vipima-unyevu vya pini"},
    .zero_is_doubtful = true,
};
inline constexpr Argument net_dry{
    .name = "net calorific value",
    .measure = Measure::calorific_value,
    .low = 5,
    .high = 50,
    .help = {"Net calorific value of the dry fuel, or the fuel's name, see STOVE.CALORIFICVALUE",
             "Pouvoir calorifique inférieur du combustible sec, ou son nom, voir STOVE.CALORIFICVALUE",
             "Poder calorífico inferior del combustible seco, o su nombre, véase STOVE.CALORIFICVALUE",
             "Thamani halisi ya kalori ya fueli kavu, au jina lake, tazama STOVE.CALORIFICVALUE"},
    .kind = ArgumentKind::number_or_name,
    .table = &fuel_table,
};
// A sample in an oven.
inline constexpr Argument as_fired{
    .name = "mass as fired",
    .measure = Measure::wood_mass,
    .low = 0.1,
    .high = 100000,
    .help = {"Mass of the sample before the oven, with its container if one is given",
             "Masse de l’échantillon avant l’étuve, avec son récipient s’il est indiqué",
             "Masa de la muestra antes del horno, con su recipiente si se indica",
             "Uzito wa sampuli kabla ya tanuri, pamoja na chombo chake kikitajwa"},
};
inline constexpr Argument oven_dry =
    named(as_fired, "oven-dry mass",
          {"Mass of the sample dried at 105 °C to constant mass, with its container if one is given",
           "Masse de l’échantillon séché à 105 °C jusqu’à masse constante, avec son récipient s’il est indiqué",
           "Masa de la muestra secada a 105 °C hasta masa constante, con su recipiente si se indica",
           "Uzito wa sampuli iliyokaushwa kwa 105 °C hadi usibadilike, pamoja na chombo kikitajwa"});
inline constexpr Argument container{
    .name = "container mass",
    .measure = Measure::metal_mass,
    .low = 0,
    .high = 100000,
    .help = {"Mass of the empty container, if it was weighed too", "Masse du récipient vide, s’il a été pesé aussi",
             "Masa del recipiente vacío, si también se pesó", "Uzito wa chombo kitupu, ikiwa nacho kilipimwa"},
};
inline constexpr Argument basis{
    .name = "basis",
    .measure = Measure::words,
    .help = {"Moisture by mass as fired (\"wet\") or by dry mass (\"dry\")",
             "Humidité rapportée à la masse telle que brûlée (\"wet\") ou à la masse sèche (\"dry\")",
             "Humedad por masa tal como se quema (\"wet\") o por masa seca (\"dry\")",
             "Unyevu kwa uzito kama inavyochomwa (\"wet\") au kwa uzito mkavu (\"dry\")"},
    .kind = ArgumentKind::choice,
    .choices = {"wet", "dry"},
    .optional = true,
};
// What a dry fuel is worth.
inline constexpr Argument fuel_name{
    .name = "fuel",
    .measure = Measure::calorific_value,
    .low = 5,
    .high = 50,
    .help = {"A fuel's name, as \"broad-leaf wood\"; a value measured on your own fuel is better",
             "Le nom d’un combustible, comme \"broad-leaf wood\"\u00a0; mieux vaut une valeur mesurée sur le vôtre",
             "El nombre de un combustible, como \"broad-leaf wood\"; es mejor un valor medido en el suyo",
             "Jina la fueli, kama \"broad-leaf wood\"; thamani iliyopimwa kwa fueli yako ni bora"},
    .kind = ArgumentKind::name,
    .table = &fuel_table,
    .lists_names = true,
};
inline constexpr Argument gross{
    .name = "gross calorific value",
    .measure = Measure::calorific_value,
    .low = 5,
    .high = 55,
    .help = {"Gross calorific value of the dry fuel at constant volume, as a bomb gives it",
             "Pouvoir calorifique supérieur du combustible sec à volume constant, donné par une bombe",
             "Poder calorífico superior del combustible seco a volumen constante, como lo da una bomba",
             "Thamani ya jumla ya kalori ya fueli kavu kwa ujazo usiobadilika, kama kalorimita inavyotoa"},
};
inline constexpr Argument hydrogen{
    .name = "hydrogen",
    .measure = Measure::mass_fraction,
    .low = 0,
    .high = 0.2,
    .help = {"Mass fraction of hydrogen in the dry fuel", "Fraction massique d’hydrogène du combustible sec",
             "Fracción másica de hidrógeno del combustible seco", "Sehemu ya uzito ya hidrojeni katika fueli kavu"},
};
inline constexpr Argument oxygen_and_nitrogen{
    .name = "oxygen and nitrogen",
    .measure = Measure::mass_fraction,
    .low = 0,
    .high = 0.6,
    .help = {"Mass fraction of oxygen and nitrogen in the dry fuel",
             "Fraction massique d’oxygène et d’azote du combustible sec",
             "Fracción másica de oxígeno y nitrógeno del combustible seco",
             "Sehemu ya uzito ya oksijeni na nitrojeni katika fueli kavu"},
};
// A fan.
inline constexpr Argument fan_power{
    .name = "fan power",
    .measure = Measure::power_in_watts,
    .low = 0.01,
    .high = 2000,
    .help = {"Electric power of the fan", "Puissance électrique du ventilateur", "Potencia eléctrica del ventilador",
             "Nguvu ya umeme ya feni"},
};
inline constexpr Argument charging{
    .name = "efficiency of charging",
    .measure = Measure::share,
    .low = 0.05,
    .high = 1,
    .help = {"Share of the charging energy that reaches the fan",
             "Part de l’énergie de charge qui parvient au ventilateur",
             "Fracción de la energía de carga que llega al ventilador",
             "Sehemu ya nishati ya kuchaji inayofika kwenye feni"},
};

} // namespace hearthcell::arguments
