#include "functions/catalogue/sources.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/remarks.hpp"
#include "functions/kernels/minutes.hpp"
#include "functions/uncertainty/uncertainty.hpp"

namespace hearthcell {
namespace {

using namespace sources;

constexpr Argument function_name{.name = "function name",
                                 .measure = Measure::words,
                                 .help = "Name of a function; the STOVE before it may be left out",
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

constexpr Argument values{.name = "values",
                          .measure = Measure::words,
                          .help = "The arguments of that function in a row or a column: numbers, texts, and blanks for "
                                  "what is left out",
                          .kind = Kind::mixed};
constexpr Argument uncertainties{.name = "standard uncertainties",
                                 .low = 0,
                                 .high = 1e7,
                                 .help = "One beside each value, in its unit; 0 or empty where it is exact",
                                 .kind = Kind::column};
constexpr Argument coverage_factor{.name = "coverage factor",
                                   .measure = Measure::coverage_factor,
                                   .low = 1,
                                   .high = 10,
                                   .help = "What the standard uncertainty is multiplied by: 2 for about 95 %",
                                   .optional = true,
                                   .fallback = 1};
constexpr Argument correlations{.name = "correlations",
                                .low = -1,
                                .high = 1,
                                .help = "A square with a row and a column for each value; half of it is enough",
                                .kind = Kind::matrix,
                                .optional = true,
                                .absent_means = "no value is correlated with another"};

// A volume of water read at its temperature: 5 L ± 0.02 L at 20 °C ± 2 K.
constexpr std::array<double, 2> water{5.0, 20.0};
constexpr std::array<double, 2> water_doubt{0.02, 2.0};
// One run's raw readings in the order of STOVE.BENCHEFFICIENCY, 50 g of char among them; the method is left out.
constexpr std::array<double, 11> run{800.0, 5800.0, 20.0, 1000.0, 94.983, 5550.0, 400.0, 0.12, 18.5, blank, 50.0};
constexpr std::array<double, 11> run_doubt{2.0, 2.0, 0.5, 2.0, 0.5, 2.0, 2.0, 0.015, 0.35, blank, 3.0};
constexpr std::array<double, 1> short_doubt{0.02};
// 10:00 and 25:30 as times of Calc, with a gap.
constexpr std::array<double, 3> times{10 / 1440.0, blank, 25.5 / 1440};

constexpr Function functions[] = {
    {.name = "MINUTES",
     .stored = "minutes",
     .summary = "A time in minutes, from a text, a time of Calc or a column of them",
     .arguments = {{.name = "time",
                    .measure = Measure::words,
                    .help = "A text as 25:30, 17m06s, 1:05:30 or 1 h 5 min, a time of Calc, or a row or column of "
                            "them; numbers below 0.5 are times of Calc, from 3 on minutes, and in a column the largest "
                            "decides",
                    .kind = Kind::anything},
                   {.name = "typed as",
                    .measure = Measure::words,
                    .help = "How it was typed: \"mm:ss\" where Calc took minutes and seconds as hours and minutes",
                    .kind = Kind::choice,
                    .choices = {"as it stands", "mm:ss", "hh:mm", "minutes"},
                    .optional = true}},
     .result = {"time", Measure::minutes, 0, longest_time},
     .kernel = Wordy{minutes},
     .equations =
         {"texts by their own signs, 25:30 as mm:ss; numbers below 0.5 as parts of a day, from 3 on as minutes",
          "texts by their own signs, 25:30 as mm:ss; numbers × 24, since Calc stored minutes as hours",
          "texts by their own signs, 25:30 as hh:mm; numbers × 1440, parts of a day",
          "texts by their own signs; numbers as minutes"},
     .sources = {definition},
     .examples = {{{"25:30"}, {25.5, 1e-12}, "25 min 30 s"},
                  {{"1 h 5 min"}, {65, 1e-12}, "60 + 5"},
                  {{times}, {10, 1e-12}, "A column of times of Calc; a single cell shows its first"},
                  {{1.0625, "mm:ss"}, {25.5, 1e-12}, "25:30 typed into a cell is 25 h 30 min = 1.0625 days"},
                  {{1.0625}, {Error::number}, "Minutes, or 25:30 typed into a cell"},
                  {{"1:75"}, {Error::number}, "No time has 75 seconds behind its minutes"}},
     .remark = remarks::on_minutes},
    {.name = "UNCERTAINTY",
     .stored = "uncertainty",
     .summary = "Uncertainty of a function's result from those of its arguments",
     .arguments = {function_name, values, uncertainties, coverage_factor, correlations},
     .result = {"uncertainty", Measure::ratio, 0, std::numeric_limits<double>::max()},
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
     .summary = "What each argument contributes to the uncertainty of a function's result",
     .arguments = {function_name, values, uncertainties, coverage_factor, correlations},
     .result = {.name = "budget",
                .parts = {{"argument", Measure::words},
                          {"sensitivity", Measure::ratio},
                          {"contribution", Measure::ratio},
                          {"share", Measure::share}},
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
     .summary = "What is wrong or odd about a function's arguments, in a sentence",
     .arguments = {function_name,
                   {.name = "arguments",
                    .measure = Measure::words,
                    .help = "The arguments as that function is given them",
                    .kind = Kind::rest}},
     .result = {"a sentence", Measure::words},
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
     .summary = "Published source of a function or of a typical value",
     .arguments = {{.name = "name",
                    .measure = Measure::words,
                    .help = "Name of a function, a fuel or a pot material",
                    .kind = Kind::text}},
     .result = {"the source, as it is published", Measure::words},
     .kernel = Wordy{source_of},
     .equations = {"the catalogue's own record"},
     .sources = {project},
     .examples = {{{"BOILINGPOINTAT"}, {"IAPWS R7-97(2012), region 4"}, "The catalogue"},
                  {{"charcoal"}, {"IPCC 2006 guidelines, volume 2, table 1.2 (from memory)"}, "The catalogue"},
                  {{"old boots"}, {Error::not_available}, "No such name"}}},
    {.name = "VERSION",
     .stored = "version",
     .summary = "The edition whose numbers these are",
     .arguments = {},
     .result = {"edition", Measure::words},
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
