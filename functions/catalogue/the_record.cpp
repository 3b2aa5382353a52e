#include "functions/catalogue/sources.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/explain.hpp"

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

constexpr Function functions[] = {
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
