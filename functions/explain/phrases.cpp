#include "functions/explain/phrases.hpp"

#include "functions/call/part.hpp"
#include "functions/catalogue/tables.hpp"

namespace hearthcell {

std::string in_words(double number, Measure measure) {
    std::string_view const unit = unit_of(measure);
    return in_words(number) + (unit.empty() ? "" : " ") + std::string(unit);
}

std::string shown_name(Argument const& argument, Language language) {
    bool const open = argument.optional || argument.kind == ArgumentKind::rest;
    return (open ? "[" : "") + std::string(argument.name.in(language)) + (open ? "]" : "");
}

std::string cited(Source const& source) {
    return std::string(source.title) + (source.from_memory ? " (from memory)" : "");
}

std::string candidates(Argument const& argument, std::string_view name) {
    std::string list;
    for (NameTable const* const table : name_tables)
        for (Named const& row : table->rows)
            if ((argument.table == nullptr || argument.table == table) && answers_to(row, name))
                list += (list.empty() ? "\"" : " or \"") + std::string(row.name) + "\"";
    return list;
}

std::string range_of(Argument const& argument) {
    return in_words(argument.low) + " to " + in_words(argument.high, argument.measure);
}

std::string allowed_words(Function const& function, Argument const& argument) {
    std::string list;
    auto const add = [&list](std::string_view text) {
        list += (list.empty() ? "\"" : ", \"") + std::string(text) + "\"";
    };
    if (argument.kind == ArgumentKind::choice) {
        for (std::string_view choice : argument.choices)
            add(choice);
        return list;
    }
    if (argument.kind == ArgumentKind::part) {
        for (Part const& part : function.result.parts)
            add(part.name);
        add(all_parts);
        return list;
    }
    if (argument.table != nullptr)
        for (Named const& row : argument.table->rows)
            add(row.name);
    if (argument.kind == ArgumentKind::text)
        return argument.name == "function name" ? "the functions of the README"
                                                : "the functions, fuels and pot materials of the README";
    if (argument.kind == ArgumentKind::name || argument.kind == ArgumentKind::anything ||
        argument.kind == ArgumentKind::mixed)
        return list;
    std::string const range = range_of(argument);
    return list.empty() ? range : list + ", or " + range;
}

std::string filled(std::string_view sentence, std::string_view key, std::string_view value) {
    std::string result(sentence);
    for (std::size_t at = result.find(key); at != std::string::npos; at = result.find(key, at + value.size()))
        result.replace(at, key.size(), value);
    return result;
}

} // namespace hearthcell
