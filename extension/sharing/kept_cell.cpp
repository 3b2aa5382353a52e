#include "extension/sharing/kept_cell.hpp"

#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/constants.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

OUString name_of(sal_Int32 column, sal_Int32 row) {
    return office::wide(formulas::cell_name(column, row));
}

} // namespace

OUString KeptCell::note(OUString const& edition) const {
    OUString words = formula;
    if (speaks_for == 1 && error != 0 && !error_constant(error))
        words += "\n" + error_shown;
    if (speaks_for > 1)
        words += "\n" + name_of(column, row) + ":" + name_of(column, row + speaks_for - 1);
    return words + "\n" + edition;
}

KeptCell read_cell(Reference<css::sheet::XSpreadsheet> const& sheet, sal_Int32 column, sal_Int32 row,
                   Any const& value) {
    auto const cell = sheet->getCellByPosition(column, row);
    KeptCell kept{.column = column, .row = row, .value = value};
    if (!value.hasValue()) {
        kept.error = cell->getError();
        kept.error_shown = Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->getString();
    }
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("FormulaLocal") >>= kept.formula;
    return kept;
}

void write_cell(Reference<css::sheet::XSpreadsheet> const& sheet, KeptCell const& kept) {
    auto const cell = sheet->getCellByPosition(kept.column, kept.row);
    double number = 0;
    OUString words;
    if (kept.value >>= number) {
        cell->setValue(number); // shown as before: Calc has given the cell the number format of the formula's result
    } else if ((kept.value >>= words) && !words.isEmpty()) {
        Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->setString(words); // also "12" stays a text
    } else if (kept.value.hasValue()) {
        cell->setFormula("=\"\""); // an empty cell would count as 0 where a text of no length is an error
    } else {
        cell->setFormula("=" + error_constant(kept.error).value_or("#VALUE!"));
    }
}

} // namespace hearthcell::sharing
