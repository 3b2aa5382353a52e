#pragma once
// One call of a catalogue function: read the arguments, check them, run the kernel, check the result.

#include "functions/call/scalar.hpp"

namespace hearthcell {

/// A numeric function of as many scalars as it has arguments. Gives a finite number, or a NaN that says why not; the
/// first bad argument wins. Does not throw and allocates nothing.
double call_numeric(Function const& function, std::span<Scalar const> arguments);

/// Any function. Omitted arguments at the end may be missing.
Outcome call(Function const& function, std::span<Value const> arguments);

} // namespace hearthcell
