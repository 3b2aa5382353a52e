#pragma once
// A number as a formula holds it.

#include <optional>
#include <string>
#include <string_view>

namespace hearthcell::formulas {

/// Of a text that is nothing else, with a decimal point whatever the office's language.
std::optional<double> number_in(std::string_view text);

/// With so many digits at most, and a decimal point.
std::string number_text(double number, int digits);

} // namespace hearthcell::formulas
