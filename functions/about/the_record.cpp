#include "functions/catalogue/sources.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/explain.hpp"
#include "functions/about/uncertainty_remarks.hpp"
#include "functions/kernels/times/minutes.hpp"
#include "functions/about/uncertainty.hpp"

namespace hearthcell {
namespace {

using namespace sources;

constexpr Argument function_name{.name = "function name",
                                 .measure = Measure::words,
                                 .help = {"Name of a function; the STOVE before it may be left out",
                                          "Nom d’une fonction\u00a0; le STOVE qui précède peut être omis",
                                          "Nombre de una función; el STOVE de delante puede omitirse",
                                          "Jina la kitendakazi; STOVE iliyo mbele yake inaweza kuachwa"},
                                 .kind = Kind::text};

std::string cited(Source const& source) {
    return std::string(source.title) + (source.from_memory ? " (from memory)" : "");
}

Outcome version_of(std::span<Value const>) {
    return std::string(edition);
}

Outcome source_of(std::span<Value const> given) {
    std::string const& name = std::get<std::string>(given[0]);
    if (Function const* function = find_function(name)) {
        std::string text;
        for (Source const& source : function->sources)
            text += (text.empty() ? "" : "; ") + cited(source);
        return text;
    }
    for (NameTable const* table : {&fuel_table, &pot_material_table})
        if (Named const* row = find_name(*table, name))
            return cited(row->source);
    return Failure{Reason::unknown_name, 0};
}

constexpr Argument values{
    .name = "values",
    .measure = Measure::words,
    .help = {"The arguments of that function in a row or a column: numbers, texts, and blanks for what is left out",
             "Les arguments de cette fonction en ligne ou en colonne\u00a0: nombres, textes, et cellules vides pour ce "
             "qui est omis",
             "Los argumentos de esa función en una fila o columna: números, textos y celdas vacías para lo omitido",
             "Hoja za kitendakazi hicho katika safu mlalo au wima: namba, maandishi, na seli tupu kwa kilichoachwa"},
    .kind = Kind::mixed};
constexpr Argument uncertainties{
    .name = "standard uncertainties",
    .low = 0,
    .high = 1e7,
    .help = {"One beside each value, in its unit; 0 or empty where it is exact",
             "Une à côté de chaque valeur, dans son unité\u00a0; 0 ou vide si elle est exacte",
             "Una junto a cada valor, en su unidad; 0 o vacío si es exacto",
             "Moja kando ya kila thamani, kwa kizio chake; 0 au tupu ikiwa ni kamili"},
    .kind = Kind::column};
constexpr Argument coverage_factor{
    .name = "coverage factor",
    .measure = Measure::coverage_factor,
    .low = 1,
    .high = 10,
    .help = {"What the standard uncertainty is multiplied by: 2 for about 95 %",
             "Facteur multipliant l’incertitude-type\u00a0: 2 pour environ 95\u00a0%",
             "Por cuánto se multiplica la incertidumbre estándar: 2 para cerca del 95\u00a0%",
             "Kizidishi cha shaka sanifu: 2 kwa takriban 95 %"},
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
    .kind = Kind::matrix,
    .optional = true,
    .absent_means = {"no value is correlated with another", "aucune valeur n’est corrélée à une autre",
                     "ningún valor está correlacionado con otro", "hakuna thamani inayohusiana na nyingine"}};

// A volume of water read at its temperature: 5 L ± 0.02 L at 20 °C ± 2 K.
constexpr std::array<double, 2> water{5.0, 20.0};
constexpr std::array<double, 2> water_doubt{0.02, 2.0};
// One run's raw readings in the order of STOVE.BENCHEFFICIENCY, 50 g of char among them; the method is left out.
constexpr std::array<double, 11> run{800.0, 5800.0, 20.0, 1000.0, 94.983, 5550.0, 400.0, 0.12, 18.5, blank, 50.0};
constexpr std::array<double, 11> run_doubt{2.0, 2.0, 0.5, 2.0, 0.5, 2.0, 2.0, 0.015, 0.35, blank, 3.0};
constexpr std::array<double, 1> short_doubt{0.02};
// 10:00 and 31:40 as times of Calc, with a gap.
constexpr std::array<double, 3> times{10 / 1440.0, blank, (31 + 40 / 60.0) / 1440};

constexpr Function functions[] = {
    {.name = "MINUTES",
     .stored = "minutes",
     .summary = {"A time in minutes, from a text, a time of Calc or a column of them",
                 "Un temps en minutes, d’après un texte, une heure de Calc ou une colonne",
                 "Un tiempo en minutos, a partir de un texto, una hora de Calc o una columna",
                 "Muda kwa dakika, kutokana na maandishi, saa ya Calc au safu wima yake"},
     .arguments = {{.name = "time",
                    .measure = Measure::words,
                    .help = {"A text as 31:40, 12m45s or 1 h 8 min, a number (below 0.5 a time of Calc, from 3 on "
                             "minutes), or a row or column",
                             "Un texte comme 31:40, 12m45s ou 1 h 8 min, un nombre (sous 0,5 une heure de Calc, dès 3 "
                             "des minutes) ou une ligne ou colonne",
                             "Un texto como 31:40, 12m45s o 1 h 8 min, un número (bajo 0,5 una hora de Calc, desde 3 "
                             "minutos) o una fila o columna",
                             "Maandishi kama 31:40, 12m45s au 1 h 8 min, namba (chini ya 0.5 saa ya Calc, kuanzia 3 "
                             "dakika), au safu"},
                    .kind = Kind::anything},
                   {.name = "typed as",
                    .measure = Measure::words,
                    .help = {"Type \"mm:ss\" where Calc took minutes for hours",
                             "Écrire \"mm:ss\" si Calc a pris les minutes pour des heures",
                             "Escriba \"mm:ss\" si Calc tomó los minutos por horas",
                             "Andika \"mm:ss\" ikiwa Calc ilichukua dakika kuwa saa"},
                    .kind = Kind::choice,
                    .choices = {"as it stands", "mm:ss", "hh:mm", "minutes"},
                    .optional = true}},
     .result =
         {.name = {"time", "temps", "tiempo", "muda"}, .measure = Measure::minutes, .low = 0, .high = longest_time},
     .kernel = Wordy{minutes},
     .equations =
         {"texts by their own signs, 31:40 as mm:ss; numbers below 0.5 as parts of a day, from 3 on as minutes",
          "texts by their own signs, 31:40 as mm:ss; numbers × 24, since Calc stored minutes as hours",
          "texts by their own signs, 31:40 as hh:mm; numbers × 1440, parts of a day",
          "texts by their own signs; numbers as minutes"},
     .sources = {definition},
     .examples = {{{"31:40"}, {31.6666667, 5e-8}, "31 min 40 s: 31 + 40/60"},
                  {{"1 h 8 min"}, {68, 1e-12}, "60 + 8"},
                  {{times}, {10, 1e-12}, "A column of times of Calc; a single cell shows its first"},
                  {{1.325, "mm:ss"}, {31.8, 1e-12}, "31:48 typed into a cell is 31 h 48 min = 1.325 days"},
                  {{1.325}, {Error::number}, "Minutes, or 31:48 typed into a cell"},
                  {{"1:75"}, {Error::number}, "No time has 75 seconds behind its minutes"}},
     .remark = remarks::on_minutes},
    {.name = "UNCERTAINTY",
     .stored = "uncertainty",
     .summary = {"Uncertainty of a function's result from those of its arguments",
                 "Incertitude du résultat d’une fonction d’après celles de ses arguments",
                 "Incertidumbre del resultado de una función a partir de las de sus argumentos",
                 "Shaka ya tokeo la kitendakazi kutokana na shaka za hoja zake"},
     .arguments = {function_name, values, uncertainties, coverage_factor, correlations},
     .result = {.name = {"uncertainty", "incertitude", "incertidumbre", "shaka"},
                .measure = Measure::ratio,
                .low = 0,
                .high = std::numeric_limits<double>::max()},
     .kernel = Wordy{uncertainty_of},
     .equations = {"U = k u, u² = Σ c² u² + 2 ΣΣ c c u u r, c from the function's own equation differentiated exactly"},
     .sources = {jcgm_100},
     .examples = {{{"WATERMASS", water, water_doubt}, {20.07058, 2e-5}, "IAPWS SR6-08 by differences, computed apart"},
                  {{"WATERMASS", water, water_doubt, 2}, {40.14116, 4e-5}, "Twice that"},
                  {{"BENCHEFFICIENCY", run, run_doubt}, {0.00936468, 2e-8}, "One run, by differences, computed apart"},
                  {{"WATERMASS", water, short_doubt}, {Error::value}, "An uncertainty is missing"},
                  {{"FUELENERGY", water, water_doubt}, {Error::not_available}, "No equation of single numbers"},
                  {{"NOSUCHTHING", water, water_doubt}, {Error::not_available}, "No function of that name"}},
     .remark = remarks::on_uncertainty,
     .complaint = remarks::why_no_uncertainty},
    {.name = "BUDGET",
     .stored = "budget",
     .summary = {"What each argument contributes to the uncertainty of a function's result",
                 "Ce que chaque argument apporte à l’incertitude du résultat d’une fonction",
                 "Lo que cada argumento aporta a la incertidumbre del resultado de una función",
                 "Mchango wa kila hoja katika shaka ya tokeo la kitendakazi"},
     .arguments = {function_name, values, uncertainties, coverage_factor, correlations},
     .result = {.name = {"budget", "bilan", "balance", "mchanganuo"},
                .parts = {{{"argument", "argument", "argumento", "hoja"}, Measure::words},
                          {{"sensitivity", "sensibilité", "sensibilidad", "wepesi wa kuathiri"}, Measure::ratio},
                          {{"contribution", "contribution", "contribución", "mchango"}, Measure::ratio},
                          {{"share", "part", "proporción", "sehemu"}, Measure::share}},
                .list = true},
     .kernel = Wordy{budget_of},
     .equations = {"c, k |c| u, c u Σ c u r/u²; a row beside each value"},
     .sources = {jcgm_100},
     .examples = {{{"WATERMASS", water, water_doubt}, {"volume"}, "The first argument's name"},
                  {{"WATERMASS", water, short_doubt}, {Error::value}, "An uncertainty is missing"}},
     .remark = remarks::on_uncertainty,
     .complaint = remarks::why_no_uncertainty},
    {.name = "EXPLAIN",
     .stored = "explain",
     .summary = {"What is wrong or odd about a function's arguments, in a sentence",
                 "Ce qui est faux ou étrange dans les arguments d’une fonction, en une phrase",
                 "Qué hay de erróneo o extraño en los argumentos de una función, en una frase",
                 "Kosa au jambo la ajabu katika hoja za kitendakazi, kwa sentensi moja"},
     .arguments =
         {function_name,
          {.name = "arguments",
           .measure = Measure::words,
           .help = {"The arguments as that function is given them", "Les arguments tels que cette fonction les reçoit",
                    "Los argumentos tal como los recibe esa función", "Hoja kama kitendakazi hicho kinavyopewa"},
           .kind = Kind::rest}},
     .result = {.name = {"a sentence", "une phrase", "una frase", "sentensi moja"}, .measure = Measure::words},
     .kernel = Wordy{explain_call},
     .equations = {"the function's own checks and kernel, and a table of common slips"},
     .sources = {project},
     .examples = {{{"BOILINGPOINT", 2300}, {"Fine: local boiling point 92.316 °C."}, "Agrees with BOILINGPOINT(2300)"},
                  {{"DRYMASS", 600, 12},
                   {"moisture is 12, outside 0 to 0.75: 12 is 1200 %; type 12% or 0.12."},
                   "This project's own words"},
                  {{"NOSUCHTHING", 1}, {Error::not_available}, "No function of that name"}}},
    {.name = "SOURCE",
     .stored = "source",
     .summary = {"Published source of a function or of a typical value",
                 "Source publiée d’une fonction ou d’une valeur typique",
                 "Fuente publicada de una función o de un valor típico",
                 "Chanzo kilichochapishwa cha kitendakazi au cha thamani ya kawaida"},
     .arguments = {{.name = "name",
                    .measure = Measure::words,
                    .help = {"Name of a function, a fuel or a pot material",
                             "Nom d’une fonction, d’un combustible ou d’un matériau de marmite",
                             "Nombre de una función, un combustible o un material de olla",
                             "Jina la kitendakazi, fueli au nyenzo ya sufuria"},
                    .kind = Kind::text}},
     .result = {.name = {"the source, as it is published", "la source, telle qu’elle est publiée",
                         "la fuente, tal como se publicó", "chanzo, kama kilivyochapishwa"},
                .measure = Measure::words},
     .kernel = Wordy{source_of},
     .equations = {"the catalogue's own record"},
     .sources = {project},
     .examples = {{{"BOILINGPOINTAT"}, {"IAPWS R7-97(2012), region 4"}, "The catalogue"},
                  {{"charcoal"}, {"IPCC 2006 guidelines, volume 2, table 1.2 (from memory)"}, "The catalogue"},
                  {{"old boots"}, {Error::not_available}, "No such name"}}},
    {.name = "VERSION",
     .stored = "version",
     .summary = {"The edition whose numbers these are", "La version dont viennent ces nombres",
                 "La versión de la que salen estos números", "Toleo ambalo namba hizi zimetoka"},
     .arguments = {},
     .result = {.name = {"edition", "version", "versión", "toleo"}, .measure = Measure::words},
     .kernel = Wordy{version_of},
     .equations = {"the catalogue's own record"},
     .sources = {project},
     .examples = {{{}, {edition}, "The project's version"}}},
};

} // namespace

std::span<Function const> the_record() {
    return functions;
}

} // namespace hearthcell
