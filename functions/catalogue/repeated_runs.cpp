#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/arguments/runs.hpp"
#include "functions/catalogue/run_examples.hpp"
#include "functions/catalogue/run_parts.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/diagnosis/run_remarks.hpp"
#include "functions/kernels/statistics/outlier.hpp"
#include "functions/kernels/statistics/sample_size.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace run_examples;
using namespace run_parts;
using namespace sources;

constexpr Function functions[] = {
    {.name = "SERIES",
     .stored = "series",
     .summary = {"Mean and scatter of repeated runs, and limits for their true mean",
                 "Moyenne et dispersion d’essais répétés, et limites de leur vraie moyenne",
                 "Media y dispersión de ensayos repetidos, y límites de su media verdadera",
                 "Wastani na mtawanyiko wa majaribio yaliyorudiwa, na vikomo vya wastani wao wa kweli"},
     .arguments = {values, confidence, part},
     .result = {.name = {"series", "série", "serie", "seti ya majaribio"},
                .parts = {{Term("mean")},
                          {{"n", "n", "n", "n"}},
                          {Term("standard deviation")},
                          {Term("coefficient of variation"), Measure::share},
                          lower,
                          upper,
                          level}},
     .kernel = Columnar{kernels::series, diagnosis::remark_on_series},
     .equations = {Label{"mean ± t(n - 1) s/√n, both sides; s from n - 1",
                         "moyenne ± t(n - 1) s/√n, des deux côtés\u00a0; s de n - 1",
                         "media ± t(n - 1) s/√n, por ambos lados; s de n - 1",
                         "wastani ± t(n - 1) s/√n, pande zote mbili; s kutoka n - 1"}},
     .sources = {student_limits},
     .examples = {{{improved}, {521, 1e-12}, "Recomputed with R 4.2"},
                  {{improved, 0.9, "all"}, series_at_90, "Recomputed with R 4.2"},
                  {{with_gaps, omitted, "all"}, series_at_95, "Empty cells are no runs"},
                  {{with_gaps, omitted, "upper limit"}, {535.84126, 5e-6}, "Recomputed with R 4.2"},
                  {{about_zero, omitted, "all"},
                   series_about_zero,
                   "A share of a mean of 0 is none; the rest recomputed with R 4.2"},
                  {{one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "RUNSNEEDED",
     .stored = "runsNeeded",
     .summary = {"Runs of each of two variants that are needed to show a change",
                 "Nombre d’essais de chaque variante nécessaire pour déceler un changement",
                 "Ensayos de cada variante que hacen falta para mostrar un cambio",
                 "Idadi ya majaribio ya kila aina inayohitajika kuonyesha badiliko"},
     .arguments = {variation, smallest_change, confidence, power_of_test, pilot_runs},
     .result = {.name = {"runs of each variant", "essais de chaque variante", "ensayos de cada variante",
                         "majaribio ya kila aina"},
                .measure = Measure::ratio,
                .low = 2,
                .high = kernels::most_runs},
     .kernel = stepwise<[](double variation, double change, double sure, double power, double pilot) {
         return kernels::runs_needed(variation, change, sure, power, pilot);
     }>,
     .equations = {Label{
         "the least n with which Welch's t test, as DIFFERENCE makes it, shows the change with this power; with pilot "
         "runs, for variation √((n - 1)/χ²), the upper 80 % limit of the coefficient",
         "le plus petit n avec lequel le test t de Welch, tel que le fait DIFFERENCE, montre le changement avec cette "
         "puissance\u00a0; avec des essais préliminaires, pour variation √((n - 1)/χ²), la limite supérieure à "
         "80\u00a0% du coefficient",
         "el menor n con el que el contraste t de Welch, como lo hace DIFFERENCE, muestra el cambio con esta potencia; "
         "con ensayos previos, para variación √((n - 1)/χ²), el límite superior al 80\u00a0% del coeficiente",
         "n ndogo kabisa ambayo kwayo jaribio t la Welch, kama DIFFERENCE ilifanyavyo, huonyesha badiliko kwa nguvu "
         "hii; kukiwa na majaribio ya awali, kwa mtawanyiko √((n - 1)/χ²), kikomo cha juu cha 80 % cha mgawo"}},
     .sources = {power_of_t, welch},
     .examples = {{{0.05, 0.1}, {6, 0}, "Welch's power integrated with scipy: 0.767 with 5 runs, 0.865 with 6"},
                  {{0.0325, 0.1}, {4, 0}, "Welch's power integrated with scipy: 0.698 with 3 runs, 0.927 with 4"},
                  {{0.1, 0.05}, {64, 0}, "Cohen 1988, effect 0.5: 64"},
                  {{0.05, 0.1, omitted, omitted, 5}, {11, 0}, "As good as a coefficient of 7.79 %; scipy"},
                  {{1, 0.001}, {Error::number}, "More than 10000 runs"},
                  {{5, 10}, {Error::number}, "Per cent typed without the sign"}}},
    {.name = "RUNSFORMEAN",
     .stored = "runsForMean",
     .summary = {"Runs of one variant, or households, that are needed to know its mean well enough",
                 "Nombre d’essais d’une variante, ou de ménages, pour en connaître assez bien la moyenne",
                 "Ensayos de una variante, u hogares, que hacen falta para conocer bien su media",
                 "Idadi ya majaribio ya aina moja, au kaya, inayohitajika kujua wastani wake vya kutosha"},
     .arguments = {variation, half_width, confidence},
     .result = {.name = Term("runs"), .measure = Measure::ratio, .low = 2, .high = kernels::most_runs},
     .kernel = stepwise<[](double variation, double wanted, double sure) {
         return kernels::runs_for_mean(variation, wanted, sure);
     }>,
     .equations = {Label{"the least n with t(n - 1) variation/√n ≤ half-width",
                         "le plus petit n tel que t(n - 1) variation/√n ≤ demi-largeur",
                         "el menor n con t(n - 1) variación/√n ≤ semiancho",
                         "n ndogo kabisa yenye t(n - 1) mtawanyiko/√n ≤ nusu-upana"}},
     .sources = {student_limits},
     .examples = {{{0.3, 0.1}, {38, 0}, "t(37) 0.3/√38 = 0.0986, t(36) 0.3/√37 = 0.1000; R 4.2, qt"},
                  {{0.05, 0.05, 0.9}, {5, 0}, "t(4) 0.05/√5 = 0.0477, t(3) 0.05/√4 = 0.0588; R 4.2, qt"},
                  {{1, 0.001}, {Error::number}, "More than 10000 runs"}}},
    {.name = "OUTLIER",
     .stored = "outlier",
     .summary = {"Which runs are outliers, side by side; 0 for none",
                 "Quels essais sont aberrants, côte à côte\u00a0; 0 si aucun",
                 "Qué ensayos son atípicos, uno junto a otro; 0 si ninguno",
                 "Majaribio yapi si ya kawaida, kando kwa kando; 0 ikiwa hakuna"},
     .arguments = {values, confidence_of_outlier, most_outliers},
     .result = {.name = {"place of an outlier (0: none)", "rang d’un essai aberrant (0\u00a0: aucun)",
                         "posición de un ensayo atípico (0: ninguno)",
                         "nafasi ya jaribio lisilo la kawaida (0: hakuna)"},
                .measure = Measure::ratio,
                .low = 0,
                .high = 1e9,
                .list = true},
     .kernel = Columnar{kernels::outlier},
     .equations = {Label{
         "Generalised extreme studentised deviate, two-sided: R = max|x - mean|/s of what is left against (n - 1)/√n "
         "√(t²/(n - 2 + t²)); the last too far, and all taken before it",
         "Écart studentisé extrême généralisé, bilatéral\u00a0: R = max|x - moyenne|/s de ce qui reste contre (n - "
         "1)/√n √(t²/(n - 2 + t²))\u00a0; le dernier trop loin, et tous ceux pris avant lui",
         "Desviación extrema studentizada generalizada, bilateral: R = max|x - media|/s de lo que queda contra (n - "
         "1)/√n √(t²/(n - 2 + t²)); el último demasiado lejos, y todos los tomados antes",
         "Mkengeuko uliokithiri wa jumla wa Student, pande mbili: R = max|x - wastani|/s ya kinachobaki dhidi ya (n - "
         "1)/√n √(t²/(n - 2 + t²)); la mwisho lililo mbali mno, na yote yaliyochukuliwa kabla yake"}},
     .sources = {rosner},
     .examples = {{{one_apart}, {6, 0}, "G 2.0288 above 1.9728, recomputed with R 4.2; the sixth cell"},
                  {{improved}, {0, 0}, "G 1.3435 below 1.9728, recomputed with R 4.2"},
                  {{one_apart, 0.95, 1}, {6, 0}, "G 2.0288 above 1.8871, recomputed with R 4.2"},
                  {{base_3}, {Error::not_available}, "Three runs tell nothing"}}},
};

} // namespace

std::span<Function const> repeated_runs() {
    return functions;
}

} // namespace hearthcell
