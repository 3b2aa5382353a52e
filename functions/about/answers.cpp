#include "functions/about/answers.hpp"

#include "functions/about/nearest_name.hpp"
#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/call_check.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/names_given.hpp"
#include "functions/explain/phrases.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

struct InTables {
    Named const* row = nullptr;
    Measure measure = Measure::words;
    std::size_t count = 0;
};

/// The rows of all tables that answer to a name.
InTables find_in_tables(std::string_view name) {
    InTables result;
    for (NameTable const* const table : name_tables)
        if (NamedRows const found = find_name(*table, name); found.count > 0)
            result = {found.first, table->measure, result.count + found.count};
    return result;
}

Failure no_such_name(std::size_t count) {
    return {count == 0 ? Reason::unknown_name : Reason::ambiguous_name, 0};
}

/// What EXPLAIN's first argument asks for: "DRYMASS", or "DRYMASS:check" for the check of a workbook.
struct Asked {
    std::string name;
    bool is_check = false;
};
Asked asked_of(std::string const& text) {
    std::size_t const colon = text.rfind(':');
    if (colon == std::string::npos || text.substr(colon + 1) != check_word)
        return {text};
    return {text.substr(0, colon), true};
}

} // namespace

Outcome answer_explain(std::span<Value const> given) {
    auto const& [name, is_check] = asked_of(std::get<std::string>(given[0]));
    Function const* const function = find_function(name);
    if (function == nullptr) {
        auto const& [row, measure, count] = find_in_tables(name);
        if (Function const* const nearest = count == 0 ? nearest_function(name) : nullptr)
            return "\"" + name + "\" is no function; is it " + std::string(nearest->name) + "?";
        return count == 1 && given.size() == 1 ? Outcome(about_name(*row, measure))
                                               : Outcome(no_such_name(given.size() == 1 ? count : 0));
    }
    std::span<Value const> const arguments = given.subspan(1);
    // Asked about itself, it looks at the name only: else it would call itself once for every EXPLAIN that is given.
    bool const is_itself = function->name == "EXPLAIN";
    if (is_check)
        return is_itself ? std::string() : check_call(*function, arguments);
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
    InTables const found = find_in_tables(name);
    return found.count == 1 ? Outcome(cited(found.row->source)) : Outcome(no_such_name(found.count));
}

Outcome answer_version(std::span<Value const>) {
    return std::string(edition);
}

} // namespace hearthcell
