#include "functions/explain/explain.hpp"

#include "functions/call/call.hpp"
#include "functions/call/part.hpp"
#include "functions/explain/failures.hpp"
#include "functions/explain/method_in_force.hpp"
#include "functions/explain/names_given.hpp"
#include "functions/explain/oddities.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/explain/remarks_on.hpp"
#include "functions/words/sentences.hpp"

#include <algorithm>
#include <iterator>

namespace hearthcell {
namespace {

void add_method(Speaker const& say, Function const& function, std::span<Value const> values, Sentences& text) {
    MethodInForce const method = method_in_force(function, values);
    if (method.name.empty())
        return;
    text.push_back(
        say(is_published(method) ? sentences::by_published_method : sentences::by_method,
            {{"method", std::string(method.name)}, {"equation", say.text(function.equations[method.index])}}));
}

/// Every part of a row with its value, and why one has none. A part that failed is no error of the whole.
void add_parts(Speaker const& say, Function const& function, std::span<Value const> values, Block const& block,
               Sentences& text) {
    std::string list;
    Sentences whys;
    for (std::size_t i = 0; i < function.result.parts.size(); ++i) {
        Part const& part = function.result.parts[i];
        double const value = block.numbers[i];
        list = with_next(
            say, list,
            say(failed(value) ? sentences::part_none : sentences::part_value,
                {{"part", say.text(part.name)}, {"value", failed(value) ? "" : quantity(say, value, part.measure)}}));
        if (!failed(value))
            continue;
        std::string why = about_failure(say, function, values, failure_of(value));
        if (std::ranges::find(whys, why) == whys.end())
            whys.push_back(std::move(why));
    }
    text.push_back(say(whys.empty() ? sentences::fine_parts : sentences::in_part, {{"list", list}}));
    std::ranges::move(whys, std::back_inserter(text));
    bool const is_named = values.size() == function.arguments.size();
    if (!is_named && !function.result.all_unless_named) // a cell shows one number: how to come by the others
        text.push_back(say(sentences::how_to_choose));
}

void add_success(Speaker const& say, Function const& function, std::span<Value const> values, Outcome const& outcome,
                 Sentences& text) {
    if (has_parts_to_choose(function))
        return add_parts(say, function, values, std::get<Block>(call(function, asking_for_all(function, values))),
                         text);
    Block const* const block = std::get_if<Block>(&outcome);
    if (block != nullptr && function.result.parts.empty()) {
        text.push_back(about_cells(say, function, values, *block));
        return;
    }
    double const* const number = std::get_if<double>(&outcome);
    text.push_back(number == nullptr
                       ? say(sentences::fine)
                       : say(sentences::fine_value, {{"name", say.text(function.result.name)},
                                                     {"value", quantity(say, *number, function.result.measure)}}));
}

std::string joined(Sentences const& sentences) {
    std::string text;
    for (std::string const& sentence : sentences)
        text += (text.empty() ? "" : " ") + sentence;
    return text;
}

struct Explained {
    std::string text; ///< without the word that opens what is odd
    bool is_odd = false;
};
Explained explain(Speaker const& say, Function const& function, std::span<Value const> arguments) {
    Outcome const outcome = call(function, arguments);
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return {about_failure(say, function, arguments, *why)};
    Sentences text;
    for (Oddity& oddity : oddities(say, function, arguments))
        text.push_back(std::move(oddity.sentence));
    Remarks remarks = remarks_on(function, arguments, say.language());
    std::ranges::move(remarks.odd, std::back_inserter(text));
    bool const is_odd = !text.empty();
    if (!is_odd)
        add_success(say, function, arguments, outcome, text);
    add_method(say, function, arguments, text);
    std::ranges::move(about_names(say, function, arguments), std::back_inserter(text));
    std::ranges::move(remarks.said, std::back_inserter(text));
    if (!function.caution.empty())
        text.push_back(say.text(function.caution));
    return {joined(text), is_odd};
}

} // namespace

std::string about_cells(Speaker const& say, Function const& function, std::span<Value const> values,
                        Block const& block) {
    std::size_t count = 0, bad = 0, first = 0, texts = 0;
    for (std::size_t i = 0; i < block.numbers.size(); ++i) {
        if (is_absent(block.numbers[i]))
            continue;
        ++count;
        bool const is_answer_in_words = texts < block.texts.size() && block.texts[texts].place == i;
        texts += is_answer_in_words ? 1 : 0;
        if (failed(block.numbers[i]) && !is_answer_in_words && bad++ == 0)
            first = i;
    }
    if (bad == 0)
        return say(sentences::fine);
    Failure why = failure_of(block.numbers[first]);
    why.row = unsigned(first + 1);
    return say(sentences::cells_failed, {{"bad", std::to_string(bad)},
                                         {"count", std::to_string(count)},
                                         {"why", about_failure(say, function, values, why)}});
}

std::string explain(Function const& function, std::span<Value const> arguments, Language language) {
    Speaker const say(language);
    Explained const explained = explain(say, function, arguments);
    return explained.is_odd ? say(sentences::odd, {{"what", explained.text}}) : explained.text;
}

std::string what_is_odd(Function const& function, std::span<Value const> arguments, Language language) {
    Explained const explained = explain(Speaker(language), function, arguments);
    return explained.is_odd ? explained.text : "";
}

} // namespace hearthcell
