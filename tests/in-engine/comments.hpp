#pragma once
// Comments on cells, read and written.

#include "extension/office/document.hpp"

#include <map>
#include <string>

namespace hearthcell::tests {

/// The comments on the cells of a sheet: "A1" and what it says.
std::map<std::string, std::string> comments(office::Document const& document, int sheet);

void comment_on(office::Document const& document, int sheet, std::string const& cell, std::string const& words);

} // namespace hearthcell::tests
