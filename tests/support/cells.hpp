#pragma once
// The catalogue's cells as the values that a call is given.

#include "functions/catalogue/catalogue.hpp"

#include <vector>

namespace hearthcell::tests {

Value value_of_cell(Cell const& cell);
std::vector<Value> values_of(std::span<Cell const> cells);

} // namespace hearthcell::tests
