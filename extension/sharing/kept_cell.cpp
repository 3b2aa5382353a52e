#include "extension/sharing/kept_cell.hpp"

#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"
#include "extension/sharing/constants.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XFormulaTokens.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::sharing {
namespace {

OUString cell_name(sal_Int32 column, sal_Int32 row) {
    return office::wide(formulas::cell_name(column, row));
}

} // namespace

OUString KeptCell::note(OUString const& edition) const {
    OUString words = formula;
    if (speaks_for == 1 && error != 0 && !error_constant(error))
        words += "\n" + error_shown;
    if (speaks_for > 1)
        words += "\n" + cell_name(column, row) + ":" + cell_name(column, row + speaks_for - 1);
    return words + "\n" + edition;
}

KeptCell read_cell(Reference<css::sheet::XSpreadsheet> const& sheet, sal_Int32 column, sal_Int32 row,
                   Any const& value) {
    KeptCell kept{.column = column, .row = row, .value = value};
    if (!value.hasValue()) {
        auto const cell = sheet->getCellByPosition(column, row);
        kept.error = cell->getError();
        kept.error_shown = Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->getString();
    }
    return kept;
}

OUString read_formula(Reference<css::sheet::XSpreadsheet> const& sheet, KeptCell const& cell) {
    OUString formula;
    Reference<css::beans::XPropertySet>(sheet->getCellByPosition(cell.column, cell.row), UNO_QUERY_THROW)
        ->getPropertyValue("FormulaLocal") >>= formula;
    return formula;
}

SharedComments::SharedComments(Reference<css::sheet::XSpreadsheet> const& sheet) : sheet_(sheet) {}

void SharedComments::add(KeptCell& cell) {
    // A formula's parts. What they refer to in relation to the cell is the same all down a filled column.
    Tokens const tokens = Reference<css::sheet::XFormulaTokens>(sheet_->getCellByPosition(cell.column, cell.row),
                                                                css::uno::UNO_QUERY_THROW)
                              ->getTokens();
    bool const goes_on =
        first_ != nullptr && cell.column == first_->column && cell.row == first_->row + first_->speaks_for &&
        std::equal(tokens.begin(), tokens.end(), tokens_.begin(), tokens_.end(),
                   [](auto const& a, auto const& b) { return a.OpCode == b.OpCode && a.Data == b.Data; });
    if (goes_on) {
        ++first_->speaks_for;
        cell.speaks_for = 0;
    } else {
        first_ = &cell;
        tokens_ = tokens;
    }
}

} // namespace hearthcell::sharing
