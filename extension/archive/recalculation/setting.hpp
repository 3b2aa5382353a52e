#pragma once
// --set: cells that get another content before a workbook is recalculated.

#include "extension/archive/files/value.hpp"
#include "extension/archive/recalculation/assignment.hpp"
#include "extension/office/document.hpp"

#include <optional>

namespace hearthcell::archive {

/// Puts the value or formula into the defined name or cell ("Sheet.B4"). Throws Trouble(not_set) where the workbook has
/// no such cell, does not let it be changed, or the office cannot read the formula; the cell stays as it was then.
/// Gives the cell; nothing when the name is a constant.
std::optional<Place> assign(office::Document const& workbook, Assignment const& assignment);

} // namespace hearthcell::archive
