#pragma once
// How the function guide looks.

#include "manifest/generator/guide/sheet.hpp"

#include "functions/words/language.hpp"

namespace hearthcell::generator::guide {

/// Everything of the document that stands before its sheets: fonts, styles, a page for each sheet, what stays in sight.
void write_styles(std::ostream& out, std::vector<Sheet> const& sheets, Language language);

} // namespace hearthcell::generator::guide
