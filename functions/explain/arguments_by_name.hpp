#pragma once
// The arguments of a call that has gone well, by name, for what looks odd about them.

#include "functions/call/call.hpp"
#include "functions/call/scalar.hpp"
#include "functions/catalogue/names.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell {

/// What a call does not give, or its function does not take. It is a NaN, with which every comparison is false.
inline constexpr double not_given = std::numeric_limits<double>::quiet_NaN();

inline double first_given(double one, double other) {
    return std::isnan(one) ? other : one;
}

class Arguments {
public:
    Arguments(Function const& called, std::span<Value const> given) : function(called), values(given) {}

    double operator[](std::string_view name) const {
        std::size_t const place = place_of(name);
        return place < function.arguments.size() ? at(place) : not_given;
    }
    /// Behind the last argument where none has that name.
    std::size_t place_of(std::string_view name) const {
        std::size_t place = 0;
        while (place < function.arguments.size() && function.arguments[place].name != name)
            ++place;
        return place;
    }
    /// The one number that serves all rows of a required column.
    double for_all_rows(std::size_t place) const {
        if (function.arguments[place].kind != ArgumentKind::column || function.arguments[place].optional)
            return not_given;
        Value const& value = value_at(values, place);
        Block const* const block = std::get_if<Block>(&value);
        if (block != nullptr)
            return block->numbers.size() == 1 ? block->numbers[0] : not_given;
        double const* const number = std::get_if<double>(&value);
        return number != nullptr ? *number : not_given;
    }
    double at(std::size_t place) const {
        Argument const& argument = function.arguments[place];
        bool const plain = argument.kind == ArgumentKind::number || argument.kind == ArgumentKind::number_or_name;
        if (!plain || place >= values.size() || std::holds_alternative<std::monostate>(values[place]))
            return not_given;
        return read_scalar(argument, values[place]).number;
    }
    /// Whether a column, or the one value that stands for it, holds such a reading.
    bool any(std::string_view name, bool (*odd)(double)) const {
        Value const* const value = value_of(name);
        if (double const* single = std::get_if<double>(value))
            return odd(*single);
        Block const* const block = std::get_if<Block>(value);
        return block != nullptr && std::ranges::any_of(block->numbers, odd);
    }
    bool chooses(std::string_view name, std::string_view option) const {
        std::string const* const text = std::get_if<std::string>(value_of(name));
        return text != nullptr && same_name(*text, option);
    }
    /// Whether nothing was given for it, or an empty cell where 0 cannot be.
    bool leaves_out(std::string_view name) const {
        Value const* const value = value_of(name);
        double const* const number = value != nullptr ? std::get_if<double>(value) : nullptr;
        return value == nullptr || std::holds_alternative<std::monostate>(*value) ||
               (number != nullptr && *number == 0);
    }
    bool names_a_fuel_as_fired() const {
        for (std::size_t i = 0; i < function.arguments.size(); ++i)
            if (function.arguments[i].kind == ArgumentKind::number_or_name &&
                read_scalar(function.arguments[i], value_at(values, i)).as_fired)
                return true;
        return false;
    }
    std::string_view function_name() const { return function.name; }
    /// The single number that the call gives.
    double result() const {
        Outcome const outcome = call(function, values);
        double const* const number = std::get_if<double>(&outcome);
        return number != nullptr ? *number : not_given;
    }

private:
    Value const* value_of(std::string_view name) const {
        std::size_t const place = place_of(name);
        return place < std::min(values.size(), function.arguments.size()) ? &values[place] : nullptr;
    }

    Function const& function;
    std::span<Value const> values;
};

// Of the water, whatever the function calls it.
inline double start_of(Arguments const& n) {
    return first_given(n["start"], n["water start"]);
}
inline double end_of(Arguments const& n) {
    return first_given(n["end"], n["water end"]);
}

} // namespace hearthcell
