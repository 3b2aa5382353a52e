#pragma once
// Numbers as sentences show them, in English and the same in every locale.

#include <string>

namespace hearthcell {

/// Six significant digits, without a trailing zero: 95.8503, 0.14, 8184.79; large numbers to the last whole one.
std::string in_words(double number);

} // namespace hearthcell
