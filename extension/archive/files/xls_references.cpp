#include "extension/archive/files/xls_references.hpp"

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"

namespace hearthcell::archive::xls {
namespace {

constexpr unsigned rows_of_a_sheet = 1U << 16U, columns_of_a_sheet = 1U << 8U;
constexpr unsigned row_is_relative = 0x8000, column_is_relative = 0x4000, column_bits = 0x3FFF;

std::string named(std::vector<std::string> const& names, unsigned number) {
    if (number == 0 || number > names.size() || names[number - 1].empty())
        throw Unknown();
    return names[number - 1];
}

} // namespace

std::string cell_text(unsigned row, unsigned column_and_flags, Place const* base) {
    bool const row_moves = (column_and_flags & row_is_relative) != 0;
    bool const column_moves = (column_and_flags & column_is_relative) != 0;
    unsigned column = column_and_flags & column_bits;
    if (base != nullptr && row_moves)
        row = (row + unsigned(base->row)) % rows_of_a_sheet;
    if (base != nullptr && column_moves)
        column = (column + unsigned(base->column)) % columns_of_a_sheet;
    std::string letters = formulas::cell_name(int(column), 0);
    letters.pop_back(); // the row's 1
    return (column_moves ? "" : "$") + letters + (row_moves ? "" : "$") + std::to_string(row + 1);
}

std::string sheet_text(unsigned number, Book const& book) {
    if (number >= book.referred.size())
        throw Unknown();
    auto const [other, first, last] = book.referred[number];
    if (other >= book.others.size() || !book.others[other].is_this || first != last || first >= book.sheets.size())
        throw Unknown();
    return formulas::quoted(book.sheets[first], '\'') + ".";
}

std::string name_text(unsigned number, Book const& book) {
    return named(book.names, number);
}

std::string name_text(unsigned number, unsigned sheets, Book const& book) {
    if (sheets >= book.referred.size() || book.referred[sheets].other >= book.others.size())
        throw Unknown();
    return named(book.others[book.referred[sheets].other].names, number);
}

} // namespace hearthcell::archive::xls
