#pragma once

#include "office/document.hpp"

#include <string>

namespace hearthcell::archive {

/// Makes a copy for people without Hearthcell of an open, recalculated workbook: every formula that calls one of our
/// functions becomes its value, and stays to be read as a note of its cell. An error stays an error: Calc's own.
void replace_by_values(office::Document const& workbook, std::string const& edition);

} // namespace hearthcell::archive
