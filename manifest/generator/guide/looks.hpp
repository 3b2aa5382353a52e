#pragma once
// How cells of the guide look: one table for the styles that are written and for the height of rows.

#include <span>
#include <string>
#include <string_view>

namespace hearthcell::generator::guide {

struct Look {
    std::string_view name;
    double points; ///< size of the letters
    bool bold = false;
    bool monospaced = false;
    std::string_view cell{};      ///< attributes of style:table-cell-properties
    std::string_view paragraph{}; ///< attributes of style:paragraph-properties
    std::string_view letters{};   ///< attributes of style:text-properties, besides size and weight
};

std::span<Look const> looks();
Look const& look(std::string_view name);

/// In how many lines a text stands in a cell of this width; never fewer than it takes.
int lines_of(std::string_view text, double width_in_cm, Look const& look);

/// Height in cm of a row with so many lines of this look.
double height_of(int lines, Look const& look);

} // namespace hearthcell::generator::guide
