#pragma once
// Of repeated runs.

#include "functions/catalogue/arguments.hpp"

namespace hearthcell::arguments {

inline constexpr Argument values{
    .name = "values",
    .measure = Measure::ratio,
    .low = -1e12,
    .high = 1e12,
    .help = {"The same result of every run, in a row or a column; an empty cell is no run",
             "Le même résultat de chaque essai, en ligne ou en colonne\u00a0; une cellule vide n’est pas un essai",
             "El mismo resultado de cada ensayo, en una fila o una columna; una celda vacía no es un ensayo",
             "Tokeo lile lile la kila jaribio, katika safu mlalo au safu wima; seli tupu si jaribio"},
    .kind = ArgumentKind::column,
};
inline constexpr Argument baseline_values =
    named(values, "baseline values",
          {"Results of the runs to compare with, in a row or a column",
           "Résultats des essais de référence, en ligne ou en colonne",
           "Resultados de los ensayos de referencia, en una fila o una columna",
           "Matokeo ya majaribio ya kulinganisha nayo, katika safu mlalo au safu wima"});
inline constexpr Argument new_values =
    named(values, "new values",
          {"Results of the new runs, in a row or a column", "Résultats des nouveaux essais, en ligne ou en colonne",
           "Resultados de los ensayos nuevos, en una fila o una columna",
           "Matokeo ya majaribio mapya, katika safu mlalo au safu wima"});
inline constexpr Argument confidence{
    .name = "confidence",
    .measure = Measure::confidence,
    .low = 0.5,
    .high = 0.9999,
    .help = {"How sure the statement has to be, both sides together",
             "Degré de certitude voulu, les deux côtés ensemble", "Qué seguridad se pide, ambos lados juntos",
             "Kiwango cha uhakika kinachotakiwa, pande zote mbili pamoja"},
    .optional = true,
    .fallback = 0.95,
};
inline constexpr Argument pooled_variance{
    .name = "pooled variance",
    .measure = Measure::ratio,
    .low = 0,
    .high = 1,
    .help = {"TRUE where both series may be taken to scatter alike",
             "VRAI si les deux séries se dispersent pareillement", "VERDADERO si ambas series se dispersan igual",
             "TRUE ikiwa seti zote mbili zinatawanyika sawa"},
    .optional = true,
    .fallback = 0,
    .absent_means = {"FALSE, each series has its own variance", "FAUX, chaque série a sa propre variance",
                     "FALSO, cada serie tiene su propia varianza", "FALSE, kila seti ina variansi yake yenyewe"},
};
// How large the runs' scatter is, and how large a change matters.
inline constexpr Argument variation{
    .name = "coefficient of variation",
    .measure = Measure::share,
    .low = 0.001,
    .high = 1,
    .help = {"Scatter of one run as a share of the mean, see STOVE.SERIES",
             "Dispersion d’un essai rapportée à la moyenne, voir STOVE.SERIES",
             "Dispersión de un ensayo como fracción de la media, véase STOVE.SERIES",
             "Mtawanyiko wa jaribio moja kama sehemu ya wastani, tazama STOVE.SERIES"},
};
inline constexpr Argument smallest_change{
    .name = "smallest change",
    .measure = Measure::share,
    .low = 0.001,
    .high = 1,
    .help = {"Smallest change that matters, as a share of the mean",
             "Plus petit changement qui compte, rapporté à la moyenne",
             "Menor cambio que importa, como fracción de la media",
             "Badiliko dogo kabisa lenye maana, kama sehemu ya wastani"},
};
inline constexpr Argument power_of_test{
    .name = "power",
    .measure = Measure::confidence,
    .low = 0.5,
    .high = 0.9999,
    .help = {"Chance that a change of this size shows", "Probabilité qu’un tel changement soit décelé",
             "Probabilidad de que se note un cambio de este tamaño", "Uwezekano wa badiliko la ukubwa huu kuonekana"},
    .optional = true,
    .fallback = 0.8,
};

} // namespace hearthcell::arguments
