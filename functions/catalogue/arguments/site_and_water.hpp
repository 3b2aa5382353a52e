#pragma once
// Of the place and of the water in the pot.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

inline constexpr Argument altitude{
    .name = "altitude",
    .measure = Measure::altitude,
    .low = -450,
    .high = 9000,
    .help = {"Height of the place above sea level", "Altitude du lieu au-dessus du niveau de la mer",
             "Altura del lugar sobre el nivel del mar", "Urefu wa mahali juu ya usawa wa bahari"},
    .zero_is_doubtful = true,
};
inline constexpr Argument sea_level_pressure{
    .name = "sea-level pressure",
    .measure = Measure::pressure,
    .low = 870,
    .high = 1085,
    .help = {"The day's pressure at sea level: QNH, or a weather report's with the air",
             "Pression du jour au niveau de la mer\u00a0: QNH, ou celle de la météo avec l’air",
             "Presión del día al nivel del mar: QNH, o la del parte del tiempo con el aire",
             "Shinikizo la siku usawa wa bahari: QNH, au la hali ya hewa pamoja na hewa"},
};
inline constexpr Argument station_pressure{
    .name = "station pressure",
    .measure = Measure::pressure,
    .low = 300,
    .high = 1100,
    .help = {"Air pressure read at the place itself, not reduced to sea level",
             "Pression de l’air lue sur place, non ramenée au niveau de la mer",
             "Presión del aire leída en el lugar mismo, sin reducir al nivel del mar",
             "Shinikizo la hewa lililosomwa mahali penyewe, si la usawa wa bahari"},
};
// Liquid water is above 0 °C, so that an empty cell is an error here.
inline constexpr Argument temperature{
    .name = "temperature",
    .measure = Measure::temperature,
    .low = 0.01,
    .high = 105,
    .help = {"Temperature of the water", "Température de l’eau", "Temperatura del agua", "Halijoto ya maji"},
};
inline constexpr Argument start = named(temperature, "start",
                                        {"Temperature of the water at the start", "Température de l’eau au début",
                                         "Temperatura del agua al inicio", "Halijoto ya maji mwanzoni"});
inline constexpr Argument end = named(temperature, "end",
                                      {"Temperature of the water at the end", "Température de l’eau à la fin",
                                       "Temperatura del agua al final", "Halijoto ya maji mwishoni"});
inline constexpr Argument boiling_point{
    .name = "boiling point",
    .measure = Measure::temperature,
    .low = 60,
    .high = 105,
    .help = {"Local boiling point, see STOVE.BOILINGPOINT", "Point d’ébullition local, voir STOVE.BOILINGPOINT",
             "Punto de ebullición local, véase STOVE.BOILINGPOINT", "Kiwango cha kuchemka, taz. STOVE.BOILINGPOINT"},
};
inline constexpr Argument air{
    .name = "air",
    .measure = Measure::temperature,
    .low = -40,
    .high = 60,
    .help = {"Temperature of the air around the stove", "Température de l’air autour du foyer",
             "Temperatura del aire alrededor de la cocina", "Halijoto ya hewa inayozunguka jiko"},
    .zero_is_doubtful = true,
};
inline constexpr Argument air_temperature = optional(
    named(air, "air temperature",
          {"Air at the place, with a weather report's pressure", "Air du lieu, avec la pression de la météo",
           "Aire del lugar, con la presión del parte del tiempo",
           "Hewa ya mahali, pamoja na shinikizo la hali ya hewa"}),
    {"QNH, the standard column", "QNH, la colonne normalisée", "QNH, la columna estándar", "QNH, safu wima sanifu"});
inline constexpr Argument water_mass{
    .name = "water mass",
    .measure = Measure::water_mass,
    .low = 50,
    .high = 500000,
    .help = {"Mass of the water at the start, without the pot", "Masse de l’eau au début, sans la marmite",
             "Masa del agua al inicio, sin la olla", "Uzito wa maji mwanzoni, bila sufuria"},
};
inline constexpr Argument water_left =
    named(water_mass, "water left",
          {"Mass of the water at the end, without the pot", "Masse de l’eau à la fin, sans la marmite",
           "Masa del agua al final, sin la olla", "Uzito wa maji mwishoni, bila sufuria"});
inline constexpr Argument evaporated{
    .name = "mass evaporated",
    .measure = Measure::evaporated_mass,
    .low = 0,
    .high = 500000,
    .help = {"Mass of the water that left as steam", "Masse de l’eau partie en vapeur",
             "Masa del agua que salió como vapor", "Uzito wa maji yaliyotoka kama mvuke"},
    .zero_is_doubtful = true,
};

} // namespace hearthcell::arguments
