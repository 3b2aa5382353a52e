#pragma once
// A call as a line of text: BOILINGPOINT(1240; ), SERIES([1 2 _ 4]; 0.95), MINUTES("31:40"), UNCERTAINTY("DRYMASS"; …).
//
// Arguments are separated by semicolons; an empty one is left out. A number is decimal, inf, -inf, or 0x and the sixteen
// hexadecimal digits of its bits. A block stands in brackets, its cells apart by blanks: a column, or with a / between
// rows a rectangle; _ is a blank cell.

#include "functions/catalogue/catalogue.hpp"

#include <string>
#include <vector>

namespace hearthcell::tests {

struct WrittenCall {
    Function const* function = nullptr; ///< null: the line is no call
    std::vector<Value> values;
    std::string_view rest; ///< of the line, behind the call
};

WrittenCall read_call(std::string_view line);

std::string write_call(Function const& function, std::span<Value const> values);

/// A number that reads back to the same bits.
std::string write_number(double number);

/// A result: a number, #NUM! and the like, a text, or a block.
std::string write_outcome(Outcome const& outcome);

} // namespace hearthcell::tests
