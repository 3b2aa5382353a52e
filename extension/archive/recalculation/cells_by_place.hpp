#pragma once
// Cells of an open workbook by their places, read and written in runs down their columns: each question to the office
// takes its time however little it brings.

#include "extension/archive/files/value.hpp"
#include "extension/office/document.hpp"

#include <map>
#include <set>
#include <string>

namespace hearthcell::archive {

/// Empty texts count as nothing.
std::map<Place, Value> values_at(office::Document const& workbook, std::set<Place> const& places);

/// As the office's programming interface gives them; what was typed, where there is no formula.
std::map<Place, std::string> formulas_at(office::Document const& workbook, std::set<Place> const& places);
void write_formulas(office::Document const& workbook, std::map<Place, std::string> const& formulas);

} // namespace hearthcell::archive
