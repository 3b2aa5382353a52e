#include "functions/explain/names_given.hpp"

#include "functions/catalogue/names.hpp"
#include "functions/explain/phrases.hpp"

#include <algorithm>

namespace hearthcell {

std::string about_name(Named const& row, Measure measure) {
    return "\"" + std::string(row.name) + "\" stands for " + in_words(row.value, measure) + ", " +
           std::string(row.what) + ": " + cited(row.source) + ".";
}

Sentences about_names(Function const& function, std::span<Value const> values) {
    Sentences result;
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        Value const& value = value_at(values, i);
        if (argument.table == nullptr)
            continue;
        auto const add = [&](std::string_view name) {
            NamedRows const found = find_name(*argument.table, name);
            if (found.count != 1)
                return;
            std::string sentence = about_name(*found.first, argument.measure);
            if (std::ranges::find(result, sentence) == result.end())
                result.push_back(std::move(sentence));
        };
        if (std::string const* const text = std::get_if<std::string>(&value))
            add(*text);
        if (Block const* const block = std::get_if<Block>(&value))
            for (Block::Text const& text : block->texts)
                add(text.text);
    }
    return result;
}

} // namespace hearthcell
