#include "functions/about/the_record.hpp"

#include "functions/about/answers.hpp"
#include "functions/about/each_row.hpp"
#include "functions/about/monte_carlo.hpp"
#include "functions/about/uncertainty.hpp"
#include "functions/about/uncertainty_remarks.hpp"
#include "functions/catalogue/arguments/part.hpp"
#include "functions/catalogue/arguments/runs.hpp"
#include "functions/catalogue/minutes.hpp"
#include "functions/catalogue/run_parts.hpp"
#include "functions/catalogue/sources.hpp"
#include "functions/edition.hpp"

namespace hearthcell {
namespace {

using namespace sources;

constexpr Argument function_name{.name = "function name",
                                 .measure = Measure::words,
                                 .help = {"Name of a function; the STOVE before it may be left out",
                                          "Nom d’une fonction\u00a0; le STOVE qui précède peut être omis",
                                          "Nombre de una función; el STOVE de delante puede omitirse",
                                          "Jina la kitendakazi; STOVE iliyo mbele yake inaweza kuachwa"},
                                 .kind = ArgumentKind::text};

constexpr Argument with_build{.name = "with the build",
                              .measure = Measure::ratio,
                              .low = 0,
                              .high = 1,
                              .help = {"TRUE adds the machine and the compiler it was built with",
                                       "VRAI ajoute la machine et le compilateur de sa construction",
                                       "VERDADERO añade la máquina y el compilador con que se construyó",
                                       "TRUE huongeza mashine na kikusanyaji kilichoijenga"},
                              .optional = true,
                              .fallback = 0};

constexpr Argument call_values{
    .name = "values",
    .measure = Measure::words,
    .help =
        {"The arguments of that function in a row or a column: numbers, texts, and blanks for what is left out",
         "Les arguments de cette fonction en ligne ou en colonne\u00a0: nombres, textes, et cellules vides pour ce "
         "qui est omis",
         "Los argumentos de esa función en una fila o columna: números, textos y celdas vacías para lo omitido",
         "Hoja za kitendakazi hicho katika safu mlalo au safu wima: namba, maandishi, na seli tupu kwa kilichoachwa"},
    .kind = ArgumentKind::mixed};
constexpr Argument uncertainties{
    .name = "standard uncertainties",
    .low = 0,
    .high = 1e7,
    .help = {"One beside each value, in its unit; 0 or empty where it is exact",
             "Une à côté de chaque valeur, dans son unité\u00a0; 0 ou vide si elle est exacte",
             "Una junto a cada valor, en su unidad; 0 o vacío si es exacto",
             "Moja kando ya kila thamani, kwa kizio chake; 0 au tupu ikiwa ni kamili"},
    .kind = ArgumentKind::column};
constexpr Argument coverage_factor{
    .name = "coverage factor",
    .measure = Measure::coverage_factor,
    .low = 1,
    .high = 10,
    .help = {"What the standard uncertainty is multiplied by: 2 for about 95 %",
             "Facteur multipliant l’incertitude-type\u00a0: 2 pour environ 95\u00a0%",
             "Por cuánto se multiplica la incertidumbre típica: 2 para cerca del 95\u00a0%",
             "Kizidishi cha ukosefu sanifu wa uhakika: 2 kwa takriban 95 %"},
    .optional = true,
    .fallback = 1};
constexpr Argument correlations{
    .name = "correlations",
    .low = -1,
    .high = 1,
    .help = {"A square with a row and a column for each value; half of it is enough",
             "Un carré avec une ligne et une colonne par valeur\u00a0; une moitié suffit",
             "Un cuadrado con una fila y una columna por valor; basta la mitad",
             "Mraba wenye safu mlalo na safu wima kwa kila thamani; nusu yake inatosha"},
    .kind = ArgumentKind::matrix,
    .optional = true,
    .absent_means = {"no value is correlated with another", "aucune valeur n’est corrélée à une autre",
                     "ningún valor está correlacionado con otro", "hakuna thamani inayohusiana na nyingine"}};

constexpr Argument coverage = arguments::named(
    arguments::confidence, "coverage",
    {"Share of the results that the limits hold between them", "Part des résultats comprise entre les limites",
     "Fracción de los resultados entre los límites", "Sehemu ya matokeo iliyo kati ya vikomo"});
constexpr Argument draws{.name = "draws",
                         .low = 1000,
                         .high = 100000,
                         .help = {"How often the values are drawn; always in the same way",
                                  "Nombre de tirages\u00a0; toujours les mêmes", "Cuántos sorteos; siempre los mismos",
                                  "Thamani huchaguliwa mara ngapi; daima kwa namna ileile"},
                         .optional = true,
                         .fallback = 10000};

// A volume of water read at its temperature: 3.6 L ± 0.02 L at 14.5 °C ± 2 K.
constexpr std::array<double, 2> water{3.6, 14.5};
constexpr std::array<double, 2> water_doubt{0.02, 2.0};
// One run's raw readings in the order of STOVE.BENCHEFFICIENCY, 40 g of char among them; the method is left out.
constexpr std::array<double, 11> run{760.0, 4360.0, 14.5, 950.0, 95.85, 4170.0, 430.0, 0.14, 18.7, blank, 40.0};
constexpr std::array<double, 11> run_doubt{2.0, 2.0, 0.5, 2.0, 0.5, 2.0, 2.0, 0.015, 0.35, blank, 3.0};
constexpr std::array<double, 1> short_doubt{0.02};
constexpr std::array<Expected, 5> water_distribution{
    {{3596.941, 0.8}, {20.011, 0.6}, {3557.74, 3}, {3636.18, 3}, {0, 0}}};
// A fire that would have had more than 100 kW.
constexpr std::array<double, 2> fire{8184.8, 1.25}, fire_doubt{40.0, 0.05};
// Batches of wood as they were laid out, and each one's own moisture.
constexpr std::array<double, 3> batches{520.0, 430.0, 395.0}, moistures{0.14, 0.12, 0.2};
constexpr std::array<Expected, 3> dry_batches{Expected{447.2, 1e-12}, Expected{378.4, 1e-12}, Expected{316.0, 1e-12}};

constexpr Function functions[] = {
    minutes_function,
    {.name = "UNCERTAINTY",
     .stored = "uncertainty",
     .summary = {"Uncertainty of a function's result from those of its arguments",
                 "Incertitude du résultat d’une fonction d’après celles de ses arguments",
                 "Incertidumbre del resultado de una función a partir de las de sus argumentos",
                 "Ukosefu wa uhakika wa tokeo la kitendakazi kutokana na ule wa hoja zake"},
     .arguments = {function_name, call_values, uncertainties, coverage_factor, correlations},
     .result =
         {.name = Term("uncertainty"), .measure = Measure::ratio, .low = 0, .high = std::numeric_limits<double>::max()},
     .kernel = Wordy{uncertainty_of, remark_on_uncertainty, why_no_uncertainty},
     .equations = {Label{
         "U = k u, u² = Σ c² u² + 2 ΣΣ c c u u r, c from the function's own equation differentiated exactly",
         "U = k u, u² = Σ c² u² + 2 ΣΣ c c u u r, c de l’équation même de la fonction, dérivée exactement",
         "U = k u, u² = Σ c² u² + 2 ΣΣ c c u u r, c de la ecuación misma de la función, derivada exactamente",
         "U = k u, u² = Σ c² u² + 2 ΣΣ c c u u r, c kutoka mlinganyo wenyewe wa kitendakazi, ulionyambuliwa kamili"}},
     .sources = {jcgm_100},
     .examples = {{{"WATERMASS", water, water_doubt}, {20.01069, 2e-5}, "IAPWS SR6-08 by differences, computed apart"},
                  {{"WATERMASS", water, water_doubt, 2}, {40.02137, 4e-5}, "Twice that"},
                  {{"BENCHEFFICIENCY", run, run_doubt}, {0.00856816, 2e-8}, "One run, by differences, computed apart"},
                  {{"WATERMASS", water, short_doubt}, {Error::value}, "An uncertainty is missing"},
                  {{"FUELENERGY", water, water_doubt}, {Error::not_available}, "No equation of single numbers"},
                  {{"NOSUCHTHING", water, water_doubt}, {Error::not_available}, "No function of that name"}}},
    {.name = "BUDGET",
     .stored = "budget",
     .summary = {"What each argument contributes to the uncertainty of a function's result",
                 "Ce que chaque argument apporte à l’incertitude du résultat d’une fonction",
                 "Lo que cada argumento aporta a la incertidumbre del resultado de una función",
                 "Mchango wa kila hoja katika ukosefu wa uhakika wa tokeo la kitendakazi"},
     .arguments = {function_name, call_values, uncertainties, coverage_factor, correlations},
     .result = {.name = {"budget", "bilan", "balance", "mchanganuo"},
                .parts = {{{"argument", "argument", "argumento", "hoja"}, Measure::words},
                          {Term("sensitivity"), Measure::ratio},
                          {Term("contribution"), Measure::ratio},
                          {Term("share"), Measure::share}},
                .list = true},
     .kernel = Wordy{budget_of, remark_on_uncertainty, why_no_uncertainty},
     .equations = {Label{
         "c, k |c| u, c u Σ c u r/u²; a row beside each value, then one for each default, which counts as exact",
         "c, k |c| u, c u Σ c u r/u²\u00a0; une ligne à côté de chaque valeur, puis une par valeur par défaut, qui "
         "compte comme exacte",
         "c, k |c| u, c u Σ c u r/u²; una fila junto a cada valor, luego una por cada valor por omisión, que cuenta "
         "como exacto",
         "c, k |c| u, c u Σ c u r/u²; safu mlalo kando ya kila thamani, kisha moja kwa kila thamani ya kawaida, "
         "inayohesabiwa kuwa kamili"}},
     .sources = {jcgm_100},
     .examples = {{{"WATERMASS", water, water_doubt}, {"volume"}, "The first argument's name"},
                  {{"WATERMASS", water, short_doubt}, {Error::value}, "An uncertainty is missing"}}},
    {.name = "MONTECARLO",
     .stored = "monteCarlo",
     .summary = {"Distribution of a function's result, by drawing its arguments",
                 "Distribution du résultat d’une fonction, par tirage de ses arguments",
                 "Distribución del resultado de una función, sorteando sus argumentos",
                 "Mtawanyiko wa tokeo la kitendakazi, hoja zikichaguliwa kwa bahati"},
     .arguments = {function_name, call_values, uncertainties, coverage, correlations, draws, arguments::part},
     .result = {.name = {"results drawn", "résultats tirés", "resultados sorteados", "matokeo yaliyochaguliwa"},
                .parts = {{Term("mean")},
                          {Term("standard uncertainty")},
                          run_parts::lower,
                          run_parts::upper,
                          {{"share without a result", "part sans résultat", "fracción sin resultado",
                            "sehemu bila tokeo"},
                           Measure::share}}},
     .kernel = Wordy{monte_carlo_of, remark_on_monte_carlo, why_no_uncertainty},
     .equations = {Label{
         "normal draws, correlated by Cholesky's factor, through the function's own equation; mean, standard deviation "
         "(n - 1), shortest interval of the coverage",
         "tirages normaux, corrélés par le facteur de Cholesky, à travers l’équation même de la fonction\u00a0; "
         "moyenne, écart-type (n - 1), plus court intervalle de la couverture",
         "sorteos normales, correlacionados por el factor de Cholesky, a través de la ecuación misma de la función; "
         "media, desviación estándar (n - 1), intervalo más corto de la cobertura",
         "machaguo ya kawaida, yanayohusiana kwa kizao cha Cholesky, kupitia mlinganyo wenyewe wa kitendakazi; "
         "wastani, mkengeuko sanifu (n - 1), kipindi kifupi kabisa cha sehemu inayofunikwa"}},
     .sources = {jcgm_101},
     .examples = {{{"WATERMASS", water, water_doubt, omitted, omitted, omitted, "all"},
                   water_distribution,
                   "40 million draws, IAPWS SR6-08 by the package iapws; to what 10000 can tell"},
                  {{"DRYMASS", water, water_doubt}, {Error::number}, "A moisture of 14.5 is none"},
                  {{"FIREPOWER", fire, fire_doubt}, {Error::number}, "Hardly a draw is a power of a fire"},
                  {{"WATERMASS", water, short_doubt}, {Error::value}, "An uncertainty is missing"}}},
    {.name = "EACHROW",
     .stored = "eachRow",
     .summary = {"Results of a function for each row of whole columns",
                 "Résultats d’une fonction pour chaque ligne de colonnes entières",
                 "Resultados de una función para cada fila de columnas enteras",
                 "Matokeo ya kitendakazi kwa kila safu mlalo ya safu wima nzima"},
     .arguments =
         {function_name,
          {.name = "arguments",
           .measure = Measure::words,
           .help = {"That function's arguments: columns of one length, or single values that serve all rows",
                    "Les arguments de cette fonction\u00a0: colonnes de même longueur, ou valeurs valant pour toutes "
                    "les lignes",
                    "Los argumentos de esa función: columnas de igual longitud, o valores que sirven a todas las filas",
                    "Hoja za kitendakazi hicho: safu wima za urefu mmoja, au thamani moja kwa safu mlalo zote"},
           .kind = ArgumentKind::rest}},
     .result = {.name = {"results", "résultats", "resultados", "matokeo"},
                .low = -std::numeric_limits<double>::max(),
                .high = std::numeric_limits<double>::max(),
                .list = true},
     .kernel = Wordy{answer_each_row, remark_on_rows, why_no_row},
     .equations = {Label{
         "the function's own, once a row; a row that is empty in every column stays empty",
         "celle de la fonction même, une fois par ligne\u00a0; une ligne vide dans toutes les colonnes reste vide",
         "la de la propia función, una vez por fila; una fila vacía en todas las columnas queda vacía",
         "ule wa kitendakazi chenyewe, mara moja kwa safu mlalo; safu mlalo tupu katika safu wima zote hubaki tupu"}},
     .sources = {project},
     .examples = {{{"DRYMASS", batches, moistures}, {dry_batches, 3}, "520 × 0.86, 430 × 0.88, 395 × 0.8"},
                  {{"BOILINGPOINT", 1240}, {95.8503, 5e-5}, "A single value is one row"},
                  {{"DRYMASS", batches, water}, {Error::value}, "Columns of two lengths"},
                  {{"OUTLIER", batches}, {Error::not_available}, "It gives a list"},
                  {{"NOSUCHTHING", batches}, {Error::not_available}, "No function of that name"}}},
    {.name = "EXPLAIN",
     .stored = "explain",
     .summary = {"What is wrong or odd about a function's arguments, in a sentence",
                 "Ce qui est faux ou étrange dans les arguments d’une fonction, en une phrase",
                 "Qué hay de erróneo o extraño en los argumentos de una función, en una frase",
                 "Kosa au jambo la ajabu katika hoja za kitendakazi, kwa sentensi moja"},
     .arguments =
         {arguments::named(
              function_name, "function name",
              {"Name of a function; behind a colon en, fr, es or sw, the language of the answer: DRYMASS:fr",
               "Nom d’une fonction\u00a0; après deux-points en, fr, es ou sw, la langue de la réponse\u00a0: "
               "DRYMASS:fr",
               "Nombre de una función; tras dos puntos en, fr, es o sw, el idioma de la respuesta: DRYMASS:fr",
               "Jina la kitendakazi; baada ya nukta mbili en, fr, es au sw, lugha ya jibu: DRYMASS:fr"}),
          {.name = "arguments",
           .measure = Measure::words,
           .help = {"The arguments as that function is given them", "Les arguments tels que cette fonction les reçoit",
                    "Los argumentos tal como los recibe esa función", "Hoja kama kitendakazi hicho kinavyopewa"},
           .kind = ArgumentKind::rest}},
     .result = {.name = {"a sentence", "une phrase", "una frase", "sentensi moja"}, .measure = Measure::words},
     .kernel = Wordy{answer_explain},
     .equations = {Label{"the function's own checks and kernel, and a table of common slips",
                         "les contrôles et le calcul de la fonction même, et une table de fautes courantes",
                         "las comprobaciones y el cálculo de la propia función, y una tabla de errores comunes",
                         "ukaguzi na ukokotoaji wa kitendakazi chenyewe, na jedwali la makosa ya kawaida"}},
     .sources = {project},
     .examples = {{{"BOILINGPOINT", 1240}, {"Fine: local boiling point 95.8503 °C."}, "Agrees with BOILINGPOINT(1240)"},
                  {{"DRYMASS", 520, 14},
                   {"moisture is 14, outside 0 to 0.75: 14 is 1400 %; type 14% or 0.14."},
                   "This project's own words"},
                  {{"BOILINGPOINT:fr", 1240},
                   {"Bien\u00a0: point d’ébullition local 95,8503 °C."},
                   "This project's own words, in French"},
                  {{"NOSUCHTHING", 1}, {Error::not_available}, "No function of that name"}}},
    {.name = "SOURCE",
     .stored = "source",
     .summary = {"Published source of a function or of a typical value",
                 "Source publiée d’une fonction ou d’une valeur typique",
                 "Fuente publicada de una función o de un valor típico",
                 "Chanzo kilichochapishwa cha kitendakazi au cha thamani ya kawaida"},
     .arguments =
         {{.name = "name",
           .measure = Measure::words,
           .help = {"Name of a function, a fuel or a pot material; behind a colon a language: pine:fr",
                    "Nom d’une fonction, d’un combustible ou d’un matériau de marmite\u00a0; après deux-points "
                    "une langue\u00a0: pine:fr",
                    "Nombre de una función, un combustible o un material de olla; tras dos puntos un idioma: "
                    "pine:fr",
                    "Jina la kitendakazi, fueli au nyenzo ya sufuria; baada ya nukta mbili lugha: pine:fr"},
           .kind = ArgumentKind::text}},
     .result = {.name = {"the source, as it is published", "la source, telle qu’elle est publiée",
                         "la fuente, tal como se publicó", "chanzo, kama kilivyochapishwa"},
                .measure = Measure::words},
     .kernel = Wordy{answer_source},
     .equations = {Label{"the catalogue's own record", "ce que le catalogue même contient",
                         "lo que contiene el propio catálogo", "kilichomo katika katalogi yenyewe"}},
     .sources = {project},
     .examples =
         {{{"BOILINGPOINTAT"}, {"IAPWS R7-97(2012), region 4"}, "The catalogue"},
          {{"charcoal"},
           {"IPCC 2006 guidelines, volume 2, table 1.2 (from memory); IPCC 2006 guidelines, volume 2, tables 1.2 "
            "and 1.3: carbon by energy, times energy by mass (from memory)"},
           "The catalogue: its calorific value and its carbon"},
          {{"old boots"}, {Error::not_available}, "No such name"}}},
    {.name = "VERSION",
     .stored = "version",
     .summary = {"The edition whose numbers these are", "La version dont viennent ces nombres",
                 "La versión de la que salen estos números", "Toleo ambalo namba hizi zimetoka"},
     .arguments = {with_build},
     .result = {.name = {"edition", "version", "versión", "toleo"}, .measure = Measure::words},
     .kernel = Wordy{answer_version},
     .equations = {Label{"the catalogue's own record", "ce que le catalogue même contient",
                         "lo que contiene el propio catálogo", "kilichomo katika katalogi yenyewe"}},
     .sources = {project},
     .examples = {{{}, {edition}, "The project's version"}, {{0}, {edition}, "The project's version"}}},
};

} // namespace

std::span<Function const> the_record() {
    return functions;
}

} // namespace hearthcell
