#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/runs.hpp"
#include "functions/catalogue/run_examples.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/performance_tier.hpp"
#include "functions/kernels/statistics/comparison.hpp"
#include "functions/kernels/statistics/outlier.hpp"
#include "functions/kernels/statistics/sample_size.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace run_examples;
using namespace sources;

constexpr Part level{{"level", "niveau", "nivel", "kiwango"}, Measure::confidence};
constexpr Wording lower_limit{"lower limit", "limite inférieure", "límite inferior", "kikomo cha chini"};
constexpr Wording upper_limit{"upper limit", "limite supérieure", "límite superior", "kikomo cha juu"};
constexpr Part lower{lower_limit}, upper{upper_limit}, p{{"p", "p", "p", "p"}};
constexpr Part degrees_of_freedom{{"degrees of freedom", "degrés de liberté", "grados de libertad", "digrii za uhuru"}};

constexpr Function functions[] = {
    {.name = "SERIES",
     .stored = "series",
     .summary = {"Mean and scatter of repeated runs, and limits for their true mean",
                 "Moyenne et dispersion d’essais répétés, et limites de leur vraie moyenne",
                 "Media y dispersión de ensayos repetidos, y límites de su media verdadera",
                 "Wastani na mtawanyiko wa majaribio yaliyorudiwa, na vikomo vya wastani wao wa kweli"},
     .arguments = {values, confidence},
     .result = {.name = {"series", "série", "serie", "seti ya majaribio"},
                .parts = {{{"n", "n", "n", "n"}},
                          {{"mean", "moyenne", "media", "wastani"}},
                          {{"standard deviation", "écart-type", "desviación estándar", "mchepuko sanifu"}},
                          {{"coefficient of variation", "coefficient de variation", "coeficiente de variación",
                            "mgawo wa mtawanyiko"},
                           Measure::share},
                          lower,
                          upper,
                          level}},
     .kernel = Columnar{kernels::series},
     .equations = {"mean ± t(n - 1) s/√n, both sides; s from n - 1"},
     .sources = {student_limits},
     .examples = {{{improved}, series_at_95, "Recomputed with R 4.2"},
                  {{improved, 0.9}, series_at_90, "Recomputed with R 4.2"},
                  {{with_gaps}, series_at_95, "Empty cells are no runs"},
                  {{about_zero}, series_about_zero, "A share of a mean of 0 is none; the rest recomputed with R 4.2"},
                  {{one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "DIFFERENCE",
     .stored = "difference",
     .summary = {"Difference of two series of runs, new less baseline, and whether it is real",
                 "Différence de deux séries d’essais, nouvelle moins référence, et si elle est réelle",
                 "Diferencia entre dos series de ensayos, nueva menos referencia, y si es real",
                 "Tofauti ya seti mbili za majaribio, mpya kutoa ya awali, na kama ni ya kweli"},
     .arguments = {baseline_values, new_values, confidence},
     .result =
         {.name = {"difference", "différence", "diferencia", "tofauti"},
          .parts =
              {{{"difference", "différence", "diferencia", "tofauti"}}, lower, upper, p, degrees_of_freedom, level}},
     .kernel = Columnar{kernels::difference},
     .equations = {"Welch's t test: each series has its own variance, degrees of freedom by Satterthwaite"},
     .sources = {welch},
     .examples = {{{sleep_1, sleep_2}, sleep_difference, "Student's sleep data as R ships them; R's t.test"},
                  {{all_alike, all_alike}, {Error::number}, "No scatter at all"},
                  {{base, one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "SAVING",
     .stored = "saving",
     .summary = {"Share that the new runs use less than the baseline; negative when they use more",
                 "Part que les nouveaux essais consomment en moins\u00a0; négative s’ils consomment plus",
                 "Fracción que los ensayos nuevos consumen de menos; negativa si consumen más",
                 "Sehemu iliyookolewa na majaribio mapya kulinganisha na awali; hasi yakitumia zaidi"},
     .arguments = {baseline_values, new_values, confidence, pooled_variance},
     .result = {.name = {"saving", "économie", "ahorro", "uokoaji"},
                .parts = {{{"saving", "économie", "ahorro", "uokoaji"}, Measure::share},
                          {lower_limit, Measure::share},
                          {upper_limit, Measure::share},
                          p,
                          degrees_of_freedom,
                          level}},
     .kernel = Columnar{kernels::saving},
     .equations =
         {"1 - Q, Q = new mean/baseline mean; limits by Fieller's theorem, degrees of freedom by Satterthwaite "
          "for new - Q baseline, or n1 + n2 - 2 with a pooled variance"},
     .sources = {fieller, welch},
     .examples = {{{base, improved, omitted, 1}, pooled_saving, "R 4.2, the t test inverted by root finding"},
                  {{base, improved}, own_saving, "R 4.2, the t test inverted by root finding"},
                  {{base_3, improved_3, omitted, 1}, pooled_saving_of_3, "R 4.2, the t test inverted by root finding"},
                  {{base_3, improved_3}, own_saving_of_3, "R 4.2, the t test inverted by root finding"},
                  {{wide, narrow}, unbounded_saving, "A baseline that could be 0 has no bounded limits"},
                  {{about_zero, improved}, {Error::number}, "No share of a mean of 0"}}},
    {.name = "RUNSNEEDED",
     .stored = "runsNeeded",
     .summary = {"Runs of each of two variants that are needed to show a change",
                 "Nombre d’essais de chaque variante nécessaire pour déceler un changement",
                 "Ensayos de cada variante que hacen falta para mostrar un cambio",
                 "Idadi ya majaribio ya kila aina inayohitajika kuonyesha badiliko"},
     .arguments = {variation, smallest_change, confidence, power_of_test},
     .result = {.name = {"runs of each variant", "essais de chaque variante", "ensayos de cada variante",
                         "majaribio ya kila aina"},
                .measure = Measure::ratio,
                .low = 2,
                .high = kernels::most_runs},
     .kernel = stepwise<[](double variation, double change, double sure, double power) {
         return kernels::runs_needed(variation, change, sure, power);
     }>,
     .equations = {"the least n with P(|t| > t(2n - 2)) ≥ power, t noncentral by change/variation √(n/2)"},
     .sources = {power_of_t},
     .examples = {{{0.05, 0.1}, {6, 0}, "R 4.2, power.t.test: 5.09"},
                  {{0.1, 0.1, 0.95, 0.9}, {23, 0}, "R 4.2, example of power.t.test: 22.02110"},
                  {{0.1, 0.05}, {64, 0}, "Cohen 1988, effect 0.5: 64; R 4.2: 63.76561"},
                  {{0.15, 0.2}, {10, 0}, "R 4.2, power.t.test"},
                  {{1, 0.001}, {Error::number}, "More than 10000 runs"},
                  {{5, 10}, {Error::number}, "Per cent typed without the sign"}}},
    {.name = "OUTLIER",
     .stored = "outlier",
     .summary = {"Which run is an outlier, 0 for none", "Quel essai est aberrant, 0 si aucun",
                 "Qué ensayo es atípico, 0 si ninguno", "Jaribio lipi si la kawaida, 0 ikiwa hakuna"},
     .arguments = {values, confidence},
     .result = {.name = {"place of the outlier (0: none)", "rang de l’essai aberrant (0\u00a0: aucun)",
                         "posición del ensayo atípico (0: ninguno)", "nafasi ya jaribio lisilo la kawaida (0: hakuna)"},
                .measure = Measure::ratio,
                .low = 0,
                .high = 1e9},
     .kernel = Columnar{kernels::outlier},
     .equations = {"Grubbs' test, two-sided: the farthest run against (n - 1)/√n √(t²/(n - 2 + t²))"},
     .sources = {grubbs},
     .examples = {{{one_apart}, {6, 0}, "G 2.0288 above 1.8871, recomputed with R 4.2; the sixth cell"},
                  {{improved}, {0, 0}, "G 1.3435 below 1.8871, recomputed with R 4.2"},
                  {{base_3}, {Error::not_available}, "Three runs tell nothing"}}},
};

} // namespace

std::span<Function const> repeated_runs() {
    return functions;
}

} // namespace hearthcell
