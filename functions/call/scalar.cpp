#include "functions/call/scalar.hpp"

#include "functions/call/part.hpp"
#include "functions/catalogue/names.hpp"
#include "functions/kernels/times/typed_time.hpp"

#include <charconv>

namespace hearthcell {
namespace {

/// A text is a text, but for a plain whole number: no language writes that in another way.
Scalar number_in(std::string const& text) {
    long long whole = 0;
    char const* const end = text.data() + text.size();
    auto const [stopped, error] = std::from_chars(text.data(), end, whole);
    if (error != std::errc() || stopped != end)
        return {absent, Reason::text_for_number};
    return {double(whole)};
}

/// Minutes since midnight.
Scalar time_of_day(std::string const& text) {
    double const minutes = has_one_colon(text) ? minutes_of(text, Typed::hours_and_minutes) : absent;
    return failed(minutes) || is_absent(minutes) ? number_in(text) : Scalar{minutes};
}

Scalar chosen(Argument const& argument, std::string const& text) {
    for (std::size_t i = 0; i < argument.choices.size(); ++i)
        if (same_name(argument.choices[i], text))
            return {double(i)};
    return {absent, Reason::unknown_name};
}

Scalar of_text(Argument const& argument, std::string const& text) {
    switch (argument.kind) {
    case ArgumentKind::choice:
        return chosen(argument, text);
    case ArgumentKind::name:
    case ArgumentKind::number_or_name:
        return named_value(*argument.table, text);
    default:
        return argument.clock ? time_of_day(text) : number_in(text);
    }
}

Scalar omitted_argument(Argument const& argument) {
    if (!argument.optional)
        return {absent, Reason::argument_missing};
    return {argument.kind == ArgumentKind::choice ? 0 : argument.fallback};
}

} // namespace

bool allows(Argument const& argument, double number) {
    bool const in_range = number >= argument.low && number <= argument.high; // false for NaN
    return in_range || (argument.optional && is_absent(argument.fallback) && is_absent(number));
}

Scalar named_value(NameTable const& table, std::string_view name) {
    NamedRows const found = find_name(table, name);
    if (found.count != 1)
        return {absent, found.count == 0 ? Reason::unknown_name : Reason::ambiguous_name};
    return {found.first->value, Reason::none, found.first->as_fired};
}

Scalar with_empty_cell_left_out(Argument const& argument, Scalar given) {
    bool const cannot_be = given.number == 0 && argument.low > 0;
    return argument.optional && cannot_be ? omitted_argument(argument) : given;
}

Scalar read_scalar(Argument const& argument, Value const& value) {
    if (double const* number = std::get_if<double>(&value)) {
        bool const wants_text = argument.kind == ArgumentKind::choice || argument.kind == ArgumentKind::name;
        if (!wants_text)
            return with_empty_cell_left_out(argument, {*number});
        bool const is_left_out = argument.optional && *number == 0; // an empty cell in the place of a method
        return is_left_out ? omitted_argument(argument) : Scalar{absent, Reason::number_for_text};
    }
    if (std::string const* text = std::get_if<std::string>(&value))
        return of_text(argument, *text);
    if (std::holds_alternative<Block>(value))
        return {absent, Reason::block_for_value};
    return omitted_argument(argument);
}

namespace {

/// The place of the part that is named, or of the first where none is; all of them are none.
Scalar read_part(Function const& function, Value const& value) {
    if (leaves_part_out(value))
        return {0};
    std::string const* const name = std::get_if<std::string>(&value);
    if (name == nullptr)
        return {absent, Reason::number_for_text};
    std::optional<std::size_t> const place = part_named(function, *name);
    return place ? Scalar{double(*place)} : Scalar{absent, Reason::unknown_name};
}

} // namespace

Scalar read_argument(Function const& function, std::size_t place, Value const& value) {
    Argument const& argument = function.arguments[place];
    return argument.kind == ArgumentKind::part ? read_part(function, value) : read_scalar(argument, value);
}

Resolved resolve(Function const& function, std::span<Scalar const> arguments) {
    Resolved result;
    std::size_t numbers = 0, choices = 0;
    unsigned as_fired = no_argument;
    bool is_moist = false;
    for (unsigned i = 0; i < arguments.size(); ++i) {
        Argument const& argument = function.arguments[i];
        Scalar const given = is_chosen(argument.kind) ? arguments[i] : with_empty_cell_left_out(argument, arguments[i]);
        if (given.reason != Reason::none) {
            result.failure = {given.reason, i};
            return result;
        }
        if (is_chosen(argument.kind)) {
            result.choices[choices++].index = int(given.number);
            continue;
        }
        if (!allows(argument, given.number)) {
            result.failure = {Reason::out_of_range, i};
            return result;
        }
        result.numbers[numbers++] = given.number;
        as_fired = given.as_fired ? i : as_fired;
        is_moist = is_moist || (argument.measure == Measure::moisture_wet && given.number > 0);
    }
    if (as_fired != no_argument && is_moist)
        result.failure = {Reason::moisture_beside_value_as_fired, as_fired};
    return result;
}

Resolved resolve(Function const& function, std::span<Value const> values) {
    std::array<Scalar, most_arguments> scalars;
    for (std::size_t i = 0; i < function.arguments.size(); ++i)
        scalars[i] = read_argument(function, i, value_at(values, i));
    return resolve(function, std::span<Scalar const>(scalars).first(function.arguments.size()));
}

} // namespace hearthcell
