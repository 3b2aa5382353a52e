#include "extension/archive/recalculation/cells_by_place.hpp"

#include "extension/archive/recalculation/formula_cells.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>

#include <functional>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

using Cells = Reference<css::table::XCellRange>;

/// Calls `work` for each run of cells one below the other: its first place, and its cells.
void in_runs(office::Document const& workbook, std::set<Place> const& places,
             std::function<void(Place const&, int length, Cells const&)> const& work) {
    auto const below = [](Place const& place, int rows) { return Place{place.sheet, place.row + rows, place.column}; };
    Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    for (Place const& first : places) {
        if (places.contains(below(first, -1)))
            continue; // in a run already
        int length = 1;
        while (places.contains(below(first, length)))
            ++length;
        Cells const sheet(sheets->getByIndex(first.sheet), UNO_QUERY_THROW);
        work(first, length,
             sheet->getCellRangeByPosition(first.column, first.row, first.column, first.row + length - 1));
    }
}

} // namespace

std::map<Place, Value> values_at(office::Document const& workbook, std::set<Place> const& places) {
    std::map<Place, Value> values;
    in_runs(workbook, places, [&](Place const& first, int length, Cells const& cells) {
        auto const rows = values_in(cells);
        for (int row = 0; row < length; ++row)
            values[{first.sheet, first.row + row, first.column}] = rows[std::size_t(row)][0];
    });
    return values;
}

std::map<Place, std::string> formulas_at(office::Document const& workbook, std::set<Place> const& places) {
    std::map<Place, std::string> formulas;
    in_runs(workbook, places, [&](Place const& first, int length, Cells const& cells) {
        auto const rows = Reference<css::sheet::XCellRangeFormula>(cells, UNO_QUERY_THROW)->getFormulaArray();
        for (int row = 0; row < length; ++row)
            formulas[{first.sheet, first.row + row, first.column}] = narrow(rows[row][0]);
    });
    return formulas;
}

void write_formulas(office::Document const& workbook, std::map<Place, std::string> const& formulas) {
    std::set<Place> places;
    for (auto const& [place, formula] : formulas)
        places.insert(place);
    in_runs(workbook, places, [&](Place const& first, int length, Cells const& cells) {
        Sequence<Sequence<rtl::OUString>> rows(length);
        for (int row = 0; row < length; ++row) {
            rtl::OUString const text = wide(formulas.at({first.sheet, first.row + row, first.column}));
            rows.getArray()[row] = {&text, 1};
        }
        Reference<css::sheet::XCellRangeFormula>(cells, UNO_QUERY_THROW)->setFormulaArray(rows);
    });
}

} // namespace hearthcell::archive
