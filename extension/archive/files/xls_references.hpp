#pragma once
// What the tokens of .xls formulas name: cells, sheets, names.

#include "extension/archive/files/value.hpp"

#include <string>
#include <vector>

namespace hearthcell::archive::xls {

/// What formulas refer to by numbers.
struct Book {
    struct Other { // another workbook, a library, or this one
        bool is_this = false;
        std::vector<std::string> names;
    };
    struct Sheets {
        unsigned other = 0, first = 0, last = 0;
    };
    std::vector<std::string> sheets;
    std::vector<Other> others;
    std::vector<Sheets> referred; // by the numbers of sheets in formulas
    std::vector<std::string> names;
};

/// Something in a formula is not known here.
struct Unknown {};

/// "$B7". base: the cell that a shared formula is read for; null where places count from the sheet's corner.
std::string cell_text(unsigned row, unsigned column_and_flags, Place const* base);

/// "'My sheet'." of one sheet of this workbook. Throws Unknown.
std::string sheet_text(unsigned number, Book const& book);

/// A name by its number, from 1; of another workbook or a library where `sheets` is given. Throws Unknown.
std::string name_text(unsigned number, Book const& book);
std::string name_text(unsigned number, unsigned sheets, Book const& book);

} // namespace hearthcell::archive::xls
