#pragma once
// Files that bear a spreadsheet's name and cannot be recalculated.

#include "extension/office/office.hpp"

#include <filesystem>
#include <set>
#include <string>
#include <vector>

namespace hearthcell::tests::archive {

struct BadFile {
    std::filesystem::path path;    ///< inside the archive
    std::set<std::string> reasons; ///< the words that say the truth about it
};

std::vector<BadFile> const& bad_files();

void write_bad_files(office::Office& office, std::filesystem::path const& archive);

} // namespace hearthcell::tests::archive
