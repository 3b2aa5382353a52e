#include "functions/explain/failures.hpp"

#include "functions/call/part.hpp"
#include "functions/call/scalar.hpp"
#include "functions/call/wordy.hpp"
#include "functions/explain/method_in_force.hpp"
#include "functions/explain/oddities.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/explain/slips.hpp"

#include <optional>

namespace hearthcell {
namespace {

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

/// The result that was refused: only a numeric function has one to show.
std::string refused_result(Function const& function, std::span<Value const> values) {
    Numeric const* numeric = std::get_if<Numeric>(&function.kernel);
    if (numeric == nullptr)
        return "a number";
    Resolved const given = resolve(function, values);
    return in_words(numeric->value(given.numbers.data(), given.choices.data()), function.result.measure);
}

/// "row 2 of ", where it is one of a column or of a matrix, counted from 1.
std::string place_in(Argument const& argument, Value const& value, unsigned row) {
    if (row == 0)
        return "";
    Block const* block = std::get_if<Block>(&value);
    if (argument.kind != ArgumentKind::matrix || block == nullptr)
        return "row " + std::to_string(row) + " of ";
    return "row " + std::to_string((row - 1) / block->columns + 1) + ", column " +
           std::to_string((row - 1) % block->columns + 1) + " of ";
}

/// "SERIES(values; [confidence]; part)", for whoever has put the part elsewhere.
std::string with_part(Function const& function) {
    std::string text = std::string(function.name) + "(";
    for (Argument const& argument : function.arguments) {
        bool const is_part = argument.kind == ArgumentKind::part; // what is asked for is not left out
        text += (text.back() == '(' ? "" : "; ") +
                (is_part ? std::string(argument.name) : shown_name(argument, Language::english));
    }
    return text + ")";
}

/// A number in the place of an option that may be left out was probably meant for the argument behind it.
std::string number_behind(Function const& function, double number, unsigned place) {
    std::size_t const next = place + 1;
    bool const fits = function.arguments[place].optional && next < function.arguments.size() &&
                      allows(function.arguments[next], number);
    return fits ? " " + std::string(function.arguments[next].name) + " stands behind " +
                      std::string(function.arguments[place].name) + ", which may stay empty: ;;"
                : "";
}

std::string about_argument(Function const& function, std::span<Value const> values, Failure const& why) {
    Argument const& argument = function.arguments[why.argument];
    Value const& value = value_at(values, why.argument);
    std::optional<double> const number = number_at(value, why.row);
    bool const is_number = number && !failed(*number); // a text in a column leaves a failure in its place
    std::string const given = is_number ? in_words(*number) : "\"" + text_at(value, why.row) + "\"";
    std::string const name = place_in(argument, value, why.row) + std::string(argument.name);
    std::string sentence = filled(meaning_of(why.reason).sentence, "{argument}", name);
    bool const is_ambiguous = why.reason == Reason::ambiguous_name;
    sentence = filled(filled(sentence, "{given}", given), "{allowed}",
                      is_ambiguous                         ? candidates(argument, text_at(value, why.row))
                      : why.reason == Reason::out_of_range ? range_of(argument) // a number was given, so no names
                                                           : allowed_words(function, argument));
    sentence = filled(sentence, "{in row}", why.row > 0 ? " in row " + std::to_string(why.row) : "");
    bool const may_be_a_part = why.reason == Reason::text_for_number && has_parts_to_choose(function);
    if (may_be_a_part && part_named(function, text_at(value, why.row)))
        return sentence + " " + given + " is a part: it comes last, as in " + with_part(function) + ".";
    if (why.reason == Reason::number_for_text)
        return sentence + number_behind(function, number.value_or(absent), why.argument);
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
        if (std::string const swapped = swapped_readings(function, values); !swapped.empty())
            return sentence + " " + swapped;
        std::string_view const hint = result_hint(result.measure);
        return hint.empty() ? sentence : sentence + " " + std::string(hint);
    }
    sentence = filled(sentence, "{given}", "\"" + std::string(method_in_force(function, values).name) + "\"");
    sentence = filled(sentence, "{in row}", why.row > 0 ? " in row " + std::to_string(why.row) : "");
    sentence = filled(sentence, "{row}", std::to_string(why.row));
    return filled(sentence, "{allowed}", std::to_string(function.arguments.size()));
}

/// What the kernel itself says of a failure; empty where that is nothing, or where the arguments did not get that far.
std::string complaint_of(Function const& function, std::span<Value const> values) {
    Wordy const* wordy = std::get_if<Wordy>(&function.kernel);
    if (wordy == nullptr || wordy->complaint == nullptr)
        return "";
    std::vector<Value> given(values.begin(), values.end());
    Failure const why = prepare_words(function, given);
    return why.reason == Reason::none ? wordy->complaint(given) : "";
}

} // namespace

std::string about_failure(Function const& function, std::span<Value const> values, Failure const& why) {
    if (std::string own = complaint_of(function, values); !own.empty())
        return own;
    return why.argument < function.arguments.size() ? about_argument(function, values, why)
                                                    : about_result(function, values, why);
}

} // namespace hearthcell
