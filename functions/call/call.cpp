#include "functions/call/call.hpp"

#include <algorithm>
#include <charconv>

namespace hearthcell {
namespace {

/// Calc hands the text "12" over as 12 where a number is declared, and only whole numbers in texts count as plain
/// there. The same holds where we declare `any`.
Scalar number_in(std::string const& text) {
    long long whole = 0;
    char const* const end = text.data() + text.size();
    auto const [stopped, error] = std::from_chars(text.data(), end, whole);
    if (error != std::errc() || stopped != end)
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

/// Whether a number is in the argument's range, or was left out where that has a meaning of its own.
bool allows(Argument const& argument, double number) {
    bool const in_range = number >= argument.low && number <= argument.high; // false for NaN
    return in_range || (argument.optional && is_absent(argument.fallback) && is_absent(number));
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
        if (!allows(argument, given.number)) {
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

namespace {

bool is_text(double reading) {
    return failure_of(reading).reason == Reason::text_for_number;
}

/// How many readings stand above the first number, where texts are no mistake; 0 for a column without any number.
std::size_t heading_rows(Block const& column) {
    for (std::size_t i = 0; i < column.numbers.size(); ++i)
        if (!is_text(column.numbers[i]) && !is_absent(column.numbers[i]))
            return i;
    return 0;
}

/// Every reading, whatever the shape of the block.
Failure check_readings(Argument const& argument, unsigned place, Block const& column) {
    for (std::size_t i = argument.headed ? heading_rows(column) : 0; i < column.numbers.size(); ++i) {
        double const reading = column.numbers[i];
        if ((reading >= argument.low && reading <= argument.high) || is_absent(reading))
            continue;
        return {is_text(reading) ? Reason::text_for_number : Reason::out_of_range, place, unsigned(i + 1)};
    }
    return {};
}

/// Texts and blanks are welcome; only the shape can be wrong.
Failure check_shape(Block const& block, unsigned place) {
    return {block.rows > 1 && block.columns > 1 ? Reason::block_for_column : Reason::none, place};
}

} // namespace

Failure check_column(Argument const& argument, unsigned place, Block const& column) {
    Failure const shape = check_shape(column, place);
    return shape.reason == Reason::none ? check_readings(argument, place, column) : shape;
}

namespace {

Outcome outcome_of(double result) {
    Failure const why = failure_of(result);
    return why.reason == Reason::none ? Outcome(result) : Outcome(why);
}

bool is_open_ended(Function const& function) {
    return !function.arguments.empty() && function.arguments[function.arguments.size() - 1].kind == Kind::rest;
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
    Columns const columns(function, values);
    if (columns.failure().reason != Reason::none)
        return columns.failure();
    Outcome result = std::get<Columnar>(function.kernel).answer(columns.given());
    double const* const number = std::get_if<double>(&result);
    if (number != nullptr && !(*number >= function.result.low && *number <= function.result.high))
        return Failure{Reason::result_out_of_range};
    return result;
}

Reason check_text(Value const& value) {
    if (std::holds_alternative<Block>(value))
        return Reason::block_for_value;
    return std::holds_alternative<double>(value) ? Reason::number_for_text : Reason::none;
}

/// Checks an argument of a wordy kernel and puts it into the form that the kernel is promised.
Failure check_wordy(Argument const& argument, unsigned place, Value& value) {
    if (std::holds_alternative<std::monostate>(value) && !argument.optional)
        return {Reason::argument_missing, place};
    switch (argument.kind) {
    case Kind::text:
        return {check_text(value), place};
    case Kind::anything:
        return std::holds_alternative<Block>(value) ? check_shape(std::get<Block>(value), place) : Failure{};
    case Kind::column:
    case Kind::mixed:
    case Kind::matrix:
        if (std::holds_alternative<std::monostate>(value))
            return {};
        if (!std::holds_alternative<Block>(value))
            value = column_of(value);
        if (argument.kind == Kind::mixed)
            return check_shape(std::get<Block>(value), place);
        return argument.kind == Kind::column ? check_column(argument, place, std::get<Block>(value))
                                             : check_readings(argument, place, std::get<Block>(value));
    default:
        break;
    }
    Scalar const scalar = read_scalar(argument, value);
    if (scalar.reason != Reason::none)
        return {scalar.reason, place};
    if (argument.kind != Kind::choice && !allows(argument, scalar.number))
        return {Reason::out_of_range, place};
    value = is_absent(scalar.number) ? Value() : Value(scalar.number);
    return {};
}

Outcome call_with_words(Function const& function, std::span<Value const> given) {
    std::vector<Value> values(given.begin(), given.end());
    Failure const why = prepare_words(function, values);
    return why.reason == Reason::none ? std::get<Wordy>(function.kernel).answer(values) : Outcome(why);
}

} // namespace

Failure prepare_words(Function const& function, std::vector<Value>& values) {
    bool const open_ended = is_open_ended(function);
    std::size_t const fixed = function.arguments.size() - (open_ended ? 1 : 0);
    values.resize(std::max(values.size(), fixed));
    for (unsigned i = 0; i < fixed; ++i)
        if (Failure const why = check_wordy(function.arguments[i], i, values[i]); why.reason != Reason::none)
            return why;
    return {};
}

Columns::Columns(Function const& function, std::span<Value const> values) {
    singles.reserve(most_arguments); // so that pointers into it stay good
    for (unsigned i = 0; i < function.arguments.size() && why.reason == Reason::none; ++i) {
        Argument const& argument = function.arguments[i];
        why = argument.kind == Kind::column ? add_column(argument, i, at(values, i))
                                            : add_number(argument, i, at(values, i));
    }
}

Failure Columns::add_column(Argument const& argument, unsigned place, Value const& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        columns.push_back(nullptr);
        return {argument.optional ? Reason::none : Reason::argument_missing, place};
    }
    Block const* const block = std::get_if<Block>(&value);
    columns.push_back(block != nullptr ? block : &singles.emplace_back(column_of(value)));
    return check_column(argument, place, *columns.back());
}

Failure Columns::add_number(Argument const& argument, unsigned place, Value const& value) {
    Scalar const scalar = read_scalar(argument, value);
    if (scalar.reason != Reason::none)
        return {scalar.reason, place};
    if (argument.kind == Kind::choice) {
        choices.push_back({int(scalar.number)});
        return {};
    }
    numbers.push_back(scalar.number);
    return {allows(argument, scalar.number) ? Reason::none : Reason::out_of_range, place};
}

Outcome call(Function const& function, std::span<Value const> arguments) {
    if (arguments.size() > function.arguments.size() && !is_open_ended(function))
        return Failure{Reason::too_many_arguments};
    if (std::holds_alternative<Numeric>(function.kernel))
        return call_with_numbers(function, arguments);
    if (std::holds_alternative<Columnar>(function.kernel))
        return call_with_columns(function, arguments);
    return call_with_words(function, arguments);
}

} // namespace hearthcell
