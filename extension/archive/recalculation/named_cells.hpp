#pragma once
// Cells called by their names: set before a workbook is recalculated (--set), collected after it (--collect).

#include "extension/archive/files/value.hpp"
#include "extension/archive/recalculation/assignment.hpp"
#include "extension/office/document.hpp"

#include <optional>
#include <string>

namespace hearthcell::archive {

/// Puts the value into the defined name or cell ("Sheet.B4"). Throws Trouble(not_set) where the workbook has no such
/// cell, or does not let it be changed. Gives the cell; nothing when the name is a constant.
std::optional<Place> assign(office::Document const& workbook, Assignment const& assignment);

/// What --collect gives of a workbook for one name: empty where it has no such cell.
struct Collected {
    std::string value; // of a cell that shows a day: the day
    std::string unit;  // where the cell's formula is a call of one of our functions
    bool found = false;
};
Collected collect(office::Document const& workbook, std::string const& name);

} // namespace hearthcell::archive
