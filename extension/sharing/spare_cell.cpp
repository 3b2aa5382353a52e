#include "extension/sharing/spare_cell.hpp"

#include "extension/sharing/constants.hpp"

#include <com/sun/star/beans/XPropertyState.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XTextRange.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {

SpareCell::SpareCell(Reference<css::sheet::XSpreadsheet> const& sheet) {
    auto const cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
    auto const end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
    Reference<css::table::XColumnRowRange> const all(sheet, UNO_QUERY_THROW);
    // In neither a row nor a column that is used, so that a reference to whole ones does not meet it.
    sal_Int32 const column = end.EndColumn + 1, row = end.EndRow + 1;
    if (column >= all->getColumns()->getCount() || row >= all->getRows()->getCount())
        return;
    cell_ = sheet->getCellByPosition(column, row);
    properties_.set(cell_, UNO_QUERY_THROW);
    Reference<css::beans::XPropertyState> const state(cell_, UNO_QUERY_THROW);
    if (state->getPropertyState("NumberFormat") == css::beans::PropertyState_DIRECT_VALUE)
        number_format_ = properties_->getPropertyValue("NumberFormat");
}

SpareCell::~SpareCell() {
    if (!cell_.is())
        return;
    try {
        cell_->setFormula({});
        if (number_format_.hasValue())
            properties_->setPropertyValue("NumberFormat", number_format_);
        else
            Reference<css::beans::XPropertyState>(cell_, UNO_QUERY_THROW)->setPropertyToDefault("NumberFormat");
    } catch (css::uno::Exception const&) { // the document is gone
    }
}

bool SpareCell::is_block(OUString const& formula) {
    cell_->setFormula("=ROWS(" + formula + ")*COLUMNS(" + formula + ")");
    return cell_->getError() == 0 && cell_->getValue() != 1;
}

std::optional<OUString> SpareCell::value_of(OUString const& formula) {
    if (!cell_.is() || is_block(formula))
        return std::nullopt;
    cell_->setFormula("=" + formula);
    if (!cell_->getFormula().startsWith("=")) // it is protected
        return std::nullopt;
    if (sal_Int32 const error = cell_->getError(); error != 0)
        return error_constant(error);
    sal_Int32 kind = 0;
    properties_->getPropertyValue("FormulaResultType2") >>= kind;
    if (kind == css::sheet::FormulaResult::VALUE)
        return number_constant(cell_->getValue());
    return text_constant(Reference<css::text::XTextRange>(cell_, UNO_QUERY_THROW)->getString());
}

std::optional<OUString> SpareCell::in_english(OUString const& formula) {
    if (!cell_.is())
        return std::nullopt;
    properties_->setPropertyValue("FormulaLocal", Any("=" + formula));
    OUString const english = cell_->getFormula();
    if (!english.startsWith("="))
        return std::nullopt;
    return english.copy(1);
}

} // namespace hearthcell::sharing
