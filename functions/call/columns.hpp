#pragma once
// Arguments that are columns, and what stands beside them.

#include "functions/call/scalar.hpp"

namespace hearthcell {

/// Checks the readings of one argument, and that they stand in one row or one column.
Failure check_column(Argument const& argument, unsigned place, Block const& column);

/// Checks the readings of one argument, whatever the shape of the block.
Failure check_readings(Argument const& argument, unsigned place, Block const& block);

/// Texts and blanks are welcome; only the shape can be wrong.
Failure check_shape(Block const& block, unsigned place);

/// A single value where a column is wanted is a column of one.
Block column_of(Value const& value);

/// The columns, numbers and choices that a kernel of columns is given; or the first failure among the arguments.
/// The values must outlive it.
class Columns {
public:
    Columns(Function const& function, std::span<Value const> values);
    Columns(Columns const&) = delete;
    Columns& operator=(Columns const&) = delete;
    Failure const& failure() const { return why_; }
    Given given() const { return {columns_, numbers_, choices_}; }

private:
    Failure add_column(Argument const& argument, unsigned place, Value const& value);
    Failure add_number(Argument const& argument, unsigned place, Value const& value);
    Failure add_names(Argument const& argument, unsigned place, Block const& column);

    std::vector<Block> own_; ///< columns that were made here: of one value, or with names read
    std::vector<Block const*> columns_;
    Block const* moistures_ = nullptr; ///< among them
    std::vector<double> numbers_;
    std::vector<Choice> choices_;
    Failure why_;
};

} // namespace hearthcell
