#pragma once
// The entries of PERFORMANCETIER and TIERPROBABILITY, which judge a result instead of computing one.

#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/function.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/diagnosis/run_remarks.hpp"
#include "functions/kernels/performance_tier.hpp"

namespace hearthcell {

namespace arguments {
inline constexpr Argument measure_of_tier{
    .name = "measure",
    .measure = Measure::words,
    .help = {"What was measured in the standard's own laboratory test",
             "Grandeur mesurée dans l’essai de laboratoire de la norme",
             "Qué se midió en el ensayo de laboratorio de la norma",
             "Kilichopimwa katika jaribio la maabara la kiwango"},
    .kind = ArgumentKind::choice,
    .choices = {"efficiency", "CO", "PM2.5", "safety", "durability"},
};
inline constexpr Argument value_of_tier{
    .name = "value",
    .measure = Measure::ratio,
    .low = 0,
    .high = 100000,
    .help = {"Result of that test: efficiency as a fraction, CO in g/MJ and PM2.5 in mg/MJ delivered, or a score",
             "Résultat de cet essai\u00a0: rendement en fraction, CO en g/MJ utile, PM2.5 en mg/MJ utile, ou une "
             "note",
             "Resultado de ese ensayo: rendimiento como fracción, CO en g/MJ y PM2.5 en mg/MJ útil, o un puntaje",
             "Tokeo la jaribio hilo: ufanisi kama sehemu, CO kwa g/MJ na PM2.5 kwa mg/MJ iliyofika, au alama"},
    .zero_is_doubtful = true,
};
inline constexpr Argument uncertainty_of_tier{
    .name = "standard uncertainty",
    .measure = Measure::ratio,
    .low = 0.0001,
    .high = 100000,
    .help = {"Of that value, in its unit; STOVE.UNCERTAINTY gives that of one run",
             "De cette valeur, dans son unité\u00a0; STOVE.UNCERTAINTY donne celle d’un essai",
             "De ese valor, en su unidad; STOVE.UNCERTAINTY da la de un ensayo",
             "Wa thamani hiyo, kwa kizio chake; STOVE.UNCERTAINTY hutoa wa jaribio moja"},
};
} // namespace arguments

inline constexpr Function performance_tier_function{
    .name = "PERFORMANCETIER",
    .stored = "performanceTier",
    .summary = {"Tier of the voluntary performance targets, 0 to 5",
                "Niveau des objectifs volontaires de performance, de 0 à 5",
                "Nivel de los objetivos voluntarios de desempeño, de 0 a 5",
                "Daraja la malengo ya hiari ya utendaji, 0 hadi 5"},
    .arguments = {arguments::measure_of_tier, arguments::value_of_tier},
    .result = {.name = Term("tier"), .measure = Measure::ratio, .low = 0, .high = 5},
    .kernel = stepwise<[](double value, Choice measure) { return kernels::performance_tier(value, measure); }>,
    .equations = {Label{"tiers 1 to 5 from 0.10, 0.20, 0.30, 0.40, 0.50 up",
                        "niveaux 1 à 5 à partir de 0,10\u00a0; 0,20\u00a0; 0,30\u00a0; 0,40\u00a0; 0,50",
                        "niveles 1 a 5 desde 0,10; 0,20; 0,30; 0,40; 0,50",
                        "madaraja 1 hadi 5 kuanzia 0.10, 0.20, 0.30, 0.40, 0.50"},
                  Label{"tiers 1 to 5 at 18.3, 11.5, 7.2, 4.4, 3.0 g/MJ or less",
                        "niveaux 1 à 5 à 18,3\u00a0; 11,5\u00a0; 7,2\u00a0; 4,4\u00a0; 3,0 g/MJ ou moins",
                        "niveles 1 a 5 con 18,3; 11,5; 7,2; 4,4; 3,0 g/MJ o menos",
                        "madaraja 1 hadi 5 kwa 18.3, 11.5, 7.2, 4.4, 3.0 g/MJ au chini"},
                  Label{"tiers 1 to 5 at 1031, 481, 218, 62, 5 mg/MJ or less",
                        "niveaux 1 à 5 à 1031, 481, 218, 62, 5 mg/MJ ou moins",
                        "niveles 1 a 5 con 1031, 481, 218, 62, 5 mg/MJ o menos",
                        "madaraja 1 hadi 5 kwa 1031, 481, 218, 62, 5 mg/MJ au chini"},
                  Label{"tiers 1 to 5 from 60, 68, 77, 86, 95 up", "niveaux 1 à 5 à partir de 60, 68, 77, 86, 95",
                        "niveles 1 a 5 desde 60, 68, 77, 86, 95", "madaraja 1 hadi 5 kuanzia 60, 68, 77, 86, 95"},
                  Label{"tiers 1 to 5 below 35, 25, 20, 15, 10", "niveaux 1 à 5 sous 35, 25, 20, 15, 10",
                        "niveles 1 a 5 por debajo de 35, 25, 20, 15, 10",
                        "madaraja 1 hadi 5 chini ya 35, 25, 20, 15, 10"}},
    .sources = {sources::iso_tr_19867_3},
    .caution = {"A tier holds for a result of the laboratory test of ISO 19867-1 only, and for each measure by "
                "itself; results of other protocols have none.",
                "Un niveau ne vaut que pour l’essai de laboratoire de l’ISO 19867-1, et grandeur par grandeur\u00a0; "
                "les autres protocoles n’en donnent pas.",
                "Un nivel vale solo para el ensayo de laboratorio de ISO 19867-1, y magnitud por magnitud; otros "
                "protocolos no lo dan.",
                "Daraja ni la tokeo la jaribio la maabara la ISO 19867-1 pekee, na kwa kila kipimo peke yake; matokeo "
                "ya taratibu nyingine hayana daraja."},
    .examples = {{{"efficiency", 0.35}, {3, 0}, "ISO/TR 19867-3:2018, from memory of its table"},
                 {{"CO", 11.507}, {1, 0}, "ISO/TR 19867-3:2018: tier 2 is missed by 0.007"},
                 {{"PM2.5", 62}, {4, 0}, "ISO/TR 19867-3:2018: the limit itself has the tier"},
                 {{"durability", 10}, {4, 0}, "ISO/TR 19867-3:2018: tier 5 is below 10"},
                 {{"efficiency", 35}, {Error::number}, "Per cent typed without the sign"},
                 {{"smoke", 5}, {Error::not_available}, "No such measure"}}};

inline constexpr std::array<Expected, 6> tiers_of_0_401{
    {{0, 1e-30}, {0, 1e-20}, {2.21e-7, 1e-9}, {0.480061, 5e-7}, {0.519938, 5e-7}, {3.72e-7, 1e-9}}};

inline constexpr Function tier_probability_function{
    .name = "TIERPROBABILITY",
    .stored = "tierProbability",
    .summary = {"Probability of each tier of the voluntary performance targets",
                "Probabilité de chaque niveau des objectifs volontaires de performance",
                "Probabilidad de cada nivel de los objetivos voluntarios de desempeño",
                "Uwezekano wa kila daraja la malengo ya hiari ya utendaji"},
    .arguments = {arguments::measure_of_tier, arguments::value_of_tier, arguments::uncertainty_of_tier,
                  arguments::part},
    .result = {.name = {"probabilities", "probabilités", "probabilidades", "uwezekano"},
               .parts = {{{"tier 0", "niveau 0", "nivel 0", "daraja 0"}, Measure::share},
                         {{"tier 1", "niveau 1", "nivel 1", "daraja 1"}, Measure::share},
                         {{"tier 2", "niveau 2", "nivel 2", "daraja 2"}, Measure::share},
                         {{"tier 3", "niveau 3", "nivel 3", "daraja 3"}, Measure::share},
                         {{"tier 4", "niveau 4", "nivel 4", "daraja 4"}, Measure::share},
                         {{"tier 5", "niveau 5", "nivel 5", "daraja 5"}, Measure::share}},
               .all_unless_named = true},
    .kernel = Columnar{kernels::tier_probability, diagnosis::remark_on_tiers},
    .equations = {Label{"Φ((upper - value)/u) - Φ((lower - value)/u), limits 0.10, 0.20, 0.30, 0.40, 0.50",
                        "Φ((haute - valeur)/u) - Φ((basse - valeur)/u), limites 0,10\u00a0; 0,20\u00a0; 0,30\u00a0; "
                        "0,40\u00a0; 0,50",
                        "Φ((superior - valor)/u) - Φ((inferior - valor)/u), límites 0,10; 0,20; 0,30; 0,40; 0,50",
                        "Φ((cha juu - thamani)/u) - Φ((cha chini - thamani)/u), vikomo 0.10, 0.20, 0.30, 0.40, 0.50"},
                  Label{"Φ((upper - value)/u) - Φ((lower - value)/u), limits 18.3, 11.5, 7.2, 4.4, 3.0 g/MJ",
                        "Φ((haute - valeur)/u) - Φ((basse - valeur)/u), limites 18,3\u00a0; 11,5\u00a0; 7,2\u00a0; "
                        "4,4\u00a0; 3,0 g/MJ",
                        "Φ((superior - valor)/u) - Φ((inferior - valor)/u), límites 18,3; 11,5; 7,2; 4,4; 3,0 g/MJ",
                        "Φ((cha juu - thamani)/u) - Φ((cha chini - thamani)/u), vikomo 18.3, 11.5, 7.2, 4.4, 3.0 g/MJ"},
                  Label{"Φ((upper - value)/u) - Φ((lower - value)/u), limits 1031, 481, 218, 62, 5 mg/MJ",
                        "Φ((haute - valeur)/u) - Φ((basse - valeur)/u), limites 1031, 481, 218, 62, 5 mg/MJ",
                        "Φ((superior - valor)/u) - Φ((inferior - valor)/u), límites 1031, 481, 218, 62, 5 mg/MJ",
                        "Φ((cha juu - thamani)/u) - Φ((cha chini - thamani)/u), vikomo 1031, 481, 218, 62, 5 mg/MJ"},
                  Label{"Φ((upper - value)/u) - Φ((lower - value)/u), limits 60, 68, 77, 86, 95",
                        "Φ((haute - valeur)/u) - Φ((basse - valeur)/u), limites 60, 68, 77, 86, 95",
                        "Φ((superior - valor)/u) - Φ((inferior - valor)/u), límites 60, 68, 77, 86, 95",
                        "Φ((cha juu - thamani)/u) - Φ((cha chini - thamani)/u), vikomo 60, 68, 77, 86, 95"},
                  Label{"Φ((upper - value)/u) - Φ((lower - value)/u), limits 35, 25, 20, 15, 10",
                        "Φ((haute - valeur)/u) - Φ((basse - valeur)/u), limites 35, 25, 20, 15, 10",
                        "Φ((superior - valor)/u) - Φ((inferior - valor)/u), límites 35, 25, 20, 15, 10",
                        "Φ((cha juu - thamani)/u) - Φ((cha chini - thamani)/u), vikomo 35, 25, 20, 15, 10"}},
    .sources = {sources::jcgm_106, sources::iso_tr_19867_3},
    .examples = {{{"efficiency", 0.401, 0.02}, tiers_of_0_401, "R 4.2, pnorm"},
                 {{"efficiency", 0.401, 0.02, "tier 4"}, {0.519938, 5e-7}, "R 4.2, pnorm"},
                 {{"efficiency", 0.401, 2}, {Error::number}, "Per cent typed without the sign"},
                 {{"efficiency", 35, 0.02}, {Error::number}, "Per cent typed without the sign"},
                 {{"smoke", 5, 1}, {Error::not_available}, "No such measure"}}};

} // namespace hearthcell
