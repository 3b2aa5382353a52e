#pragma once
// Names and places of the workbooks in the test archive.

#include <filesystem>

namespace hearthcell::tests::archive {

/// Where a workbook of this number lies: nested folders, and names such as people, scripts and accidents make them.
std::filesystem::path path_of(int number);

} // namespace hearthcell::tests::archive
