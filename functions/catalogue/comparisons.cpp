#include "functions/catalogue/subjects.hpp"

#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/arguments/runs.hpp"
#include "functions/catalogue/run_examples.hpp"
#include "functions/catalogue/run_parts.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/kernels/statistics/blocked_difference.hpp"
#include "functions/kernels/statistics/paired.hpp"

namespace hearthcell {
namespace {

using namespace arguments;
using namespace run_examples;
using namespace run_parts;
using namespace sources;

constexpr Function functions[] = {
    {.name = "DIFFERENCE",
     .stored = "difference",
     .summary = {"Difference of two series of runs, new less baseline, and whether it is real",
                 "Différence de deux séries d’essais, nouvelle moins référence, et si elle est réelle",
                 "Diferencia entre dos series de ensayos, nueva menos referencia, y si es real",
                 "Tofauti ya seti mbili za majaribio, mpya kutoa ya awali, na kama ni ya kweli"},
     .arguments = {baseline_values, new_values, confidence, part},
     .result =
         {.name = {"difference", "différence", "diferencia", "tofauti"},
          .parts =
              {{{"difference", "différence", "diferencia", "tofauti"}}, lower, upper, p, degrees_of_freedom, level}},
     .kernel = Columnar{kernels::difference},
     .equations = {Label{
         "Welch's t test: each series has its own variance, degrees of freedom by Satterthwaite",
         "test t de Welch\u00a0: chaque série a sa propre variance, degrés de liberté selon Satterthwaite",
         "contraste t de Welch: cada serie tiene su propia varianza, grados de libertad según Satterthwaite",
         "jaribio t la Welch: kila mfululizo una variansi yake, digrii za uhuru kwa Satterthwaite"}},
     .sources = {welch},
     .examples = {{{sleep_1, sleep_2}, {1.58, 1e-12}, "Student's sleep data as R ships them; R's t.test"},
                  {{sleep_1, sleep_2, omitted, "all"},
                   sleep_difference,
                   "Student's sleep data as R ships them; R's t.test"},
                  {{all_alike, all_alike}, {Error::number}, "No scatter at all"},
                  {{base, one_run}, {Error::not_available}, "One run does not scatter"}}},
    {.name = "SAVING",
     .stored = "saving",
     .summary = {"Share that the new runs use less than the baseline; negative when they use more",
                 "Part que les nouveaux essais consomment en moins\u00a0; négative s’ils consomment plus",
                 "Fracción que los ensayos nuevos consumen de menos; negativa si consumen más",
                 "Sehemu iliyookolewa na majaribio mapya kulinganisha na awali; hasi yakitumia zaidi"},
     .arguments = {baseline_values, new_values, confidence, pooled_variance, part},
     .result = {.name = {"saving", "économie", "ahorro", "uokoaji"},
                .parts = {{Term("saving"), Measure::share},
                          {lower_limit, Measure::share},
                          {upper_limit, Measure::share},
                          p,
                          degrees_of_freedom,
                          level}},
     .kernel = Columnar{kernels::saving},
     .equations = {Label{
         "1 - Q, Q = new mean/baseline mean; limits where the t test of new - Q baseline has p = 1 - confidence, "
         "degrees of freedom by Satterthwaite at that Q, or n1 + n2 - 2 with a pooled variance; p at Q = 1",
         "1 - Q, Q = moyenne nouvelle/moyenne de référence\u00a0; limites où le test t de nouvelle - Q référence a p = "
         "1 - confiance, degrés de liberté selon Satterthwaite à ce Q, ou n1 + n2 - 2 avec une variance commune\u00a0; "
         "p à Q = 1",
         "1 - Q, Q = media nueva/media de referencia; límites donde el contraste t de nueva - Q referencia tiene p = 1 "
         "- confianza, grados de libertad según Satterthwaite en ese Q, o n1 + n2 - 2 con varianza común; p en Q = 1",
         "1 - Q, Q = wastani mpya/wastani wa msingi; vikomo ambapo jaribio t la mpya - Q msingi lina p = 1 - uhakika, "
         "digrii za uhuru kwa Satterthwaite kwenye Q hiyo, au n1 + n2 - 2 kwa variansi ya pamoja; p kwenye Q = 1"}},
     .sources = {fieller, welch},
     .examples = {{{base, improved}, {0.109908883827, 5e-13}, "1 - 521/585.333"},
                  {{base, improved, omitted, 1, "all"}, pooled_saving, "R 4.2, the t test inverted by root finding"},
                  {{base, improved, omitted, omitted, "all"}, own_saving, "R 4.2, the t test inverted by root finding"},
                  {{base_3, improved_3, omitted, 1, "all"},
                   pooled_saving_of_3,
                   "R 4.2, the t test inverted by root finding"},
                  {{wide, narrow, omitted, omitted, "all"},
                   unbounded_saving,
                   "A baseline that could be 0 has no bounded limits"},
                  {{about_zero, improved}, {Error::number}, "No share of a mean of 0"}}},
    {.name = "PAIREDDIFFERENCE",
     .stored = "pairedDifference",
     .summary = {"Difference of pairs, after less before: the same household, day or tester",
                 "Différence par paire, après − avant\u00a0: même ménage, jour, testeur",
                 "Diferencia entre pares, después menos antes: mismo hogar, día u operador",
                 "Tofauti ya jozi, baada kutoa kabla: kaya, siku au mpimaji yuleyule"},
     .arguments = {before_values, after_values, confidence, part},
     .result = {.name = {"difference", "différence", "diferencia", "tofauti"},
                .parts = {{{"difference", "différence", "diferencia", "tofauti"}},
                          lower,
                          upper,
                          p,
                          degrees_of_freedom,
                          level,
                          pairs,
                          left_out}},
     .kernel = Columnar{kernels::paired_difference},
     .equations = {Label{"mean of after - before, ± t(n - 1) s/√n", "moyenne de après - avant, ± t(n - 1) s/√n",
                         "media de después - antes, ± t(n - 1) s/√n", "wastani wa baada - kabla, ± t(n - 1) s/√n"}},
     .sources = {paired_t},
     .examples = {{{before, after, omitted, "all"},
                   change_of_households,
                   "R 4.2, t.test(paired = TRUE); one row has no partner"},
                  {{sleep_1, sleep_2, omitted, "all"},
                   change_of_sleepers,
                   "Student's sleep data as R ships them; R's paired t.test"},
                  {{base, base_3}, {Error::value}, "Pairs stand side by side"},
                  {{all_alike, all_alike}, {Error::number}, "No scatter at all"},
                  {{one_run, one_run}, {Error::not_available}, "One pair does not scatter"}}},
    {.name = "PAIREDSAVING",
     .stored = "pairedSaving",
     .summary = {"Share saved in pairs, before and after: the same household, day or tester",
                 "Part économisée par paire, avant, après\u00a0: même ménage, jour, testeur",
                 "Fracción ahorrada por pares, antes y después: mismo hogar, día u operador",
                 "Sehemu iliyookolewa kwa jozi, kabla na baada: kaya, siku au mpimaji yuleyule"},
     .arguments = {before_values, after_values, confidence, part},
     .result = {.name = {"saving", "économie", "ahorro", "uokoaji"},
                .parts = {{Term("saving"), Measure::share},
                          {lower_limit, Measure::share},
                          {upper_limit, Measure::share},
                          p,
                          degrees_of_freedom,
                          level,
                          pairs,
                          left_out}},
     .kernel = Columnar{kernels::paired_saving},
     .equations = {Label{"1 - Q, Q = sum of after/sum of before; limits where the paired t of after - Q before equals "
                         "t(n - 1); p at Q = 1",
                         "1 - Q, Q = somme de après/somme de avant\u00a0; limites où le t apparié de après - Q avant "
                         "égale t(n - 1)\u00a0; p à Q = 1",
                         "1 - Q, Q = suma de después/suma de antes; límites donde la t pareada de después - Q antes es "
                         "igual a t(n - 1); p en Q = 1",
                         "1 - Q, Q = jumla ya baada/jumla ya kabla; vikomo ambapo t ya jozi ya baada - Q kabla ni sawa "
                         "na t(n - 1); p kwenye Q = 1"}},
     .sources = {fieller, paired_t},
     .examples = {{{before, after, omitted, "all"},
                   saving_of_households,
                   "Python in exact fractions, the paired t inverted by root finding"},
                  {{about_zero, improved}, {Error::number}, "No share of a mean of 0"},
                  {{one_run, one_run}, {Error::not_available}, "One pair does not scatter"}}},
    {.name = "BLOCKEDDIFFERENCE",
     .stored = "blockedDifference",
     .summary = {"Difference of each variant to the baseline, with the effect of days, testers or sites removed",
                 "Écart de chaque variante à la référence, l’effet des jours, opérateurs ou sites étant ôté",
                 "Diferencia de cada variante con la referencia, sin el efecto de días, operadores o sitios",
                 "Tofauti ya kila aina na ile ya awali, athari ya siku, wapimaji au mahali ikiondolewa"},
     .arguments = {all_values, variants, blocks, baseline_name, confidence},
     .result = {.name = {"differences", "écarts", "diferencias", "tofauti"},
                .parts = {{{"difference", "différence", "diferencia", "tofauti"}},
                          lower,
                          upper,
                          p,
                          {Term("runs")},
                          {Term("variant"), Measure::words}},
                .list = true},
     .kernel = Wordy{kernels::blocked_difference},
     .equations = {Label{"result = mean + variant + block + error by least squares, blocks fixed; limits of each "
                         "difference by itself, p adjusted by Holm where there are several",
                         "résultat = moyenne + variante + bloc + erreur par moindres carrés, blocs fixes\u00a0; "
                         "limites de chaque différence à part, p ajusté selon Holm s’il y en a plusieurs",
                         "resultado = media + variante + bloque + error por mínimos cuadrados, bloques fijos; límites "
                         "de cada diferencia por separado, p ajustado según Holm donde hay varias",
                         "tokeo = wastani + aina + kikundi + kosa kwa miraba midogo kabisa, vikundi vikiwa thabiti; "
                         "vikomo vya kila tofauti peke yake, p ikirekebishwa kwa Holm zikiwa nyingi"}},
     .sources = {least_squares_blocks, holm},
     .examples = {{{block_results, block_variants, block_days, 1},
                   {block_differences, 2},
                   "R 4.2: lm(y ~ variant + day), confint, p.adjust(method = \"holm\")"},
                  {{block_results, block_variants, block_days, 9}, {Error::not_available}, "No such variant"},
                  {{block_results, block_days, block_days, 1}, {Error::not_available}, "No day with two variants"},
                  {{base, improved_3, improved_3, 518}, {Error::value}, "Each run has a variant and a block"}}},
};

} // namespace

std::span<Function const> comparisons() {
    return functions;
}

} // namespace hearthcell
