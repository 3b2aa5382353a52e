#include "extension/archive/recalculation/named_cells.hpp"

#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/lang/IndexOutOfBoundsException.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

css::table::CellRangeAddress address_of(Reference<css::uno::XInterface> const& cells) {
    return Reference<css::sheet::XCellRangeAddressable>(cells, UNO_QUERY_THROW)->getRangeAddress();
}

Target target_for(Reference<css::table::XCellRange> const& cells) {
    auto const at = address_of(cells);
    return {cells, {}, {{at.Sheet, at.StartRow, at.StartColumn}, {at.Sheet, at.EndRow, at.EndColumn}}};
}

/// The names of the whole workbook or of one sheet.
std::optional<Target> in_names(css::uno::Any const& owner, std::string const& name) {
    Reference<css::beans::XPropertySet> const properties(owner, UNO_QUERY_THROW);
    Reference<css::container::XNameAccess> const names(properties->getPropertyValue("NamedRanges"), UNO_QUERY_THROW);
    for (rtl::OUString const& known : names->getElementNames()) {
        if (!known.equalsIgnoreAsciiCase(wide(name)))
            continue;
        Reference<css::sheet::XNamedRange> const found(names->getByName(known), UNO_QUERY_THROW);
        auto const range = Reference<css::sheet::XCellRangeReferrer>(found, UNO_QUERY_THROW)->getReferredCells();
        if (range.is())
            return target_for(range);
        return Target{{}, found};
    }
    return std::nullopt;
}

css::table::CellRangeAddress used_area(Reference<css::sheet::XSpreadsheet> const& sheet) {
    auto const cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
    return address_of(cursor);
}

std::optional<Target> in_sheet(office::Document const& workbook, std::string const& name, formulas::Block block) {
    Reference<css::container::XNameAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    if (!sheets->hasByName(wide(name)))
        return std::nullopt;
    Reference<css::sheet::XSpreadsheet> const sheet(sheets->getByName(wide(name)), UNO_QUERY_THROW);
    bool const whole_columns = block.bottom == formulas::last_row, whole_rows = block.right == formulas::last_column;
    if (whole_columns || whole_rows) {
        auto const used = used_area(sheet);
        block.bottom = whole_columns ? std::max(block.top, static_cast<int>(used.EndRow)) : block.bottom;
        block.right = whole_rows ? std::max(block.left, static_cast<int>(used.EndColumn)) : block.right;
    }
    try {
        return target_for(sheet->getCellRangeByPosition(block.left, block.top, block.right, block.bottom));
    } catch (css::lang::IndexOutOfBoundsException const&) { // this office knows no sheets of that size
        return std::nullopt;
    }
}

} // namespace

std::optional<Target> target_of(office::Document const& workbook, std::string const& name) {
    if (auto const found = in_names(css::uno::Any(workbook.model()), name))
        return found;
    Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 sheet = 0; sheet < sheets->getCount(); ++sheet)
        if (auto const found = in_names(sheets->getByIndex(sheet), name))
            return found;
    auto const address = formulas::address_in(name);
    return address ? in_sheet(workbook, address->sheet, address->block) : std::nullopt;
}

} // namespace hearthcell::archive
