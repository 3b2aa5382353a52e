#pragma once
// Tens of thousands of calls, the same ones everywhere: each example of the catalogue, over and over, with its numbers
// moved a little. Only operations that every processor rounds alike make the numbers.

#include "functions/catalogue/catalogue.hpp"

#include <functional>

namespace hearthcell::tests {

void for_many_calls(unsigned of_each_example,
                    std::function<void(Function const&, std::span<Value const>)> const& act);

} // namespace hearthcell::tests
