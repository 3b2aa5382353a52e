#pragma once
// Numbers as sentences show them, the same in every locale.

#include <string>

namespace hearthcell {

/// Six significant digits, without a trailing zero: 95.8503, 0.14, 8184.79; large numbers to the last whole one.
std::string in_words(double number);

/// To a tenth, as a temperature is shown; to a hundredth, as a time is.
std::string tenths(double number);
std::string hundredths(double number);

} // namespace hearthcell
