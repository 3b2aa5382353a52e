#include "functions/explain/phrases.hpp"

#include "functions/call/part.hpp"
#include "functions/catalogue/tables.hpp"
#include "functions/words/sentences.hpp"

namespace hearthcell {

std::string quantity(Speaker const& say, double number, Measure measure) {
    std::string_view const unit = unit_of(measure);
    return say.number(number) + (unit.empty() ? "" : " ") + std::string(unit);
}

std::string shown_name(Argument const& argument, Language language, std::string_view which) {
    bool const open = argument.optional || argument.kind == ArgumentKind::rest;
    std::string const name = std::string(argument.name.in(language)) + std::string(which);
    return open ? "[" + name + "]" : name;
}

std::string named_in_sentence(Speaker const& say, Argument const& argument) {
    return say(sentences::argument_name, {{"name", say.text(argument.name)}});
}

std::string with_next(Speaker const& say, std::string const& list, std::string next) {
    return list.empty() ? next : say(sentences::next_of_list, {{"list", list}, {"next", std::move(next)}});
}

std::string in_quotes(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

std::string cited(Speaker const& say, Source const& source) {
    std::string const title = say.text(source.title);
    return source.from_memory ? say(sentences::from_memory, {{"title", title}}) : title;
}

std::string candidates(Speaker const& say, Argument const& argument, std::string_view name) {
    std::string list;
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            if ((argument.table == nullptr || argument.table == table) && answers_to(row, name)) {
                std::string const found = in_quotes(say.text(row.name));
                list = list.empty() ? found : say(sentences::or_another, {{"list", list}, {"name", found}});
            }
    return list;
}

std::string range_in_words(Speaker const& say, double low, double high, Measure measure) {
    return say(sentences::range, {{"low", say.number(low)}, {"high", quantity(say, high, measure)}});
}

std::string allowed_words(Speaker const& say, Function const& function, Argument const& argument) {
    std::string list;
    auto const add = [&list](std::string_view text) { list += (list.empty() ? "" : ", ") + in_quotes(text); };
    if (argument.kind == ArgumentKind::choice) {
        for (std::string_view choice : argument.choices)
            add(choice);
        return list;
    }
    if (argument.kind == ArgumentKind::part) {
        for (Part const& part : function.result.parts)
            add(say.text(part.name));
        add(say.text(all_parts));
        return list;
    }
    if (argument.table != nullptr)
        for (Named const& row : argument.table->rows)
            add(say.text(row.name));
    if (argument.kind == ArgumentKind::text)
        return say(argument.name == "function name" ? sentences::functions_of_readme : sentences::names_of_readme);
    if (argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::anything ||
        argument.kind == ArgumentKind::mixed)
        return list;
    std::string const range = range_in_words(say, argument.low, argument.high, argument.measure);
    return list.empty() ? range : say(sentences::or_range, {{"list", list}, {"range", range}});
}

} // namespace hearthcell
