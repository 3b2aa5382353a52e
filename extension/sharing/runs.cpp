#include "extension/sharing/runs.hpp"

#include <com/sun/star/sheet/FormulaToken.hpp>
#include <com/sun/star/sheet/XFormulaTokens.hpp>

#include <algorithm>
#include <tuple>

namespace css = com::sun::star;
using css::uno::Reference;
using Tokens = css::uno::Sequence<css::sheet::FormulaToken>;

namespace hearthcell::sharing {
namespace {

/// A formula's parts. What they refer to in relation to the cell is the same all down a filled column.
Tokens tokens_of(Reference<css::sheet::XSpreadsheet> const& sheet, KeptCell const& cell) {
    return Reference<css::sheet::XFormulaTokens>(sheet->getCellByPosition(cell.column, cell.row),
                                                 css::uno::UNO_QUERY_THROW)
        ->getTokens();
}

bool is_the_same(Tokens const& one, Tokens const& other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                      [](auto const& a, auto const& b) { return a.OpCode == b.OpCode && a.Data == b.Data; });
}

} // namespace

void share_comments(SheetFormulas& formulas) {
    auto& cells = formulas.cells;
    std::sort(cells.begin(), cells.end(), [](KeptCell const& a, KeptCell const& b) {
        return std::tie(a.column, a.row) < std::tie(b.column, b.row);
    });
    KeptCell* first = nullptr;
    Tokens tokens;
    for (KeptCell& cell : cells) {
        Tokens const now = tokens_of(formulas.sheet, cell);
        if (first != nullptr && cell.column == first->column && cell.row == first->row + first->speaks_for &&
            is_the_same(now, tokens)) {
            ++first->speaks_for;
            cell.speaks_for = 0;
        } else {
            first = &cell;
            tokens = now;
        }
    }
}

} // namespace hearthcell::sharing
