// What the templates' tests ask the office that the driver has no helper for.

#include "extension/office/text.hpp"
#include "templates.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XHeaderFooterContent.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
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

Reference<css::sheet::XSheetCellRanges> cells_that_hold(Reference<css::uno::XInterface> const& cells,
                                                        sal_Int32 content) {
    return Reference<css::sheet::XCellRangesQuery>(cells, UNO_QUERY_THROW)->queryContentCells(sal_Int16(content));
}

/// Groups of cells that are alike in style, protection and validation: a long log is thousands of cells, but few
/// groups.
template <class Work> void each_group(Reference<css::sheet::XSpreadsheet> const& sheet, Work work) {
    Reference<css::container::XIndexAccess> const groups(
        Reference<css::sheet::XUniqueCellFormatRangesSupplier>(sheet, UNO_QUERY_THROW)->getUniqueCellFormatRanges(),
        UNO_QUERY_THROW);
    for (sal_Int32 place = 0; place < groups->getCount(); ++place)
        work(Reference<css::sheet::XSheetCellRanges>(groups->getByIndex(place), UNO_QUERY_THROW));
}

Reference<css::beans::XPropertySet> validation_of(Reference<css::uno::XInterface> const& cells) {
    Reference<css::beans::XPropertySet> validation;
    Reference<css::beans::XPropertySet>(cells, UNO_QUERY_THROW)->getPropertyValue("Validation") >>= validation;
    return validation;
}

void add_cells(Reference<css::sheet::XSpreadsheet> const& sheet, std::vector<ReadText>& texts) {
    // Whole blocks in one call, and each thing asked once: a call to another process takes its time.
    Reference<css::container::XIndexAccess> const blocks(cells_that_hold(sheet, css::sheet::CellFlags::STRING),
                                                         UNO_QUERY_THROW);
    for (sal_Int32 place = 0; place < blocks->getCount(); ++place) {
        Reference<css::sheet::XCellRangeData> const block(blocks->getByIndex(place), UNO_QUERY_THROW);
        std::string const where = word(block, "AbsoluteName");
        for (auto const& row : block->getDataArray())
            for (css::uno::Any const& cell : row)
                texts.push_back({where, narrow(cell.get<rtl::OUString>())});
    }
    each_group(sheet, [&](Reference<css::sheet::XSheetCellRanges> const& group) {
        std::string const where = narrow(group->getRangeAddressesAsString());
        auto const validation = validation_of(group);
        for (char const* part : {"ErrorTitle", "ErrorMessage", "InputTitle", "InputMessage"})
            texts.push_back({where + " " + part, word(validation, part)});
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

/// What is wrong with a group of cells of a protected sheet; empty when nothing is.
std::string fault_of(Reference<css::sheet::XSheetCellRanges> const& group) {
    css::util::CellProtection protection;
    Reference<css::beans::XPropertySet>(group, UNO_QUERY_THROW)->getPropertyValue("CellProtection") >>= protection;
    if (protection.IsLocked)
        return "";
    if (cells_that_hold(group, css::sheet::CellFlags::FORMULA)->getCells()->hasElements())
        return "hold a formula and are not locked";
    std::string const style = word(group, "CellStyle");
    if (!style.starts_with("Input") && !style.starts_with("input"))
        return "are not locked, but look like " + style;
    bool const holds_words = style == "Input" || style == "input, words";
    auto const validation = validation_of(group);
    bool const is_checked = flag(validation, "ShowErrorMessage") && !word(validation, "ErrorMessage").empty();
    return holds_words || is_checked ? "" : "are for numbers, but no message says which ones";
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

bool has_formulas(office::Document const& workbook, int place) {
    return office::asking("looking for formulas", [&] {
        return cells_that_hold(sheet_of(workbook, place), css::sheet::CellFlags::FORMULA)->getCells()->hasElements();
    });
}

std::vector<int> heights_of_rows(office::Document const& workbook, int place, int rows) {
    return office::asking("measuring rows", [&] {
        Reference<css::table::XColumnRowRange> const sheet(sheet_of(workbook, place), UNO_QUERY_THROW);
        std::vector<int> heights;
        for (int row = 0; row < rows; ++row) {
            sal_Int32 height = 0;
            Reference<css::beans::XPropertySet>(sheet->getRows()->getByIndex(row), UNO_QUERY_THROW)
                ->getPropertyValue("Height") >>= height;
            heights.push_back(height);
        }
        return heights;
    });
}

std::string faults_of_protection(office::Document const& workbook, int place) {
    return office::asking("looking at the protection", [&] {
        auto const sheet = sheet_of(workbook, place);
        Reference<css::util::XProtectable> const protection(sheet, UNO_QUERY_THROW);
        std::string faults = protection->isProtected() ? "" : "The sheet is not protected.\n";
        each_group(sheet, [&](Reference<css::sheet::XSheetCellRanges> const& group) {
            std::string const fault = fault_of(group);
            if (!fault.empty())
                faults += narrow(group->getRangeAddressesAsString()) + " " + fault + ".\n";
        });
        protection->unprotect("");
        return protection->isProtected() ? faults + "A password protects it.\n" : faults;
    });
}

} // namespace hearthcell::tests
