#pragma once
// A function's own checks and kernel, put into a sentence.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// "Fine: …" with result and method, "Odd: …", or what is wrong and was probably meant.
std::string explain(Function const& function, std::span<Value const> arguments);

} // namespace hearthcell
