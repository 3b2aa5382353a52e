#pragma once
// What can be said of one new result beside one old one.

#include "extension/archive/recalculation/by_methods.hpp"

#include <optional>
#include <string>

namespace hearthcell::archive {

/// A row of old-and-new.csv.
struct ComparedRow {
    std::size_t pair = 0;
    std::string sheet, now_cell, old_cell; // the old one with its sheet, where that is another one
    int row = 0;                           // of the new cell, from 1 as Calc shows it
    Value before, after;
    bool in_per_cent = false; // the old one, beside a fraction: a hundredth of it is compared
    std::optional<double> difference = {}, relative = {};
    ByMethods by_methods = {};
    std::string remark = {};
};

/// Fills in difference, factor and what is odd about the two. False where there is nothing to be compared: both are
/// empty, or both are words. formula: of the new cell.
bool set_beside(ComparedRow& row, std::string const& formula);

} // namespace hearthcell::archive
