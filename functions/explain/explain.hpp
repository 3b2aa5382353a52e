#pragma once
// STOVE.EXPLAIN: a function's own checks and kernel, put into a sentence.

#include "functions/catalogue/catalogue.hpp"

#include <string>

namespace hearthcell {

/// "Fine: …" with result and method, "Odd: …", or what is wrong and was probably meant.
std::string explain(Function const& function, std::span<Value const> arguments);

/// The kernel of STOVE.EXPLAIN: a function's name, then its arguments.
Outcome explain_call(std::span<Value const> given);

} // namespace hearthcell
