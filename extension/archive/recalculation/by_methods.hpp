#pragma once
// What cells give when all of a workbook is computed by each of the published methods.

#include "extension/archive/files/value.hpp"
#include "extension/archive/recalculation/with_method.hpp"
#include "extension/office/document.hpp"

#include <map>
#include <set>

namespace hearthcell::archive {

/// The numbers by each method, where it gives one.
using ByMethods = std::array<std::optional<double>, methods.size()>;

/// The results of some cells. A cell often knows its method only through others that it reads, so that every call in
/// the workbook is given the same one. Empty where none of them takes a method, or where that cannot be done for all of
/// them (an array formula, a name that holds a call, a sheet locked by a password). The workbook is put back
/// afterwards.
std::map<Place, ByMethods> by_methods(office::Document const& workbook, std::set<Place> const& cells);

} // namespace hearthcell::archive
