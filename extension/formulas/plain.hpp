#pragma once
// Formulas without what only one format of files has.

#include "extension/formulas/place.hpp"

#include <string>
#include <string_view>

namespace hearthcell::formulas {

/// As Calc's programming interface has it: =B2*4.186 for of:=[.B2]*4.186.
std::string plain(std::string_view formula);

/// The same text for formulas that say the same: without blanks, letter case, the $ of references, and what formats
/// write in other ways. For comparing, not for reading.
std::string comparable(std::string_view formula);

/// The same text for plain formulas that say the same as seen from their cells.
std::string seen_from(Place const& cell, std::string_view formula);

} // namespace hearthcell::formulas
