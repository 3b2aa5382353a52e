#pragma once
// Formulas in which some words are replaced and all else stays as it is, letter by letter.

#include "extension/formulas/token.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::formulas {

/// `replace` gives what is to stand in a token's place; nothing where it stays.
std::string rewritten(std::string_view formula, std::function<std::optional<std::string>(Token const&)> const& replace);

/// A text in which some parts of it, in the order in which they stand, are others.
struct Replacement {
    std::string_view part; // of that very text
    std::string other;
};
std::string with_replacements(std::string_view text, std::vector<Replacement> const& replacements);

/// A token with other names of sheets; nothing where it names none of this workbook. `other_name` gives it without
/// quotes; nothing where it stays.
std::optional<std::string>
with_other_sheets(Token const& token,
                  std::function<std::optional<std::string>(std::string const& sheet)> const& other_name);

} // namespace hearthcell::formulas
