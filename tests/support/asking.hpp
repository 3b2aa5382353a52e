#pragma once
// Asks catalogue functions as a cell does.

#include "functions/call/call.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace hearthcell::tests {

inline constexpr std::monostate empty{};

/// A row or a column of a sheet.
Value column(std::vector<Value> const& cells);
Value row(std::vector<Value> const& cells);
/// A square of numbers, row by row.
Value square(std::vector<Value> const& cells);

Outcome ask(std::string const& function, std::vector<Value> const& arguments);
std::string explained(std::string const& function, std::vector<Value> arguments);

/// Each fails the test where the outcome is something else.
double number(Outcome const& outcome);
Block block(Outcome const& outcome);
Failure failure_in(Outcome const& outcome);

} // namespace hearthcell::tests
