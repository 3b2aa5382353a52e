#pragma once
// What a workbook takes from other files.

#include "extension/office/document.hpp"

#include <filesystem>
#include <string>

namespace hearthcell::archive {

/// Where a private copy lies, and the original: links that are relative must be shown as the original's.
struct Places {
    std::filesystem::path copy, original; // folders
};

/// What a workbook takes from other files, in words: "2 linked files: site.ods, fuel.xlsx"; empty when it does not.
std::string external_links(office::Document const& workbook);

/// A formula whose links to files are those of the original. The office resolves a relative one from the private copy.
std::string with_original_links(std::string const& formula, Places const& places);

/// How deep below its worker's own folder a private copy must lie, so that links to folders above it stay apart.
inline constexpr int folders_above_copy = 9;

} // namespace hearthcell::archive
