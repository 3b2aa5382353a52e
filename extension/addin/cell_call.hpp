#pragma once
// One call of a catalogue function by a cell: its arguments read, the function called, its result handed back.

#include "extension/addin/object.hpp"
#include "extension/addin/results.hpp"

#include "functions/catalogue/function.hpp"

namespace hearthcell::addin {

/// Throws nothing: what goes wrong is an error in the cell.
void call_from_cell(Function const& function, Call const& call, Results const& results) noexcept;

} // namespace hearthcell::addin
