#pragma once
// A workbook as ODF text of our own making, so that the stored results are what we say and not what an office computes.

#include "workbook.hpp"

namespace hearthcell::tests::archive {

std::string escaped(std::string const& text); // for XML

/// A number with the digits that give the same double again.
std::string digits(double value);

std::string error_text(CellError error); // "#NUM!"

std::string flat_odf(Workbook const& workbook);

/// .fods as text, .ods as a zip of the same text in its parts.
void write_odf(Workbook const& workbook, std::filesystem::path const& file);

} // namespace hearthcell::tests::archive
