#pragma once
// Formulas seen from other cells.

#include "extension/formulas/place.hpp"
#include "extension/formulas/reference.hpp"

#include <string>
#include <string_view>

namespace hearthcell::formulas {

/// A formula that stands so many rows further down and columns further to the right: what is relative in it moves
/// along. A reference that would leave the sheet is #REF!.
std::string moved(std::string_view formula, int rows, int columns);

/// One reference that is to name cells so much further down and to the right, whatever is fixed in it by a $.
std::string moved_reference(Token const& reference, int rows, int columns);

/// One reference that is to name another block of cells; its $ stay.
std::string with_block(Token const& reference, Block const& block);

/// The same text for all formulas that are the same relative to their cells: for comparing, not for reading.
std::string relative_to(Place const& cell, std::string_view formula);

} // namespace hearthcell::formulas
