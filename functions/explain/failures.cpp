#include "functions/explain/failures.hpp"

#include "functions/call/part.hpp"
#include "functions/call/scalar.hpp"
#include "functions/call/wordy.hpp"
#include "functions/explain/method_in_force.hpp"
#include "functions/explain/oddities.hpp"
#include "functions/explain/phrases.hpp"
#include "functions/explain/slips.hpp"
#include "functions/words/sentences.hpp"

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
std::string refused_result(Speaker const& say, Function const& function, std::span<Value const> values) {
    Numeric const* numeric = std::get_if<Numeric>(&function.kernel);
    if (numeric == nullptr)
        return say(sentences::a_number);
    Resolved const given = resolve(function, values);
    return quantity(say, numeric->value(given.numbers.data(), given.choices.data()), function.result.measure);
}

/// The argument's name; with row, and column of a matrix, counted from 1, where it is one cell of many.
std::string name_with_place(Speaker const& say, Argument const& argument, Value const& value, unsigned row) {
    std::string const name = say.text(argument.name);
    if (row == 0)
        return named_in_sentence(say, argument);
    Block const* block = std::get_if<Block>(&value);
    if (argument.kind != ArgumentKind::matrix || block == nullptr)
        return say(sentences::argument_in_row, {{"row", std::to_string(row)}, {"name", name}});
    return say(sentences::argument_in_cell, {{"row", std::to_string((row - 1) / block->columns + 1)},
                                             {"column", std::to_string((row - 1) % block->columns + 1)},
                                             {"name", name}});
}

std::string in_row(Speaker const& say, unsigned row) {
    return row > 0 ? say(sentences::in_row, {{"row", std::to_string(row)}}) : "";
}

/// "SERIES(values; [confidence]; part)", for whoever has put the part elsewhere.
std::string with_part(Speaker const& say, Function const& function) {
    std::string text = std::string(function.name) + "(";
    for (Argument const& argument : function.arguments) {
        bool const is_part = argument.kind == ArgumentKind::part; // what is asked for is not left out
        text += (text.back() == '(' ? "" : "; ") +
                (is_part ? say.text(argument.name) : shown_name(argument, say.language()));
    }
    return text + ")";
}

/// A number in the place of an option that may be left out was probably meant for the argument behind it.
std::string number_behind(Speaker const& say, Function const& function, double number, unsigned place) {
    std::size_t const next = place + 1;
    bool const fits = function.arguments[place].optional && next < function.arguments.size() &&
                      allows(function.arguments[next], number);
    return fits ? " " + say(sentences::stands_behind, {{"next", named_in_sentence(say, function.arguments[next])},
                                                       {"option", named_in_sentence(say, function.arguments[place])}})
                : "";
}

std::string allowed_for(Speaker const& say, Function const& function, Argument const& argument, Reason reason,
                        std::string_view typed) {
    if (reason == Reason::ambiguous_name)
        return candidates(say, argument, typed);
    if (reason == Reason::out_of_range) // a number was given, so no names
        return range_in_words(say, argument.low, argument.high, argument.measure);
    return allowed_words(say, function, argument);
}

std::string about_argument(Speaker const& say, Function const& function, std::span<Value const> values,
                           Failure const& why) {
    Argument const& argument = function.arguments[why.argument];
    Value const& value = value_at(values, why.argument);
    std::optional<double> const number = number_at(value, why.row);
    std::string const typed = text_at(value, why.row);
    bool const is_number = number && !failed(*number); // a text in a column leaves a failure in its place
    std::string const given = is_number ? say.number(*number) : in_quotes(typed);
    std::string const name = name_with_place(say, argument, value, why.row);
    std::string const allowed = allowed_for(say, function, argument, why.reason, typed);
    std::string const sentence =
        say(sentences::of(why.reason),
            {{"argument", name}, {"given", given}, {"allowed", allowed}, {"in row", in_row(say, why.row)}});
    bool const may_be_a_part = why.reason == Reason::text_for_number && has_parts_to_choose(function);
    if (may_be_a_part && part_named(function, typed))
        return sentence + " " + say(sentences::is_a_part, {{"given", given}, {"call", with_part(say, function)}});
    if (why.reason == Reason::number_for_text)
        return sentence + number_behind(say, function, number.value_or(absent), why.argument);
    if (why.reason != Reason::out_of_range)
        return sentence;
    double const read = number ? *number : read_scalar(argument, value).number;
    bool const zero_in_words = !number && read == 0; // the hint to a 0 speaks of an empty cell, which is no text
    Meant const meant = zero_in_words ? Meant() : probably_meant(say, argument, read);
    if (meant.goes_on)
        return say(sentences::out_of_range_because,
                   {{"argument", name}, {"given", given}, {"allowed", allowed}, {"hint", meant.text}});
    return meant.text.empty() ? sentence : sentence + " " + meant.text;
}

std::string about_refused_result(Speaker const& say, Function const& function, std::span<Value const> values) {
    Result const& result = function.result;
    std::string const sentence = say(sentences::of(Reason::result_out_of_range),
                                     {{"given", refused_result(say, function, values)},
                                      {"allowed", range_in_words(say, result.low, result.high, result.measure)}});
    if (has_swapped_readings(function, values))
        return sentence + " " + say(sentences::temperatures_swapped);
    Sentence const* const hint = result_hint(result.measure);
    return hint == nullptr ? sentence : sentence + " " + say(*hint);
}

std::string about_result(Speaker const& say, Function const& function, std::span<Value const> values,
                         Failure const& why) {
    if (why.reason == Reason::result_out_of_range)
        return about_refused_result(say, function, values);
    return say(sentences::of(why.reason), {{"given", in_quotes(method_in_force(function, values).name)},
                                           {"in row", in_row(say, why.row)},
                                           {"row", std::to_string(why.row)},
                                           {"allowed", std::to_string(function.arguments.size())}});
}

/// What the kernel itself says of a failure; empty where that is nothing, or where the arguments did not get that far.
std::string complaint_of(Language language, Function const& function, std::span<Value const> values) {
    Wordy const* wordy = std::get_if<Wordy>(&function.kernel);
    if (wordy == nullptr || wordy->complaint == nullptr)
        return "";
    std::vector<Value> given(values.begin(), values.end());
    Failure const why = prepare_words(function, given);
    return why.reason == Reason::none ? wordy->complaint(given, language) : "";
}

} // namespace

std::string about_failure(Speaker const& say, Function const& function, std::span<Value const> values,
                          Failure const& why) {
    if (std::string own = complaint_of(say.language(), function, values); !own.empty())
        return own;
    return why.argument < function.arguments.size() ? about_argument(say, function, values, why)
                                                    : about_result(say, function, values, why);
}

} // namespace hearthcell
