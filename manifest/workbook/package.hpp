#pragma once
// From flat OpenDocument to the zipped kind.

#include <filesystem>
#include <pugixml.hpp>

namespace hearthcell::workbook {

/// Writes a flat ODF document as a package (OpenDocument 1.3, part 2), embedded charts included: .ots as a template
/// with a small picture of its first sheet, .ods as a spreadsheet. The same document gives the same bytes.
void write_package(pugi::xml_document const& flat, std::filesystem::path const& file);

} // namespace hearthcell::workbook
