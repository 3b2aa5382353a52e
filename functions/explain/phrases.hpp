#pragma once
// Numbers and ranges in words, the same in every locale.

#include "functions/catalogue/catalogue.hpp"

#include <string>

namespace hearthcell {

/// Six significant digits, without a trailing zero: 92.3163, 0.12, 9592.1; large numbers to the last whole one.
std::string in_words(double number);

/// A number with the unit of its measure: 92.3163 °C.
std::string in_words(double number, Measure measure);

/// What an argument allows: a range with unit, or a list of texts.
std::string allowed_words(Argument const& argument);

/// Every "{key}" in a sentence replaced.
std::string filled(std::string_view sentence, std::string_view key, std::string_view value);

} // namespace hearthcell
