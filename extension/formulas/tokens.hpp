#pragma once
// Takes a formula apart into its words.

#include "extension/formulas/token.hpp"

#include <vector>

namespace hearthcell::formulas {

/// All of a formula, from its first byte to its last: put one after another the texts give the formula again. Whatever
/// it is, the time that this takes grows with its length and no faster.
std::vector<Token> tokens_of(std::string_view formula);
std::vector<Token> tokens_without_blanks(std::string_view formula);

} // namespace hearthcell::formulas
