#pragma once
// How what people type is compared with the names of the catalogue.

#include "functions/catalogue/argument.hpp"

namespace hearthcell {

std::string_view trimmed(std::string_view text);

/// Letter case and surrounding blanks do not matter in any name or option.
bool same_name(std::string_view a, std::string_view b);

Named const* find_name(NameTable const& table, std::string_view name);

} // namespace hearthcell
