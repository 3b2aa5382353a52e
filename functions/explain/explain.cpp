#include "functions/explain/explain.hpp"

#include "functions/call/call.hpp"
#include "functions/explain/reasons.hpp"
#include "functions/explain/slips.hpp"
#include "functions/explain/phrases.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

Value value_at(std::span<Value const> values, std::size_t place) {
    return place < values.size() ? values[place] : Value();
}

/// The number that was refused: the argument itself, or the reading of a column.
std::optional<double> number_at(Value const& value, unsigned row) {
    if (double const* number = std::get_if<double>(&value))
        return *number;
    Block const* block = std::get_if<Block>(&value);
    if (block != nullptr && row > 0)
        return block->numbers[row - 1];
    return {};
}

std::string text_at(Value const& value, unsigned row) {
    if (std::string const* text = std::get_if<std::string>(&value))
        return *text;
    if (Block const* block = std::get_if<Block>(&value))
        for (Block::Text const& text : block->texts)
            if (text.place + 1 == row)
                return text.text;
    return "";
}

/// The choice that decides which equation is computed: mostly whose method.
struct MethodInForce {
    std::size_t index = 0;
    std::string_view name;     ///< empty: the function knows no methods
    std::string_view argument; ///< what the choice is called
};

MethodInForce method_in_force(Function const& function, std::span<Value const> values) {
    for (std::size_t i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        if (argument.kind != Kind::choice)
            continue;
        Scalar const scalar = read_scalar(argument, value_at(values, i));
        if (scalar.reason == Reason::none)
            return {std::size_t(scalar.number), argument.choices[std::size_t(scalar.number)], argument.name};
    }
    return {};
}

/// The result that was refused: only a numeric function has one to show.
std::string refused_result(Function const& function, std::span<Value const> values) {
    Numeric const* numeric = std::get_if<Numeric>(&function.kernel);
    if (numeric == nullptr)
        return "a number";
    std::array<Scalar, most_arguments> scalars;
    for (std::size_t i = 0; i < function.arguments.size(); ++i)
        scalars[i] = read_scalar(function.arguments[i], value_at(values, i));
    Resolved const given = resolve(function, std::span(scalars).first(function.arguments.size()));
    return in_words(numeric->value(given.numbers.data(), given.choices.data()), function.result.measure);
}

/// Where in a column or in a matrix, counted from 1.
std::string place_in(Argument const& argument, Value const& value, unsigned row) {
    if (row == 0)
        return "";
    Block const* block = std::get_if<Block>(&value);
    if (argument.kind != Kind::matrix || block == nullptr)
        return " in row " + std::to_string(row);
    return " in row " + std::to_string((row - 1) / block->columns + 1) + ", column " +
           std::to_string((row - 1) % block->columns + 1);
}

std::string about_argument(Function const& function, std::span<Value const> values, Failure const& why) {
    Argument const& argument = function.arguments[why.argument];
    Value const value = value_at(values, why.argument);
    std::optional<double> const number = number_at(value, why.row);
    bool const is_number = number && !failed(*number); // a text in a column leaves a failure in its place
    std::string const given = is_number ? in_words(*number) : "\"" + text_at(value, why.row) + "\"";
    std::string const name = std::string(argument.name) + place_in(argument, value, why.row);
    std::string sentence = filled(meaning_of(why.reason).sentence, "{argument}", name);
    sentence = filled(filled(sentence, "{given}", given), "{allowed}", allowed_words(argument));
    if (why.reason != Reason::out_of_range)
        return sentence;
    double const read = number ? *number : read_scalar(argument, value).number;
    bool const zero_in_words = !number && read == 0; // the hint to a 0 speaks of an empty cell, which is no text
    std::string const meant = zero_in_words ? "" : probably_meant(argument, read);
    if (meant.empty())
        return sentence;
    sentence.back() = meant.front() >= 'A' ? '.' : ':'; // a sentence of its own begins with a capital, others with {x}
    return sentence + " " + meant;
}

std::string about_result(Function const& function, std::span<Value const> values, Failure const& why) {
    std::string sentence(meaning_of(why.reason).sentence);
    if (why.reason == Reason::result_out_of_range) {
        Result const& result = function.result;
        sentence = filled(sentence, "{given}", refused_result(function, values));
        sentence = filled(sentence, "{allowed}", in_words(result.low) + " to " + in_words(result.high, result.measure));
        std::string_view const hint = result_hint(result.measure);
        return hint.empty() ? sentence : sentence + " " + std::string(hint);
    }
    sentence = filled(sentence, "{given}", "\"" + std::string(method_in_force(function, values).name) + "\"");
    sentence = filled(sentence, "{in row}", why.row > 0 ? " in row " + std::to_string(why.row) : "");
    sentence = filled(sentence, "{row}", std::to_string(why.row));
    return filled(sentence, "{allowed}", std::to_string(function.arguments.size()));
}

std::string about_failure(Function const& function, std::span<Value const> values, Failure const& why) {
    std::string const own = function.complaint != nullptr ? function.complaint(values) : "";
    if (!own.empty())
        return own;
    return why.argument < function.arguments.size() ? about_argument(function, values, why)
                                                    : about_result(function, values, why);
}

/// A row or column in which some cells failed, each in its place.
std::string about_cells(Function const& function, std::span<Value const> values, Block const& block) {
    std::size_t count = 0, bad = 0, first = 0;
    for (std::size_t i = 0; i < block.numbers.size(); ++i) {
        if (is_absent(block.numbers[i]))
            continue;
        ++count;
        if (failed(block.numbers[i]) && bad++ == 0)
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
    bool const published = method.argument == "method" && method.name != "properties";
    return text + (published ? " (the method is from memory of its document)." : ".");
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

std::string about_success(Function const& function, std::span<Value const> values, Outcome const& outcome) {
    Block const* block = std::get_if<Block>(&outcome);
    if (block != nullptr && !function.result.parts.empty() && !function.result.list)
        return about_parts(function, values, *block);
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
    for (std::string const& sentence : oddities(function, arguments))
        text += (text.empty() ? "Odd: " : " ") + sentence;
    if (text.empty())
        text = about_success(function, arguments, outcome);
    text += method_words(function, arguments);
    if (function.remark != nullptr)
        for (std::string const& sentence : function.remark(arguments))
            text += " " + sentence;
    return function.caution.empty() ? text : text + " " + std::string(function.caution);
}

Outcome explain_call(std::span<Value const> given) {
    Function const* const function = find_function(std::get<std::string>(given[0]));
    if (function == nullptr)
        return Failure{Reason::unknown_name, 0};
    std::span<Value const> const arguments = given.subspan(1);
    // Asked about itself, it looks at the name only: else it would call itself once for every EXPLAIN that is given.
    bool const is_itself = function->name == "EXPLAIN";
    return explain(*function, is_itself ? arguments.first(std::min<std::size_t>(1, arguments.size())) : arguments);
}

} // namespace hearthcell
