#pragma once
// Likely slips of the pen. What a value was probably meant to be when it is refused, and what looks odd about values
// that are accepted. All bands are common practice, no source; they warn and never change a result.

#include "functions/catalogue/catalogue.hpp"

#include <string>

namespace hearthcell {

/// What a refused number probably was: "12 is 1200 %; type 12% or 0.12". Empty where nothing suggests itself.
std::string probably_meant(Argument const& argument, double number);

/// What to look at when a result of this kind is outside its range. Empty where nothing suggests itself.
std::string_view result_hint(Measure measure);

/// What looks odd about arguments that were accepted, a sentence each, in order of precedence.
std::vector<std::string> oddities(Function const& function, std::span<Value const> values);

} // namespace hearthcell
