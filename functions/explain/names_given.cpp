#include "functions/explain/names_given.hpp"

#include "functions/catalogue/names.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>

namespace hearthcell {

std::string about_name(Speaker const& say, Named const& row, Measure measure) {
    return say(sentences::stands_for, {{"name", say.text(row.name)},
                                       {"value", quantity(say, row.value, measure)},
                                       {"what", say.text(row.what)},
                                       {"source", cited(say, row.source)}});
}

Sentences about_names(Speaker const& say, Function const& function, std::span<Value const> values) {
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
            std::string sentence = about_name(say, *found.first, argument.measure);
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
