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
inline constexpr Argument confidence_of_outlier = optional(
    named(confidence, "confidence",
          {"How sure it has to be that a run is an outlier", "Degré de certitude qu’un essai est aberrant",
           "Con qué seguridad un ensayo ha de ser atípico", "Uhakika unaotakiwa kwamba jaribio si la kawaida"}),
    0.99);
inline constexpr Argument most_outliers{
    .name = "most",
    .measure = Measure::ratio,
    .low = 1,
    .high = 1000,
    .help = {"How many outliers there may be at the most", "Combien d’essais aberrants il peut y avoir au plus",
             "Cuántos ensayos atípicos puede haber como máximo", "Majaribio mangapi yasiyo ya kawaida yanaweza kuwepo"},
    .optional = true,
    .absent_means = {"a third of the runs", "un tiers des essais", "un tercio de los ensayos",
                     "theluthi moja ya majaribio"},
};
inline constexpr Argument before_values =
    named(values, "before",
          {"Results before the change, a household or day a row; an empty cell leaves its row out",
           "Résultats avant le changement, un ménage ou jour par ligne\u00a0; une cellule vide écarte sa ligne",
           "Resultados antes del cambio, un hogar o día por fila; una celda vacía deja fuera su fila",
           "Matokeo kabla ya badiliko, kaya au siku kwa kila safu mlalo; seli tupu huacha safu yake nje"});
inline constexpr Argument after_values = named(values, "after",
                                               {"Results after it, of the same household or day in the same row",
                                                "Résultats après, du même ménage ou jour sur la même ligne",
                                                "Resultados después, del mismo hogar o día en la misma fila",
                                                "Matokeo baada yake, ya kaya au siku ileile katika safu mlalo ileile"});
inline constexpr Argument all_values = named(
    values, "results",
    {"The same result of every run of every variant, a run a row", "Le même résultat de chaque essai, un par ligne",
     "El mismo resultado de cada ensayo, uno por fila", "Tokeo lile lile la kila jaribio, moja kwa kila safu mlalo"});
inline constexpr Argument variants{
    .name = "variants",
    .measure = Measure::words,
    .help = {"Which variant each run belongs to: a name in each row",
             "Variante de chaque essai\u00a0: un nom par ligne", "Variante de cada ensayo: un nombre por fila",
             "Aina ya kila jaribio: jina katika kila safu mlalo"},
    .kind = ArgumentKind::mixed,
};
inline constexpr Argument blocks{
    .name = "blocks",
    .measure = Measure::words,
    .help = {"What each run had in common with others: day, tester, site",
             "Ce que chaque essai a de commun avec d’autres\u00a0: jour, opérateur, site",
             "Lo que cada ensayo comparte con otros: día, operador, sitio",
             "Kinachounganisha kila jaribio na mengine: siku, mpimaji, mahali"},
    .kind = ArgumentKind::mixed,
};
inline constexpr Argument baseline_name{
    .name = "baseline name",
    .measure = Measure::words,
    .help = {"Name of the variant that the others are compared with", "Nom de la variante de référence",
             "Nombre de la variante de referencia", "Jina la aina ambayo nyingine zinalinganishwa nayo"},
    .kind = ArgumentKind::anything,
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
inline constexpr Argument pilot_runs{
    .name = "pilot runs",
    .measure = Measure::ratio,
    .low = 2,
    .high = 1000,
    .help = {"Runs behind the coefficient: then for its upper 80 % limit",
             "Essais d’où vient le coefficient\u00a0: pour "
             "sa limite supérieure à 80\u00a0%",
             "Ensayos tras el coeficiente: para su límite superior del 80\u00a0%",
             "Majaribio ya mgawo: kwa kikomo chake cha juu cha 80 %"},
    .optional = true,
    .absent_means = {"the coefficient is known", "le coefficient est connu", "se conoce el coeficiente",
                     "mgawo unajulikana"},
};
inline constexpr Argument half_width{
    .name = "half-width",
    .measure = Measure::share,
    .low = 0.001,
    .high = 1,
    .help = {"How far the limits may lie from the mean, as a share of it",
             "Écart permis entre les limites et la moyenne, rapporté à celle-ci",
             "Cuánto pueden distar los límites de la media, como fracción de ella",
             "Umbali unaoruhusiwa wa vikomo kutoka wastani, kama sehemu yake"},
};

} // namespace hearthcell::arguments
