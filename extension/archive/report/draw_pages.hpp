#pragma once
// From pages to a workbook that shows them, in an office.

#include "extension/archive/report/page.hpp"
#include "extension/office/office.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// Draws pages as a workbook, each as a sheet that is printed on one sheet of paper, and saves it. Links to files are
/// kept relative to it, so that it and they can be moved together.
void draw_pages(office::Office& office, std::vector<Page> const& pages, std::filesystem::path const& file);

} // namespace hearthcell::archive
