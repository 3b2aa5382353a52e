#pragma once
// What the office's Template Manager shows of a workbook.

#include <pugixml.hpp>
#include <string>

namespace hearthcell::workbook {

/// A small picture (PNG) of the upper part of a flat document's first sheet, as wide as the sheet: grounds, rules, and
/// words as grey as their letters are. Conditional formats and charts are left out.
std::string thumbnail(pugi::xml_node document);

} // namespace hearthcell::workbook
