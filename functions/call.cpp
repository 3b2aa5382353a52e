#include "functions/call.hpp"

#include <charconv>

namespace hearthcell {
namespace {

/// Calc hands the text "12" over as 12 where a number is declared, and only whole numbers in texts count as plain
/// there. The same holds where we declare `any`.
Scalar number_in(std::string const& text) {
    long long whole = 0;
    char const* const end = text.data() + text.size();
    auto const [stopped, error] = std::from_chars(text.data(), end, whole);
    if (text.empty() || error != std::errc() || stopped != end)
        return {absent, Reason::text_for_number};
    return {double(whole)};
}

Scalar named(Argument const& argument, std::string const& text) {
    Named const* const row = find_name(*argument.table, text);
    return row == nullptr ? Scalar{absent, Reason::unknown_name} : Scalar{row->value};
}

Scalar chosen(Argument const& argument, std::string const& text) {
    for (std::size_t i = 0; i < argument.choices.size(); ++i)
        if (same_name(argument.choices[i], text))
            return {double(i)};
    return {absent, Reason::unknown_name};
}

Scalar of_text(Argument const& argument, std::string const& text) {
    switch (argument.kind) {
    case Kind::choice:
        return chosen(argument, text);
    case Kind::name:
    case Kind::number_or_name:
        return named(argument, text);
    default:
        return number_in(text);
    }
}

Scalar omitted_argument(Argument const& argument) {
    if (!argument.optional)
        return {absent, Reason::argument_missing};
    return {argument.kind == Kind::choice ? 0 : argument.fallback};
}

} // namespace

Scalar read_scalar(Argument const& argument, Value const& value) {
    if (double const* number = std::get_if<double>(&value)) {
        bool const wants_text = argument.kind == Kind::choice || argument.kind == Kind::name;
        return wants_text ? Scalar{absent, Reason::number_for_text} : Scalar{*number};
    }
    if (std::string const* text = std::get_if<std::string>(&value))
        return of_text(argument, *text);
    if (std::holds_alternative<Block>(value))
        return {absent, Reason::block_for_value};
    return omitted_argument(argument);
}

Resolved resolve(Function const& function, std::span<Scalar const> arguments) {
    Resolved result;
    std::size_t numbers = 0, choices = 0;
    for (unsigned i = 0; i < arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        Scalar const& given = arguments[i];
        if (given.reason != Reason::none) {
            result.failure = {given.reason, i};
            return result;
        }
        if (argument.kind == Kind::choice) {
            result.choices[choices++].index = int(given.number);
            continue;
        }
        bool const left_out = argument.optional && is_absent(given.number);
        bool const in_range = given.number >= argument.low && given.number <= argument.high; // false for NaN
        if (!left_out && !in_range) {
            result.failure = {Reason::out_of_range, i};
            return result;
        }
        result.numbers[numbers++] = given.number;
    }
    return result;
}

double call_numeric(Function const& function, std::span<Scalar const> arguments) {
    Resolved const given = resolve(function, arguments);
    if (given.failure.reason != Reason::none)
        return failure(given.failure.reason, given.failure.argument);
    double const result = std::get<Numeric>(function.kernel).value(given.numbers.data(), given.choices.data());
    if (failed(result))
        return result;
    bool const in_range = result >= function.result.low && result <= function.result.high; // false for NaN
    return in_range ? result : failure(Reason::result_out_of_range);
}

Failure check_column(Argument const& argument, unsigned place, Block const& column) {
    if (column.rows > 1 && column.columns > 1)
        return {Reason::block_for_column, place};
    for (std::size_t i = 0; i < column.numbers.size(); ++i) {
        double const reading = column.numbers[i];
        if (is_absent(reading) || (reading >= argument.low && reading <= argument.high))
            continue;
        bool const is_text = failure_of(reading).reason == Reason::text_for_number;
        return {is_text ? Reason::text_for_number : Reason::out_of_range, place, unsigned(i + 1)};
    }
    return {};
}

namespace {

Outcome outcome_of(double result) {
    Failure const why = failure_of(result);
    return why.reason == Reason::none ? Outcome(result) : Outcome(why);
}

Value const& at(std::span<Value const> values, std::size_t place) {
    static constexpr Value nothing;
    return place < values.size() ? values[place] : nothing;
}

Outcome call_with_numbers(Function const& function, std::span<Value const> values) {
    std::array<Scalar, most_arguments> scalars;
    for (std::size_t i = 0; i < function.arguments.size(); ++i)
        scalars[i] = read_scalar(function.arguments[i], at(values, i));
    return outcome_of(call_numeric(function, std::span(scalars).first(function.arguments.size())));
}

/// A single value where a column is wanted is a column of one.
Block column_of(Value const& value) {
    if (double const* number = std::get_if<double>(&value))
        return {1, 1, {*number}, {}};
    return {1, 1, {text_in_block}, {{0, std::get<std::string>(value)}}};
}

Outcome call_with_columns(Function const& function, std::span<Value const> values) {
    std::vector<Block> singles;
    singles.reserve(most_arguments); // so that pointers into it stay good
    std::vector<Block const*> columns;
    std::vector<double> numbers;
    std::vector<Choice> choices;
    for (unsigned i = 0; i < function.arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        Value const& value = at(values, i);
        if (argument.kind == Kind::column) {
            if (std::holds_alternative<std::monostate>(value)) {
                if (!argument.optional)
                    return Failure{Reason::argument_missing, i};
                columns.push_back(nullptr);
                continue;
            }
            Block const* block = std::get_if<Block>(&value);
            columns.push_back(block != nullptr ? block : &singles.emplace_back(column_of(value)));
            if (Failure const why = check_column(argument, i, *columns.back()); why.reason != Reason::none)
                return why;
            continue;
        }
        Scalar const scalar = read_scalar(argument, value);
        if (scalar.reason != Reason::none)
            return Failure{scalar.reason, i};
        if (argument.kind == Kind::choice) {
            choices.push_back({int(scalar.number)});
            continue;
        }
        bool const left_out = argument.optional && is_absent(scalar.number);
        if (!left_out && !(scalar.number >= argument.low && scalar.number <= argument.high))
            return Failure{Reason::out_of_range, i};
        numbers.push_back(scalar.number);
    }
    Outcome const result = std::get<Columnar>(function.kernel).answer({columns, numbers, choices});
    double const* const number = std::get_if<double>(&result);
    if (number != nullptr && !(*number >= function.result.low && *number <= function.result.high))
        return Failure{Reason::result_out_of_range};
    return result;
}

Outcome call_with_words(Function const& function, std::span<Value const> values) {
    for (unsigned i = 0; i < function.arguments.size(); ++i) {
        if (function.arguments[i].kind != Kind::text)
            continue;
        Value const& value = at(values, i);
        if (std::holds_alternative<std::monostate>(value))
            return Failure{Reason::argument_missing, i};
        if (std::holds_alternative<Block>(value))
            return Failure{Reason::block_for_value, i};
        if (std::holds_alternative<double>(value))
            return Failure{Reason::number_for_text, i};
    }
    return std::get<Wordy>(function.kernel).answer(values);
}

} // namespace

Outcome call(Function const& function, std::span<Value const> arguments) {
    bool const open_ended =
        !function.arguments.empty() && function.arguments[function.arguments.size() - 1].kind == Kind::rest;
    if (arguments.size() > function.arguments.size() && !open_ended)
        return Failure{Reason::too_many_arguments};
    if (std::holds_alternative<Numeric>(function.kernel))
        return call_with_numbers(function, arguments);
    if (std::holds_alternative<Columnar>(function.kernel))
        return call_with_columns(function, arguments);
    return call_with_words(function, arguments);
}

} // namespace hearthcell
