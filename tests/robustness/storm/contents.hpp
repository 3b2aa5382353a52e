#pragma once
// What a cell or an argument is to Calc.

#include "extension/office/sheet.hpp"

namespace hearthcell::storm {

using office::CellError;
using office::CellValue;

struct Nothing { // an empty cell
    bool operator==(Nothing const&) const = default;
};
using Content = std::variant<Nothing, double, std::string, CellError>;

inline Content content_of(CellValue const& value) {
    return std::visit([](auto const& held) { return Content(held); }, value);
}

/// Where it is Calc's own affair which error it shows: for several ranges at once, for a deleted cell.
inline constexpr CellError some_error{0};

/// An inline array, or what a function gives that gives a block.
struct Matrix {
    std::size_t rows = 0, columns = 0;
    std::vector<Content> cells; // row by row
};

constexpr int rows_of_a_sheet = 1048576, columns_of_a_sheet = 16384;

/// Cells that a formula points at; rows and columns counted from 0, the last one included.
struct Area {
    int sheet = 0;
    int top = 0, left = 0, bottom = 0, right = 0;
    bool one_cell = false; ///< written as A1, not as A1:A1, which Calc treats otherwise

    [[nodiscard]] bool whole_columns() const { return top == 0 && bottom == rows_of_a_sheet - 1; }
};

std::string column_letters(int column);
std::string address(int row, int column);                      // "B3"
std::string address(Area const& area);                         // "B3:C7", "B3"; without the sheet
std::string in_formula(double number, int significant_digits); // "0.125"

} // namespace hearthcell::storm
