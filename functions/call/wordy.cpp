#include "functions/call/wordy.hpp"

#include "functions/call/columns.hpp"

#include <algorithm>

namespace hearthcell {
namespace {

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
    case ArgumentKind::text:
        return {check_text(value), place};
    case ArgumentKind::part: // no kernel looks at it
        return {};
    case ArgumentKind::anything:
        return std::holds_alternative<Block>(value) ? check_shape(std::get<Block>(value), place) : Failure{};
    case ArgumentKind::column:
    case ArgumentKind::mixed:
    case ArgumentKind::matrix:
        if (std::holds_alternative<std::monostate>(value))
            return {};
        if (!std::holds_alternative<Block>(value))
            value = column_of(value);
        if (argument.kind == ArgumentKind::mixed)
            return check_shape(std::get<Block>(value), place);
        return argument.kind == ArgumentKind::column ? check_column(argument, place, std::get<Block>(value))
                                                     : check_readings(argument, place, std::get<Block>(value));
    default:
        break;
    }
    Scalar const scalar = read_scalar(argument, value);
    if (scalar.reason != Reason::none)
        return {scalar.reason, place};
    if (argument.kind != ArgumentKind::choice && !allows(argument, scalar.number))
        return {Reason::out_of_range, place};
    value = is_absent(scalar.number) ? Value() : Value(scalar.number);
    return {};
}

} // namespace

Failure prepare_words(Function const& function, std::vector<Value>& values) {
    bool const open_ended = is_open_ended(function);
    std::size_t const fixed = function.arguments.size() - (open_ended ? 1 : 0);
    while (open_ended && !values.empty() && std::holds_alternative<std::monostate>(values.back()))
        values.pop_back(); // Calc fills up what is not given, and what is left out at the end is not given either
    values.resize(std::max(values.size(), fixed));
    for (unsigned i = 0; i < fixed; ++i)
        if (Failure const why = check_wordy(function.arguments[i], i, values[i]); why.reason != Reason::none)
            return why;
    return {};
}

} // namespace hearthcell
