#pragma once
// Conditional formats and validity rules on a document's first sheet. Formulas are English, without =.

#include "extension/office/document.hpp"

#include <string>
#include <utility>
#include <vector>

namespace hearthcell::tests {

using office::Document;

enum class Comparison { greater, formula_holds };

/// Shows the cells in the style of errors where their content is compared with a formula like this.
void add_conditional_format(Document const& document, std::string const& range, Comparison comparison,
                            std::string const& formula);
std::vector<std::string> conditions(Document const& document); // as the user sees them

void add_validity(Document const& document, std::string const& range, std::string const& least,
                  std::string const& most);
std::pair<std::string, std::string> validity(Document const& document, std::string const& cell);

} // namespace hearthcell::tests
