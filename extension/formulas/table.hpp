#pragma once
// Tables and database ranges, whose columns formulas can name: Runs[[#This Row];[Mass]].

#include "extension/formulas/place.hpp"
#include "extension/formulas/token.hpp"

#include <string>
#include <vector>

namespace hearthcell::formulas {

struct Table {
    std::string name;
    Range cells;                      // with its headings
    std::vector<std::string> columns; // their headings
};

/// What a token of the kind `table` says.
struct TableReference {
    std::string table;
    std::vector<std::string> columns; // the first and the last one; none: all
    bool this_row = false;
};
TableReference table_reference_of(Token const& token);

/// The cells of a table that a formula in a cell speaks of.
Range cells_of(Table const& table, TableReference const& reference, Place const& cell);

} // namespace hearthcell::formulas
