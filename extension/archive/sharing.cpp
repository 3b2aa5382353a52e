#include "archive/sharing.hpp"

#include "archive/formula.hpp"
#include "archive/formula_cells.hpp"
#include "office/text.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotationAnchor.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <stdexcept>
#include <vector>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::narrow;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

struct Ours {
    Place place;
    Value value;
    std::string formula;
};

/// Calc has constants for these errors only; the others have numbers that cannot be typed.
std::string error_formula(Fault const& fault) {
    return "=" + (fault.shown.starts_with('#') ? fault.shown : std::string("#VALUE!"));
}

void put(Reference<css::table::XCell> const& cell, Value const& value) {
    if (auto const* number = std::get_if<double>(&value))
        cell->setValue(*number);
    else if (auto const* fault = std::get_if<Fault>(&value))
        cell->setFormula(wide(error_formula(*fault)));
    else
        Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->setString(wide(written(value)));
}

/// A cell of an array formula cannot be changed alone: the whole array gives way first.
void dissolve_array(Reference<css::sheet::XSpreadsheet> const& sheet, Reference<css::table::XCell> const& cell) {
    auto const cursor = sheet->createCursorByRange(Reference<css::sheet::XSheetCellRange>(
        Reference<css::table::XCellRange>(cell, UNO_QUERY_THROW), UNO_QUERY_THROW));
    cursor->collapseToCurrentArray();
    Reference<css::sheet::XArrayFormulaRange>(cursor, UNO_QUERY_THROW)->setArrayFormula({});
}

void annotate(Reference<css::sheet::XSpreadsheet> const& sheet, Reference<css::table::XCell> const& cell,
              std::string const& text) {
    Reference<css::sheet::XSheetAnnotationAnchor> const anchor(cell, UNO_QUERY_THROW);
    std::string note = text;
    if (auto const old = anchor->getAnnotation(); old.is())
        if (std::string const said = narrow(Reference<css::text::XTextRange>(old, UNO_QUERY_THROW)->getString());
            !said.empty())
            note = said + "\n" + text;
    Reference<css::sheet::XSheetAnnotationsSupplier>(sheet, UNO_QUERY_THROW)
        ->getAnnotations()
        ->insertNew(Reference<css::sheet::XCellAddressable>(cell, UNO_QUERY_THROW)->getCellAddress(), wide(note));
}

std::vector<Ours> ours_in(office::Document const& workbook) {
    std::vector<Ours> found;
    visit_formulas(workbook, [&](Place const& place, Value const& value, Formula const& formula) {
        if (!functions_in(formula()).empty())
            found.push_back({place, value, as_shown(formula())});
    });
    return found;
}

} // namespace

void replace_by_values(office::Document const& workbook, std::string const& edition) {
    std::vector<Ours> const all = ours_in(workbook);
    office::asking("replacing formulas by values", [&] {
        Reference<css::container::XIndexAccess> const sheets(workbook.model()->getSheets(), UNO_QUERY_THROW);
        // Not after every single cell: all that depends on it would be calculated again and again.
        Reference<css::sheet::XCalculatable> const calculation(workbook.model(), UNO_QUERY_THROW);
        bool const automatic = calculation->isAutomaticCalculationEnabled();
        calculation->enableAutomaticCalculation(false);
        auto const sheet_of = [&](Place const& place) {
            return Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(place.sheet), UNO_QUERY_THROW);
        };
        for (Ours const& one : all) {
            auto const sheet = sheet_of(one.place);
            auto const cell = sheet->getCellByPosition(one.place.column, one.place.row);
            if (one.formula.starts_with('{') && narrow(cell->getFormula()).starts_with("{="))
                dissolve_array(sheet, cell);
        }
        for (Ours const& one : all) {
            auto const sheet = sheet_of(one.place);
            auto const cell = sheet->getCellByPosition(one.place.column, one.place.row);
            put(cell, one.value);
            if (!functions_in(narrow(cell->getFormula())).empty())
                throw std::runtime_error("the protected cell " + cell_name(one.place) + " keeps its formula");
            annotate(sheet, cell, one.formula + "\n" + edition);
        }
        calculation->enableAutomaticCalculation(automatic);
    });
}

} // namespace hearthcell::archive
