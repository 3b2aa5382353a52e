#pragma once
// Where cells stand in a workbook.

#include <compare>

namespace hearthcell::formulas {

/// A cell: all three count from 0.
struct Place {
    int sheet = 0;
    int row = 0;
    int column = 0;
    auto operator<=>(Place const&) const = default;
};

/// A block of cells of one sheet; both corners belong to it.
struct Range {
    Place first, last;
    bool operator==(Range const&) const = default;
};

} // namespace hearthcell::formulas
