#pragma once
// What Calc itself does with a call: how it hands over arguments, which error it shows when several could be shown.
// Everything in between is computed by the catalogue's function, outside Calc.

#include "ground.hpp"
#include "storm_call.hpp"

namespace hearthcell::storm {

using Result = std::variant<double, std::string, CellError, Matrix>;

/// What the call must give, with the cells as they are.
Result result_of(Call const& call, Ground const& ground);

/// What the call's cell must show: of a block the first element.
CellValue shown(Result const& result);

} // namespace hearthcell::storm
