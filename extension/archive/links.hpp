#pragma once

#include "office/document.hpp"

#include <string>

namespace hearthcell::archive {

/// What a workbook takes from other files, in words: "2 linked files: site.ods, fuel.xlsx"; empty when it does not.
std::string external_links(office::Document const& workbook);

} // namespace hearthcell::archive
