#pragma once
// Functions about functions, and about the record that they make: EACHROW, EXPLAIN, UNCERTAINTY, BUDGET, SOURCE,
// VERSION, MINUTES.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

std::span<Function const> the_record();

} // namespace hearthcell
