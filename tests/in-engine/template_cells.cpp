// What the templates' tests ask the office that the driver has no helper for.

#include "office/text.hpp"
#include "templates.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XHeaderFooterContent.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XProtectable.hpp>

namespace hearthcell::tests {
namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::narrow;

namespace {

std::string word(Reference<css::uno::XInterface> const& object, char const* property) {
    rtl::OUString text;
    Reference<css::beans::XPropertySet>(object, UNO_QUERY_THROW)
        ->getPropertyValue(rtl::OUString::createFromAscii(property)) >>= text;
    return narrow(text);
}

bool flag(Reference<css::uno::XInterface> const& object, char const* property) {
    bool value = false;
    Reference<css::beans::XPropertySet>(object, UNO_QUERY_THROW)
        ->getPropertyValue(rtl::OUString::createFromAscii(property)) >>= value;
    return value;
}

/// A sheet may have thousands of rows that are alike, so cells are looked at by their format: here all that have one.
using Alike = Reference<css::sheet::XSheetCellRanges>;

template <class Work> void each_format(Reference<css::sheet::XSpreadsheet> const& sheet, Work work) {
    Reference<css::sheet::XUniqueCellFormatRangesSupplier> const supplier(sheet, UNO_QUERY_THROW);
    auto const formats = supplier->getUniqueCellFormatRanges();
    for (sal_Int32 place = 0; place < formats->getCount(); ++place)
        work(Alike(formats->getByIndex(place), UNO_QUERY_THROW));
}

Reference<css::table::XCell> first_of(Reference<css::sheet::XSpreadsheet> const& sheet, Alike const& cells) {
    auto const first = cells->getRangeAddresses()[0];
    return sheet->getCellByPosition(first.StartColumn, first.StartRow);
}

Reference<css::beans::XPropertySet> validation_of(Reference<css::table::XCell> const& cell) {
    Reference<css::beans::XPropertySet> validation;
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("Validation") >>= validation;
    return validation;
}

void add_cells(Reference<css::sheet::XSpreadsheet> const& sheet, std::vector<ReadText>& texts) {
    Reference<css::sheet::XCellRangesQuery> const query(sheet, UNO_QUERY_THROW);
    auto const cells = query->queryContentCells(css::sheet::CellFlags::STRING)->getCells()->createEnumeration();
    while (cells->hasMoreElements()) {
        Reference<css::text::XTextRange> const cell(cells->nextElement(), UNO_QUERY_THROW);
        texts.push_back(
            {word(cell, "AbsoluteName"), narrow(Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->getString())});
    }
    each_format(sheet, [&](Alike const& alike) {
        auto const validation = validation_of(first_of(sheet, alike));
        for (char const* part : {"ErrorTitle", "ErrorMessage", "InputTitle", "InputMessage"})
            texts.push_back({narrow(alike->getRangeAddressesAsString()) + " " + part, word(validation, part)});
    });
}

void add_chart(Reference<css::table::XTableChartsSupplier> const& sheet, std::vector<ReadText>& texts) {
    Reference<css::container::XIndexAccess> const charts(sheet->getCharts(), UNO_QUERY_THROW);
    for (sal_Int32 place = 0; place < charts->getCount(); ++place) {
        Reference<css::document::XEmbeddedObjectSupplier> const frame(charts->getByIndex(place), UNO_QUERY_THROW);
        Reference<css::chart::XChartDocument> const chart(frame->getEmbeddedObject(), UNO_QUERY_THROW);
        texts.push_back({"title of a chart", word(chart->getTitle(), "String")});
        auto const diagram = chart->getDiagram();
        if (Reference<css::chart::XAxisXSupplier> const axis(diagram, UNO_QUERY); axis.is())
            texts.push_back({"axis of a chart", word(axis->getXAxisTitle(), "String")});
        if (Reference<css::chart::XAxisYSupplier> const axis(diagram, UNO_QUERY); axis.is())
            texts.push_back({"axis of a chart", word(axis->getYAxisTitle(), "String")});
    }
}

Reference<css::sheet::XSpreadsheet> sheet_of(office::Document const& workbook, int place) {
    Reference<css::container::XIndexAccess> const all(workbook.model()->getSheets(), UNO_QUERY_THROW);
    return {all->getByIndex(place), UNO_QUERY_THROW};
}

/// What is wrong with cells of one format on a protected sheet; empty when nothing is.
std::string fault_of(Alike const& alike, Reference<css::table::XCell> const& first) {
    css::util::CellProtection protection;
    Reference<css::beans::XPropertySet>(first, UNO_QUERY_THROW)->getPropertyValue("CellProtection") >>= protection;
    if (protection.IsLocked)
        return "";
    constexpr sal_Int32 any =
        css::sheet::FormulaResult::VALUE | css::sheet::FormulaResult::STRING | css::sheet::FormulaResult::ERROR;
    Reference<css::sheet::XCellRangesQuery> const query(alike, UNO_QUERY_THROW);
    if (query->queryFormulaCells(any)->getRangeAddresses().getLength() > 0)
        return "holds a formula and is not locked";
    std::string const style = word(first, "CellStyle");
    if (!style.starts_with("Input") && !style.starts_with("input"))
        return "is not locked, but looks like " + style;
    bool const holds_words = style == "Input" || style == "input, words";
    auto const validation = validation_of(first);
    bool const is_checked = flag(validation, "ShowErrorMessage") && !word(validation, "ErrorMessage").empty();
    return holds_words || is_checked ? "" : "is for a number, but no message says which one";
}

} // namespace

std::vector<ReadText> read_texts(office::Document const& workbook) {
    std::vector<ReadText> texts;
    office::asking("reading every text", [&] {
        for (int place = 0; place < workbook.sheets(); ++place) {
            auto const sheet = sheet_of(workbook, place);
            texts.push_back({"name of a sheet", workbook.sheet(place).name()});
            add_cells(sheet, texts);
            add_chart(Reference<css::table::XTableChartsSupplier>(sheet, UNO_QUERY_THROW), texts);
        }
    });
    return texts;
}

std::string footer_of(office::Document const& workbook, int place) {
    return office::asking("reading a footer", [&] {
        Reference<css::style::XStyleFamiliesSupplier> const styles(workbook.model(), UNO_QUERY_THROW);
        Reference<css::container::XNameAccess> const pages(styles->getStyleFamilies()->getByName("PageStyles"),
                                                           UNO_QUERY_THROW);
        std::string const page = word(sheet_of(workbook, place), "PageStyle");
        Reference<css::beans::XPropertySet> const style(pages->getByName(office::wide(page)), UNO_QUERY_THROW);
        Reference<css::sheet::XHeaderFooterContent> const footer(style->getPropertyValue("RightPageFooterContent"),
                                                                 UNO_QUERY_THROW);
        return flag(style, "FooterIsOn") ? narrow(footer->getCenterText()->getString()) : "";
    });
}

std::string errors_on(office::Document const& workbook, int place) {
    return office::asking("looking for errors", [&] {
        Reference<css::sheet::XCellRangesQuery> const query(sheet_of(workbook, place), UNO_QUERY_THROW);
        return narrow(query->queryFormulaCells(css::sheet::FormulaResult::ERROR)->getRangeAddressesAsString());
    });
}

std::string faults_of_protection(office::Document const& workbook, int place) {
    return office::asking("looking at the protection", [&] {
        auto const sheet = sheet_of(workbook, place);
        Reference<css::util::XProtectable> const protection(sheet, UNO_QUERY_THROW);
        std::string faults = protection->isProtected() ? "" : "The sheet is not protected.\n";
        each_format(sheet, [&](Alike const& alike) {
            std::string const fault = fault_of(alike, first_of(sheet, alike));
            if (!fault.empty())
                faults += narrow(alike->getRangeAddressesAsString()) + " " + fault + ".\n";
        });
        protection->unprotect("");
        return protection->isProtected() ? faults + "A password protects it.\n" : faults;
    });
}

} // namespace hearthcell::tests
