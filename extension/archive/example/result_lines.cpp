#include "extension/archive/example/result_lines.hpp"

#include "extension/formulas/moved.hpp"
#include "extension/formulas/plain.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;

/// Those that hold the same formula as one cell, seen from each.
std::vector<Place> same_in(std::vector<ContentCell const*> const& cells, SeenWorkbook const& workbook,
                           Place const& cell) {
    ContentCell const* const first = workbook.cell(cell);
    if (first == nullptr || !first->is_result || first->formula.empty())
        return {cell};
    std::string const wanted = formulas::seen_from(cell, formulas::plain(first->formula));
    std::vector<Place> same;
    for (ContentCell const* const one : cells)
        if (one->is_result && !one->formula.empty() &&
            formulas::seen_from(one->place, formulas::plain(one->formula)) == wanted)
            same.push_back(one->place);
    return same;
}

/// Of a formula: what it reads where it stands itself, and moves along with it, lies in its own row (or column).
bool reads_only_of_its(bool row, SeenWorkbook const& workbook, Place const& cell) {
    for (formulas::Token const& token : formulas::tokens_of(workbook.cell(cell)->formula)) {
        if (token.kind != formulas::TokenKind::reference)
            continue;
        formulas::Reference const reference = formulas::reference_of(token);
        bool const is_fixed = row ? reference.first.row_fixed : reference.first.column_fixed;
        int const own = row ? cell.row : cell.column;
        if (!is_fixed && (row ? reference.first.row : reference.first.column).value_or(own) != own)
            return false;
    }
    return true;
}

} // namespace

std::vector<Place> same_down(SeenWorkbook const& workbook, Place const& cell) {
    auto const label = [&](Place const& of) { return workbook.sheet(cell.sheet).above({of.row, of.column}); };
    auto const above = label(cell);
    std::vector<Place> same = same_in(workbook.column(cell.sheet, cell.column), workbook, cell);
    std::erase_if(same, [&](Place const& one) { return !is_same_label(label(one), above); });
    return same;
}

std::vector<Place> same_to_the_right(SeenWorkbook const& workbook, Place const& cell) {
    return same_in(workbook.row(cell.sheet, cell.row), workbook, cell);
}

/// Down the rows of a table: they have no names of their own, or each reads what stands in it.
bool may_go_down(SeenWorkbook const& workbook, Place const& cell) {
    LabelledSheet const& labels = workbook.sheet(cell.sheet);
    Where const where{cell.row, cell.column};
    return labels.above(where) && !labels.is_in_row_of_totals(where) &&
           (!labels.to_the_left(where) || reads_only_of_its(true, workbook, cell));
}

/// Along tests side by side, each of which reads what stands below its own title.
bool may_go_right(SeenWorkbook const& workbook, Place const& cell) {
    LabelledSheet const& labels = workbook.sheet(cell.sheet);
    Where const where{cell.row, cell.column};
    return labels.to_the_left(where) && !labels.is_in_row_of_totals(where) && !labels.is_in_column_of_totals(where) &&
           reads_only_of_its(false, workbook, cell) && !reads_only_of_its(true, workbook, cell);
}

} // namespace hearthcell::archive
