#pragma once
// Formulas whose calls of ours are given another method than they have.

#include "functions/catalogue/catalogue.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// As the argument `method` names them; a test holds that these are the catalogue's.
inline constexpr std::array<std::string_view, 4> methods{"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"};

/// The place of a function's argument `method`.
std::optional<std::size_t> place_of_method(Function const& function);

/// The formula with that method in every call of ours that takes one, also in calls through EACHROW; nothing where
/// there is no such call.
std::optional<std::string> with_method(std::string_view formula, std::string_view method);

} // namespace hearthcell::archive
