#include "extension/sharing/sheet_formulas.hpp"

#include "extension/sharing/names.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace css = com::sun::star;
using css::table::CellRangeAddress;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

using Place = std::pair<sal_Int32, sal_Int32>; // column, row

template <class Interface, class From> Reference<Interface> as(Reference<From> const& object) {
    return Reference<Interface>(object, UNO_QUERY_THROW);
}

auto range_at(Reference<css::sheet::XSpreadsheet> const& sheet, CellRangeAddress const& at) {
    return sheet->getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
}

/// The whole block of the array formula that a cell belongs to.
CellRangeAddress block_around(Reference<css::sheet::XSpreadsheet> const& sheet, Place place) {
    auto const cell = sheet->getCellRangeByPosition(place.first, place.second, place.first, place.second);
    auto const cursor = sheet->createCursorByRange(as<css::sheet::XSheetCellRange>(cell));
    cursor->collapseToCurrentArray();
    return as<css::sheet::XCellRangeAddressable>(cursor)->getRangeAddress();
}

class Reader {
public:
    Reader(Reference<css::sheet::XSpreadsheet> const& of_document, OurFormulas const& formulas_of_document)
        : sheet_(of_document), ours_(formulas_of_document), name_(name_of(sheet_)) {}

    /// An area full of formulas, ours and others.
    void read(CellRangeAddress const& area) {
        auto const range = range_at(sheet_, area);
        auto const formulas = as<css::sheet::XCellRangeFormula>(range)->getFormulaArray();
        Sequence<Sequence<Any>> values; // asked for only where there is a formula of ours
        for (sal_Int32 row = 0; row < formulas.getLength(); ++row)
            for (sal_Int32 column = 0; column < formulas[row].getLength(); ++column) {
                OUString const& formula = formulas[row][column];
                if (!ours_.need_us(formula, name_))
                    continue;
                if (!values.hasElements())
                    values = as<css::sheet::XCellRangeData>(range)->getDataArray();
                keep({area.StartColumn + column, area.StartRow + row}, formula, values[row][column]);
            }
    }

    SheetFormulas found;

private:
    void keep(Place place, OUString const& formula, Any const& value) {
        found.cells.push_back(read_cell(sheet_, place.first, place.second, value));
        if (!formula.startsWith("{") || in_a_block_.count(place) > 0)
            return;
        CellRangeAddress const block = block_around(sheet_, place);
        found.blocks.push_back(block);
        for (sal_Int32 column = block.StartColumn; column <= block.EndColumn; ++column)
            for (sal_Int32 row = block.StartRow; row <= block.EndRow; ++row)
                in_a_block_.insert({column, row});
    }

    Reference<css::sheet::XSpreadsheet> const sheet_;
    OurFormulas const& ours_;
    std::string const name_;
    std::set<Place> in_a_block_; // of an array formula that is known already
};

} // namespace

SheetFormulas read_formulas(Reference<css::sheet::XSpreadsheet> const& sheet, OurFormulas const& ours) {
    Reader reader(sheet, ours);
    auto const areas =
        as<css::sheet::XCellRangesQuery>(sheet)->queryContentCells(css::sheet::CellFlags::FORMULA)->getRangeAddresses();
    for (CellRangeAddress const& area : areas)
        reader.read(area);
    auto& cells = reader.found.cells;
    std::sort(cells.begin(), cells.end(), [](KeptCell const& one, KeptCell const& other) {
        return std::tie(one.column, one.row) < std::tie(other.column, other.row);
    });
    return std::move(reader.found);
}

} // namespace hearthcell::sharing
