#include "extension/checking/written_cells.hpp"

#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/constants.hpp"

#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::wide;
using rtl::OUString;

namespace hearthcell::checking {
namespace {

constexpr std::size_t cells_at_once = 20'000;
constexpr std::int64_t most_empty = 20; // cells of a block for each one that is filled
constexpr int most_empty_rows = 100;

/// As a formula, where a cell cannot be given a value: errors, and texts of no length, which are not empty.
OUString formula_for(std::variant<double, std::string, CellError> const& value) {
    if (auto const* const error = std::get_if<CellError>(&value))
        return "=" + sharing::error_constant(error->code).value_or("#VALUE!");
    return "=\"\"";
}

} // namespace

WrittenCells::WrittenCells(Contents const& contents, Sheets const& sheets)
    : contents_(contents), sheets_(sheets), next_(contents.cells.begin()) {}

bool WrittenCells::go_on() {
    if (next_ != contents_.cells.end())
        write_rows();
    return next_ != contents_.cells.end();
}

double WrittenCells::done() const {
    return contents_.cells.empty() ? 1 : double(written_) / double(contents_.cells.size());
}

void WrittenCells::put_back(Place const& place) const {
    if (auto const cell = contents_.cells.find(place); cell != contents_.cells.end())
        write_block({cell}, place.column, place.column);
}

/// The next whole rows of one sheet.
void WrittenCells::write_rows() {
    std::vector<Cell> cells;
    int const sheet = next_->first.sheet;
    int left = formulas::last_column, right = 0;
    for (; next_ != contents_.cells.end() && next_->first.sheet == sheet; ++next_) {
        bool const is_full = cells.size() >= cells_at_once && next_->first.row != cells.back()->first.row;
        // What stands far from all else has a block of its own.
        bool const is_far = !cells.empty() && next_->first.row > cells.back()->first.row + most_empty_rows;
        if (is_full || is_far)
            break;
        left = std::min(left, next_->first.column);
        right = std::max(right, next_->first.column);
        cells.push_back(next_);
    }
    written_ += cells.size();
    std::int64_t const rows = cells.back()->first.row - cells.front()->first.row + 1;
    if (rows * (right - left + 1) <= most_empty * std::int64_t(cells.size()))
        write_block(cells, left, right);
    else
        for (Cell const& cell : cells)
            write_block({cell}, cell->first.column, cell->first.column);
}

void WrittenCells::write_block(std::vector<Cell> const& cells, int left, int right) const {
    auto const& [sheet, top, column] = cells.front()->first;
    int const bottom = cells.back()->first.row;
    std::vector<std::vector<Any>> values(std::size_t(bottom - top + 1),
                                         std::vector<Any>(std::size_t(right - left + 1), Any(OUString())));
    Formulas formulas;
    for (Cell const& cell : cells) {
        auto const& [place, content] = *cell;
        Any& value = values[std::size_t(place.row - top)][std::size_t(place.column - left)];
        auto const* const text = std::get_if<std::string>(&content.value);
        if (auto const* const number = std::get_if<double>(&content.value))
            value <<= *number;
        else if (text != nullptr && !text->empty())
            value <<= wide(*text);
        else
            formulas[{place.column, place.row}] = formula_for(content.value);
    }
    std::vector<Sequence<Any>> rows;
    for (std::vector<Any> const& row : values)
        rows.emplace_back(row.data(), sal_Int32(row.size()));
    Reference<css::sheet::XCellRangeData>(
        sheets_.at(std::size_t(sheet))->getCellRangeByPosition(left, top, right, bottom), UNO_QUERY_THROW)
        ->setDataArray({rows.data(), sal_Int32(rows.size())});
    write_formulas(sheet, formulas);
}

/// Those below each other at once.
void WrittenCells::write_formulas(int sheet, Formulas const& formulas) const {
    for (auto next = formulas.begin(); next != formulas.end();) {
        auto const [column, top] = next->first;
        std::vector<Sequence<OUString>> rows;
        for (; next != formulas.end() && next->first == std::pair(column, top + int(rows.size())); ++next)
            rows.emplace_back(&next->second, 1);
        int const bottom = top + int(rows.size()) - 1;
        Reference<css::sheet::XCellRangeFormula>(
            sheets_.at(std::size_t(sheet))->getCellRangeByPosition(column, top, column, bottom), UNO_QUERY_THROW)
            ->setFormulaArray({rows.data(), sal_Int32(rows.size())});
    }
}

} // namespace hearthcell::checking
