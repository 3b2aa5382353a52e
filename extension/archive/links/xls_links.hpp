#pragma once
// The links of an .xls that an office would follow.

#include "extension/archive/links/outside.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// Takes out of an .xls the names of linked pictures and the queries of pages. They cannot be put back: LibreOffice
/// writes an .xls anew. Other workbooks that formulas name stay, since the office does not open them.
void hide_in_xls(std::filesystem::path const& workbook, Outside& outside);

} // namespace hearthcell::archive
