#pragma once
// The pages of a summary.ods, read from the file itself.

#include "tests/archive/made/workbook.hpp"

namespace hearthcell::tests::archive {

struct PageCell {
    Held value;
    std::string link; ///< as the file has it: relative to the file, which counts as a folder
};

using PageRows = std::vector<std::vector<PageCell>>;

/// The sheets of an .ods by their names.
std::map<std::string, PageRows> pages_of(std::filesystem::path const& file);

/// The rows below the heading row that begins with this, up to the first row that is empty or a single note.
PageRows table_below(PageRows const& page, std::string const& heading);

std::string text_in(PageCell const& cell); ///< empty for a number
double number_in(PageCell const& cell);    ///< throws where it is none

/// Whether a line of the page says this.
bool says_on_page(PageRows const& page, std::string const& words);

} // namespace hearthcell::tests::archive
