#pragma once
// Calls of the catalogue's functions in formulas.

#include "extension/formulas/token.hpp"
#include "functions/catalogue/catalogue.hpp"

#include <string>

namespace hearthcell::formulas {

/// The catalogue's function that a token calls, by the name in files or in the cell; null where it is something else.
Function const* function_called(Token const& token);

/// As the user sees it: STOVE.BOILINGPOINT for the stored name that Calc's programming interface gives.
std::string as_shown(std::string_view formula);

/// The one of our functions whose call is the whole formula; null when there is more or something else in it.
Function const* only_call(std::string_view formula);

} // namespace hearthcell::formulas
