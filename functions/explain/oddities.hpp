#pragma once
// What looks odd about the arguments of a call that went well. All limits are common practice, no source; they warn and
// never change a result.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// A sentence each, in order of precedence: what is odd about single arguments, then about several together.
Sentences oddities(Function const& function, std::span<Value const> values);

/// On a result that cannot be, where two readings that changed places explain it; else empty.
std::string swapped_readings(Function const& function, std::span<Value const> values);

} // namespace hearthcell
