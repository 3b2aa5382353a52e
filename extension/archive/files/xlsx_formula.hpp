#pragma once
// Formulas as .xlsx files hold them.

#include <string>
#include <string_view>

namespace hearthcell::archive {

/// SUM(Sheet2!A1,'My sheet'!B2) → =SUM(Sheet2.A1,'My sheet'.B2): the way of Calc, which the readers of formulas know.
std::string in_the_way_of_calc(std::string_view formula);

} // namespace hearthcell::archive
