#pragma once
// One random call: its text in the cell, and what its arguments are to Calc.

#include "contents.hpp"

#include "functions/catalogue/catalogue.hpp"

#include <memory>

namespace hearthcell::storm {

/// How an argument is written; every kind must occur in a storm.
enum class Written {
    omitted,
    number,
    text,
    expression,
    logical,
    own_cell,
    cell_of_another_sheet,
    through_indirect,
    through_a_name,
    intersection,
    range,
    range_of_one_cell,
    block,
    whole_column,
    whole_row,
    row_of_own_cells,
    inline_array,
    nested_call,
    several_ranges,
    broken_reference,
    unknown_sheet,
    unknown_name,
    itself,
    count
};
std::string_view name_of(Written written);

struct Call;
struct Operand {
    Written how = Written::omitted;
    std::string text;
    /// An omitted one is Nothing; an error is what a broken reference is.
    std::variant<Nothing, double, std::string, CellError, Area, Matrix, std::shared_ptr<Call>> meaning;
    bool stays = false; ///< the place does not move with the rows: it is given as a text
};

struct Call {
    Function const* function = nullptr;
    std::vector<Operand> operands;
    int row = 0; ///< where the formula stands; in a nested call that of the outer one
    bool gone = false;

    [[nodiscard]] std::string text() const; // without "="
};

/// Rows were inserted or deleted: moves what a call points at, as Calc does.
void insert_rows(Call& call, int sheet, int row, int count);
void delete_rows(Call& call, int sheet, int row, int count);

} // namespace hearthcell::storm
