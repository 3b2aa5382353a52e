#pragma once
// What is kept of a sheet for the inventory.

#include <nlohmann/json_fwd.hpp>

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A text that may be a label.
struct SheetText {
    int row = 0, column = 0;
    std::string text;
    bool is_value = false; // it stands like one: behind a label, and names no number
    bool in_run = false;   // in a row whose formulas are those of the row above or below
};

/// A hand-written formula that was recognised, and how often it stands on the sheet.
struct SheetFormula {
    std::string function, form, formula, cell;
    std::vector<std::string> methods;
    bool is_part = false;
    std::uint64_t cells = 0;
};

struct SheetFacts {
    std::string name;
    std::vector<SheetText> texts;
    std::vector<SheetFormula> recognised;
    std::uint64_t formulas = 0, ours = 0;        // cells
    std::vector<std::array<int, 4>> merged = {}; // row, column, and the last of each
};

/// As they lie with the records: a line of JSON each.
std::string written(std::vector<SheetFacts> const& sheets);
SheetFacts sheet_facts_in(std::string_view line); // throws std::exception

} // namespace hearthcell::archive
