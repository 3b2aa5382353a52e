#pragma once
// One argument that is a number, a name or a choice, read as the catalogue says.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// One argument as a number: what it is, or why it is none. A choice is its place in the list.
struct Scalar {
    double number = absent;
    Reason reason = Reason::none;
    bool as_fired = false; ///< of a fuel's name: its value leaves no moisture to be taken off
};

/// What a name stands for in a table, or why it stands for nothing there.
Scalar named_value(NameTable const& table, std::string_view name);

/// Reads one argument that is not a column: defaults filled in, names and choices resolved. Ranges are not checked.
Scalar read_scalar(Argument const& argument, Value const& value);

/// The same of an argument of a function: the word for a part of its result is the part's place.
Scalar read_argument(Function const& function, std::size_t place, Value const& value);

/// A lone empty cell arrives as 0: where 0 cannot be, it leaves an optional argument out.
Scalar with_empty_cell_left_out(Argument const& argument, Scalar given);

/// Whether a number is in the argument's range, or was left out where that has a meaning of its own.
bool allows(Argument const& argument, double number);

/// The numbers and choices that a numeric kernel would be given; or the first failure among the arguments.
struct Resolved {
    std::array<double, most_arguments> numbers{};
    std::array<Choice, most_choices> choices{};
    Failure failure;
};
Resolved resolve(Function const& function, std::span<Scalar const> arguments);

/// The same of a function's values, those at the end that are not given included.
Resolved resolve(Function const& function, std::span<Value const> values);

} // namespace hearthcell
