#pragma once
// What every call of every function keeps, whatever it is given.

#include "functions/catalogue/catalogue.hpp"

#include <string>

namespace hearthcell::tests {

/// Makes the call, and EXPLAIN's of it, twice. Empty, or a sentence about the promise that was broken.
std::string broken_promise(Function const& function, std::span<Value const> values);

} // namespace hearthcell::tests
