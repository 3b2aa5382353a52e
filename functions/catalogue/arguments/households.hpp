#pragma once
// Of households, and of instruments that are checked.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

// Who did not eat every meal counts as a part.
inline constexpr Argument children{
    .name = "children",
    .measure = Measure::people,
    .low = 0,
    .high = 1000,
    .help = {"Children below 15 years who ate", "Enfants de moins de 15 ans qui ont mangé",
             "Niños menores de 15 años que comieron", "Watoto chini ya miaka 15 waliokula"},
};
inline constexpr Argument women =
    named(children, "women",
          {"Women from 15 years on who ate", "Femmes de 15 ans et plus qui ont mangé",
           "Mujeres de 15 años o más que comieron", "Wanawake wa miaka 15 na zaidi waliokula"});
inline constexpr Argument men =
    named(children, "men",
          {"Men of 15 to 59 years who ate", "Hommes de 15 à 59 ans qui ont mangé",
           "Hombres de 15 a 59 años que comieron", "Wanaume wa miaka 15 hadi 59 waliokula"});
inline constexpr Argument older_men =
    named(children, "older men",
          {"Men above 59 years who ate", "Hommes de plus de 59 ans qui ont mangé",
           "Hombres de más de 59 años que comieron", "Wanaume wa zaidi ya miaka 59 waliokula"});
inline constexpr Argument fuel_of_household{
    .name = "dry mass",
    .measure = Measure::wood_mass,
    .low = 1,
    .high = 1e7,
    .help = {"Dry fuel that the household used, see STOVE.DRYMASS",
             "Combustible sec utilisé par le ménage, voir STOVE.DRYMASS",
             "Combustible seco que usó el hogar, véase STOVE.DRYMASS",
             "Fueli kavu iliyotumiwa na kaya, tazama STOVE.DRYMASS"},
};
inline constexpr Argument days{
    .name = "days",
    .measure = Measure::days,
    .low = 0.1,
    .high = 400,
    .help = {"Days between the first and the last weighing", "Jours entre la première et la dernière pesée",
             "Días entre la primera y la última pesada", "Siku kati ya upimaji wa kwanza na wa mwisho"},
};
inline constexpr Argument standard_adults{
    .name = "standard adults",
    .measure = Measure::people,
    .low = 0.1,
    .high = 4000,
    .help = {"Who ate, see STOVE.STANDARDADULTS", "Qui a mangé, voir STOVE.STANDARDADULTS",
             "Quiénes comieron, véase STOVE.STANDARDADULTS", "Waliokula, tazama STOVE.STANDARDADULTS"},
};

inline constexpr Argument reading{
    .name = "reading",
    .measure = Measure::ratio,
    .low = -1e9,
    .high = 1e9,
    .help = {"What the instrument reads", "Ce que l’instrument indique", "Lo que indica el instrumento",
             "Kinachosomwa na chombo"},
    .zero_is_doubtful = true,
};
inline constexpr Argument indicated_values{
    .name = "indicated values",
    .measure = Measure::ratio,
    .low = -1e9,
    .high = 1e9,
    .help = {"What it read at the check points: one, a row or a column",
             "Ce qu’il indiquait aux points de contrôle\u00a0: un, une ligne ou une colonne",
             "Lo que indicó en los puntos de control: uno, una fila o una columna",
             "Kilichosomwa penye vituo vya ukaguzi: kimoja, safu mlalo au safu wima"},
    .kind = ArgumentKind::column,
    .headed = true,
};
inline constexpr Argument true_values = named(indicated_values, "true values",
                                              {"What was true there: check weights, ice, boiling water",
                                               "Ce qui était vrai\u00a0: poids étalons, glace, eau bouillante",
                                               "Lo que era cierto: pesas patrón, hielo, agua hirviendo",
                                               "Kilichokuwa kweli: mawe ya mizani, barafu, maji yanayochemka"});

} // namespace hearthcell::arguments
