#include "functions/about/answers.hpp"

#include "functions/about/name_asked.hpp"
#include "functions/about/nearest_name.hpp"
#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/edition.hpp"
#include "functions/explain/call_check.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/names_given.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

/// What all tables say of a name, one after the other: a fuel has a calorific value and a share of carbon.
struct InTables {
    std::string said;
    std::size_t most = 0; ///< rows of one table that answer to the name: it stands for one thing where they are one
};

template <class Say> InTables find_in_tables(std::string_view name, std::string_view between, Say const& about) {
    InTables result;
    for (NameTable const* const table : name_tables) {
        NamedRows const found = find_name(*table, name);
        result.most = std::max(result.most, found.count);
        if (found.count == 1)
            result.said.append(result.said.empty() ? "" : between).append(about(*found.first, table->measure));
    }
    return result;
}

bool is_in_tables(std::string_view name) {
    return std::ranges::any_of(name_tables, [&](NameTable const* table) { return find_name(*table, name).count > 0; });
}

Failure no_such_name(std::size_t count) {
    return {count == 0 ? Reason::unknown_name : Reason::ambiguous_name, 0};
}

std::string no_such_language(std::string_view code) {
    std::string list;
    for (Language const language : languages)
        list += (list.empty() ? "" : ", ") + in_quotes(code_of(language));
    return Speaker(Language::english)(sentences::no_such_language,
                                      {{"language", std::string(code)}, {"languages", list}});
}

/// Of what is no function: a name from a table, or one that was nearly that of a function.
Outcome explain_name(Speaker const& say, std::string_view name, bool alone) {
    auto const [said, most] =
        find_in_tables(name, " ", [&](Named const& row, Measure measure) { return about_name(say, row, measure); });
    if (Function const* const nearest = most == 0 ? nearest_function(name) : nullptr)
        return say(sentences::no_such_function, {{"name", std::string(name)}, {"nearest", std::string(nearest->name)}});
    return most == 1 && alone ? Outcome(said) : Outcome(no_such_name(alone ? most : 0));
}

} // namespace

Outcome answer_explain(std::span<Value const> given) {
    NameAsked const asked = read_name_asked(std::get<std::string>(given[0]));
    Function const* const function = find_function(asked.name);
    if (asked.unknown && (function != nullptr || is_in_tables(asked.name)))
        return no_such_language(*asked.unknown);
    if (function == nullptr)
        return explain_name(Speaker(asked.language), asked.name, given.size() == 1);
    std::span<Value const> const arguments = given.subspan(1);
    // Asked about itself, it looks at the name only: else it would call itself once for every EXPLAIN that is given.
    bool const is_itself = function->name == "EXPLAIN";
    if (asked.for_check)
        return is_itself ? std::string() : check_call(*function, arguments, asked.language);
    return explain(*function, is_itself ? arguments.first(std::min<std::size_t>(1, arguments.size())) : arguments,
                   asked.language);
}

Outcome answer_source(std::span<Value const> given) {
    NameAsked const asked = read_name_asked(std::get<std::string>(given[0]));
    if (asked.unknown || asked.for_check)
        return no_such_name(0);
    Speaker const say(asked.language);
    if (Function const* function = find_function(asked.name)) {
        std::string text;
        for (Source const& source : function->sources)
            text = with_next(say, text, cited(say, source));
        return text;
    }
    auto const [said, most] =
        find_in_tables(asked.name, "; ", [&](Named const& row, Measure) { return cited(say, row.source); });
    return most == 1 ? Outcome(said) : Outcome(no_such_name(most));
}

Outcome answer_version(std::span<Value const> given) {
    return std::string(std::get<double>(given[0]) != 0 ? edition_and_build : edition);
}

} // namespace hearthcell
