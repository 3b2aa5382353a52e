#pragma once
// The cells that are named in the text of a formula.

#include "extension/archive/files/value.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace hearthcell::archive {

/// A block of cells; both corners belong to it.
struct Range {
    Place first, last;
};

/// What the names in a formula mean.
struct Scope {
    std::vector<std::string> sheets;
    std::map<std::string, Range> names; // in upper case
};

std::string upper(std::string text); // ASCII letters only

/// "B7", "A1:C20", "A:A": on a sheet. False when it is none.
bool read_range(std::string_view text, int sheet, Range& range);

/// The cells of the same workbook that a formula names, as far as they stand in it: not what INDIRECT makes of a text.
std::vector<Range> references(std::string_view formula, int own_sheet, Scope const& scope);

} // namespace hearthcell::archive
