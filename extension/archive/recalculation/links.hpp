#pragma once
// What a workbook takes from other files.

#include "extension/archive/links/outside.hpp"
#include "extension/office/document.hpp"

#include <filesystem>
#include <string>

namespace hearthcell::archive {

/// Where a private copy lies, and the original: links that are relative must be shown as the original's.
struct Places {
    std::filesystem::path copy, original; // folders
    Outside const* outside = nullptr;     // what was hidden from the office; null: nothing
};

/// What a workbook takes from elsewhere, in words: what was hidden before it was opened, and what the office knows of
/// besides. "3 links: picture http://…; 2 linked files: site.ods, fuel.xlsx"; empty when there is nothing.
std::string external_links(office::Document const& workbook, Outside const& outside);

/// A formula whose links to files are those of the original. The office resolves a relative one from the private copy.
std::string with_original_links(std::string const& formula, Places const& places);

/// How deep below its worker's own folder a private copy must lie, so that links to folders above it stay apart.
inline constexpr int folders_above_copy = 9;

} // namespace hearthcell::archive
