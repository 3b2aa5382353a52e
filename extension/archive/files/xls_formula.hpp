#pragma once
// Formulas of .xls files, which hold them as tokens in the order in which they are computed.

#include "extension/archive/files/xls_references.hpp"

#include <map>
#include <string>
#include <string_view>

namespace hearthcell::archive::xls {

/// Formulas that several cells share, by the cell that holds them.
using Shared = std::map<std::pair<unsigned, unsigned>, std::string_view>;

/// In the way of Calc, "=SUM(A1:B2;'My sheet'.C3)"; empty where something in it is not known here.
std::string formula_of(std::string_view tokens, Place const& cell, Book const& book, Shared const& shared);

/// A function by its number; nothing in it where it is not known.
struct KnownFunction {
    std::string_view name;
    int arguments = -1; // -1: the formula says how many
};
KnownFunction function_numbered(unsigned number);

} // namespace hearthcell::archive::xls
