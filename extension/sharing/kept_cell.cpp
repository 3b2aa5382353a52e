#include "extension/sharing/kept_cell.hpp"

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

struct ErrorConstant {
    sal_Int32 code;
    char const* formula;
};

/// The errors that every spreadsheet program can write as a constant.
constexpr ErrorConstant constants[] = {{503, "=#NUM!"},  {519, "=#VALUE!"}, {521, "=#NULL!"}, {524, "=#REF!"},
                                       {525, "=#NAME?"}, {532, "=#DIV/0!"}, {32767, "=#N/A"}};

char const* constant_of(sal_Int32 error) {
    for (ErrorConstant const& constant : constants)
        if (constant.code == error)
            return constant.formula;
    return nullptr;
}

} // namespace

OUString KeptCell::note() const {
    bool const shown_otherwise = error != 0 && constant_of(error) == nullptr;
    return shown_otherwise ? formula + "\n" + error_shown : formula;
}

KeptCell read_cell(Reference<css::sheet::XSpreadsheet> const& sheet, sal_Int32 column, sal_Int32 row,
                   Any const& value) {
    auto const cell = sheet->getCellByPosition(column, row);
    KeptCell kept{column, row, value, 0, {}, {}};
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
        // The others, such as Err:504, are LibreOffice's own and would not be understood elsewhere.
        char const* const constant = constant_of(kept.error);
        cell->setFormula(OUString::createFromAscii(constant != nullptr ? constant : "=#VALUE!"));
    }
}

} // namespace hearthcell::sharing
