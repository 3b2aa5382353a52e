#pragma once
// What is called in the text of a formula.

#include "functions/catalogue/catalogue.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::archive {

/// As the user sees it: STOVE.BOILINGPOINT for the stored name that Calc's programming interface gives.
std::string as_shown(std::string_view formula);

/// Our functions that a formula calls, each once, in the order of their names.
std::vector<Function const*> functions_in(std::string_view formula);

/// Whether it calls a function whose result changes by itself: the clock, chance, or what the office says of itself.
bool is_volatile(std::string_view formula);

/// The one of our functions whose call is the whole formula; null when there is more or something else in it.
Function const* only_call(std::string_view formula);

} // namespace hearthcell::archive
