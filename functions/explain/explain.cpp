#include "functions/explain/explain.hpp"

#include "functions/call/call.hpp"
#include "functions/call/part.hpp"
#include "functions/explain/failures.hpp"
#include "functions/explain/method_in_force.hpp"
#include "functions/explain/names_given.hpp"
#include "functions/explain/oddities.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/explain/remarks_on.hpp"

namespace hearthcell {
namespace {

/// A row or column in which some cells failed, each in its place.
std::string about_cells(Function const& function, std::span<Value const> values, Block const& block) {
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
        return "Fine.";
    Failure why = failure_of(block.numbers[first]);
    why.row = unsigned(first + 1);
    return std::to_string(bad) + " of " + std::to_string(count) +
           " could not be computed; the first: " + about_failure(function, values, why);
}

std::string method_words(Function const& function, std::span<Value const> values) {
    MethodInForce const method = method_in_force(function, values);
    if (method.name.empty())
        return "";
    std::string text = " By \"" + std::string(method.name) + "\": " + std::string(function.equations[method.index]);
    return text + (is_published(method) ? " (the method is from memory of its document)." : ".");
}

/// Every part of a row with its value, and why one has none. A part that failed is no error of the whole.
std::string about_parts(Function const& function, std::span<Value const> values, Block const& block) {
    std::string list, whys;
    for (std::size_t i = 0; i < function.result.parts.size(); ++i) {
        Part const& part = function.result.parts[i];
        double const value = block.numbers[i];
        list += (list.empty() ? "" : "; ") + std::string(part.name) + " ";
        if (!failed(value)) {
            list += in_words(value, part.measure);
            continue;
        }
        list += "none";
        std::string const why = " " + about_failure(function, values, failure_of(value));
        if (whys.find(why) == std::string::npos)
            whys += why;
    }
    return (whys.empty() ? "Fine: " : "In part: ") + list + "." + whys;
}

/// A cell shows one number: where none was named, how to come by the others.
std::string how_to_choose(Function const& function, std::span<Value const> values) {
    bool const is_named = values.size() == function.arguments.size();
    if (is_named || function.result.all_unless_named)
        return "";
    return " The cell shows the first; another by its name as the last argument, part, or \"all\".";
}

std::string about_success(Function const& function, std::span<Value const> values, Outcome const& outcome) {
    if (has_parts_to_choose(function))
        return about_parts(function, values, std::get<Block>(call(function, asking_for_all(function, values)))) +
               how_to_choose(function, values);
    Block const* block = std::get_if<Block>(&outcome);
    if (block != nullptr && function.result.parts.empty())
        return about_cells(function, values, *block);
    double const* number = std::get_if<double>(&outcome);
    if (number == nullptr)
        return "Fine.";
    return "Fine: " + std::string(function.result.name) + " " + in_words(*number, function.result.measure) + ".";
}

} // namespace

std::string explain(Function const& function, std::span<Value const> arguments) {
    Outcome const outcome = call(function, arguments);
    if (Failure const* why = std::get_if<Failure>(&outcome))
        return about_failure(function, arguments, *why);
    std::string text;
    for (Oddity const& oddity : oddities(function, arguments))
        text += (text.empty() ? "Odd: " : " ") + oddity.sentence;
    Sentences const remarks = remarks_on(function, arguments);
    bool const odd = !text.empty() || (!remarks.empty() && is_odd(remarks.front()));
    if (!odd)
        text = about_success(function, arguments, outcome);
    text += method_words(function, arguments);
    for (std::string const& sentence : about_names(function, arguments))
        text += " " + sentence;
    for (std::string const& sentence : remarks)
        text += (text.empty() ? "" : " ") + sentence;
    return function.caution.empty() ? text : text + " " + std::string(function.caution);
}

} // namespace hearthcell
