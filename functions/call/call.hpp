#pragma once
// One call of a catalogue function: read the arguments, check them, run the kernel, check the result.

#include "functions/catalogue/catalogue.hpp"

namespace hearthcell {

/// One argument as a number: what it is, or why it is none. A choice is its place in the list.
struct Scalar {
    double number = absent;
    Reason reason = Reason::none;
};

/// Reads one argument that is not a column: defaults filled in, names and choices resolved. Ranges are not checked.
Scalar read_scalar(Argument const& argument, Value const& value);

/// A numeric function of as many scalars as it has arguments. Gives a finite number, or a NaN that says why not; the
/// first bad argument wins. Does not throw and allocates nothing.
double call_numeric(Function const& function, std::span<Scalar const> arguments);

/// Any function. Omitted arguments at the end may be missing.
Outcome call(Function const& function, std::span<Value const> arguments);

/// The numbers and choices that a numeric kernel would be given; or the first failure among the arguments.
struct Resolved {
    std::array<double, most_arguments> numbers{};
    std::array<Choice, most_choices> choices{};
    Failure failure;
};
Resolved resolve(Function const& function, std::span<Scalar const> arguments);

/// The columns, numbers and choices that a kernel of columns is given; or the first failure among the arguments.
/// The values must outlive it.
class Columns {
public:
    Columns(Function const& function, std::span<Value const> values);
    Columns(Columns const&) = delete;
    Columns& operator=(Columns const&) = delete;
    Failure const& failure() const { return why; }
    Given given() const { return {columns, numbers, choices}; }

private:
    Failure add_column(Argument const& argument, unsigned place, Value const& value);
    Failure add_number(Argument const& argument, unsigned place, Value const& value);

    std::vector<Block> singles; ///< values that stand as a column of one
    std::vector<Block const*> columns;
    std::vector<double> numbers;
    std::vector<Choice> choices;
    Failure why;
};

/// Checks the arguments of a wordy function and puts them into the form that its kernel is promised.
Failure prepare_words(Function const& function, std::vector<Value>& arguments);

/// The readings of an argument: a number is a column of one. Null where there are none.
Failure check_column(Argument const& argument, unsigned place, Block const& column);

} // namespace hearthcell
