#pragma once
// What a cell holds, as a report shows it.

#include "extension/checking/contents.hpp"
#include "functions/words/language.hpp"

namespace hearthcell::checking {

std::string shown(Content const& content, Language language);

} // namespace hearthcell::checking
