#include "functions/about/answers.hpp"

#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/explain.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

std::string cited(Source const& source) {
    return std::string(source.title) + (source.from_memory ? " (from memory)" : "");
}

} // namespace

Outcome answer_explain(std::span<Value const> given) {
    Function const* const function = find_function(std::get<std::string>(given[0]));
    if (function == nullptr)
        return Failure{Reason::unknown_name, 0};
    std::span<Value const> const arguments = given.subspan(1);
    // Asked about itself, it looks at the name only: else it would call itself once for every EXPLAIN that is given.
    bool const is_itself = function->name == "EXPLAIN";
    return explain(*function, is_itself ? arguments.first(std::min<std::size_t>(1, arguments.size())) : arguments);
}

Outcome answer_source(std::span<Value const> given) {
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

Outcome answer_version(std::span<Value const>) {
    return std::string(edition);
}

} // namespace hearthcell
