#include "extension/menu/check_report.hpp"

#include "extension/checking/marks.hpp"
#include "extension/checking/texts.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/PropertyAttribute.hpp>
#include <com/sun/star/beans/XPropertyContainer.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <com/sun/star/util/XModifiable.hpp>

namespace css = com::sun::star;
using css::beans::XPropertySet;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using hearthcell::checking::Remark;
using hearthcell::office::narrow;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

enum Column { run, cell, function, value, remark, effect, seen, mark, columns };
constexpr std::array<sal_Int32, columns> widths{2600, 3000, 5600, 3200, 11000, 5200, 1800, 100}; // 1/100 mm
constexpr sal_Int32 heading_row = 3;
constexpr sal_Int32 dark = 0x23445E, white = 0xFFFFFF, tint = 0xF2F5F8;
constexpr char id_property[] = "Hearthcell check of", address_property[] = "Hearthcell check of file";

class Report {
public:
    Report(Surroundings const& around, CheckedDocument const& of_document, checking::Result const& what_came)
        : surroundings_(around), document_(of_document), result_(what_came) {}

    void open() {
        css::beans::PropertyValue const hidden{"Hidden", 0, Any(surroundings_.unattended),
                                               css::beans::PropertyState_DIRECT_VALUE};
        report_.set(css::frame::Desktop::create(surroundings_.context)
                        ->loadComponentFromURL("private:factory/scalc", "_blank", 0, {&hidden, 1}),
                    UNO_QUERY_THROW);
        Reference<css::container::XIndexAccess> const sheets(report_->getSheets(), UNO_QUERY_THROW);
        sheet_.set(sheets->getByIndex(0), UNO_QUERY_THROW);
        set_widths();
        write_head();
        write_remarks();
        write_whole();
        set_page();
        remember();
        Reference<css::util::XModifiable>(report_, UNO_QUERY_THROW)->setModified(false);
    }

private:
    OUString say(checking::Text which) const { return wide(checking::text(which, surroundings_.language)); }

    Reference<XPropertySet> properties(sal_Int32 row, sal_Int32 first, sal_Int32 last) const {
        return {sheet_->getCellRangeByPosition(first, row, last, row), UNO_QUERY_THROW};
    }

    void write(sal_Int32 row, sal_Int32 column, OUString const& text) const {
        Any const value(text);
        Sequence<Any> const line(&value, 1);
        Reference<css::sheet::XCellRangeData>(sheet_->getCellRangeByPosition(column, row, column, row), UNO_QUERY_THROW)
            ->setDataArray({&line, 1}); // as a text, whatever it begins with
    }

    /// A sentence over the whole width.
    void write_line(sal_Int32 row, OUString const& text, float height, bool bold) const {
        write(row, 0, text);
        Reference<css::util::XMergeable>(sheet_->getCellRangeByPosition(0, row, seen, row), UNO_QUERY_THROW)
            ->merge(true);
        auto const look = properties(row, 0, seen);
        look->setPropertyValue("IsTextWrapped", Any(true));
        look->setPropertyValue("CharHeight", Any(height));
        look->setPropertyValue("CharWeight", Any(bold ? css::awt::FontWeight::BOLD : css::awt::FontWeight::NORMAL));
        look->setPropertyValue("VertJustify", Any(css::table::CellVertJustify2::TOP));
        // Calc does not find the height of merged cells by itself.
        constexpr sal_Int32 letters_a_line = 150, line_height = 480;
        sal_Int32 const lines = 1 + text.getLength() / sal_Int32(letters_a_line * 10 / height);
        Reference<XPropertySet> const rows(row_at(row), UNO_QUERY_THROW);
        rows->setPropertyValue("Height", Any(sal_Int32(float(line_height * lines) * height / 10)));
    }

    Reference<css::uno::XInterface> row_at(sal_Int32 row) const {
        Reference<css::table::XColumnRowRange> const all(sheet_, UNO_QUERY_THROW);
        return {all->getRows()->getByIndex(row), UNO_QUERY_THROW};
    }

    void write_head() {
        write_line(0, say(checking::Text::title).replaceFirst("%1", document_.name), 16, true);
        write_line(1, wide(result_.summary), 12, true);
        next_ = heading_row;
        if (result_.remarks.empty())
            return;
        write_line(2, say(checking::Text::how_to_leave), 9, false);
        using checking::Text;
        sal_Int32 column = 0;
        for (Text const heading :
             {Text::run, Text::cell, Text::function, Text::value, Text::remark, Text::effect, Text::seen})
            write(heading_row, column++, say(heading));
        auto const look = properties(heading_row, 0, seen);
        look->setPropertyValue("CellBackColor", Any(dark));
        look->setPropertyValue("CharColor", Any(white));
        look->setPropertyValue("CharWeight", Any(css::awt::FontWeight::BOLD));
        next_ = heading_row + 1;
    }

    void write_remarks() {
        bool tinted = false;
        for (checking::RunRemarks const& of_run : result_.remarks) {
            sal_Int32 const first = next_;
            for (Remark const& one : of_run.remarks)
                write_remark(one, next_++ == first, of_run.label);
            if (tinted)
                Reference<XPropertySet>(sheet_->getCellRangeByPosition(0, first, seen, next_ - 1), UNO_QUERY_THROW)
                    ->setPropertyValue("CellBackColor", Any(tint));
            tinted = !tinted;
        }
        if (next_ == heading_row)
            return;
        Reference<XPropertySet> const look(sheet_->getCellRangeByPosition(0, heading_row, seen, next_ - 1),
                                           UNO_QUERY_THROW);
        look->setPropertyValue("IsTextWrapped", Any(true));
        look->setPropertyValue("VertJustify", Any(css::table::CellVertJustify2::TOP));
        look->setPropertyValue("CharHeight", Any(float(9)));
        Reference<css::table::XColumnRowRange> const rows(look, UNO_QUERY_THROW);
        Reference<XPropertySet>(rows->getRows(), UNO_QUERY_THROW)->setPropertyValue("OptimalHeight", Any(true));
    }

    void write_remark(Remark const& one, bool is_first, std::string const& label) const {
        sal_Int32 const row = next_ - 1;
        OUString const name = label.empty() ? say(checking::Text::outside_of_runs) : wide(label);
        std::array<Any, columns> const fields{Any(is_first ? name : OUString()),
                                              Any(cell_name(one)),
                                              Any(wide(one.function)),
                                              Any(wide(one.value)),
                                              Any(wide(one.sentence)),
                                              Any(wide(one.effect)),
                                              Any(OUString()),
                                              Any(wide(checking::written(one.mark)))};
        Sequence<Any> const line(fields.data(), columns);
        Reference<css::sheet::XCellRangeData>(sheet_->getCellRangeByPosition(0, row, columns - 1, row), UNO_QUERY_THROW)
            ->setDataArray({&line, 1});
        if (!document_.address.isEmpty())
            sheet_->getCellByPosition(cell, row)->setFormula("=HYPERLINK(" + in_quotes(link_to(one)) + ";" +
                                                             in_quotes(cell_name(one)) + ")");
    }

    OUString sheet_name(Remark const& one) const { return wide(result_.sheets.at(std::size_t(one.cell.sheet))); }

    OUString cell_name(Remark const& one) const {
        if (!one.place.empty())
            return wide(one.place);
        return result_.sheets.size() > 1 ? sheet_name(one) + "." + wide(one.cells()) : wide(one.cells());
    }

    OUString link_to(Remark const& one) const {
        return document_.address + "#'" + sheet_name(one).replaceAll("'", "''") + "'." + wide(one.cells());
    }

    static OUString in_quotes(OUString const& text) { return "\"" + text.replaceAll("\"", "\"\"") + "\""; }

    void write_whole() {
        if (result_.whole.empty())
            return;
        write_line(++next_, say(checking::Text::whole_workbook), 12, true);
        for (std::string const& sentence : result_.whole)
            write_line(++next_, wide(sentence), 10, false);
    }

    void set_widths() const {
        Reference<css::table::XColumnRowRange> const all(sheet_, UNO_QUERY_THROW);
        for (sal_Int32 column = 0; column < columns; ++column) {
            Reference<XPropertySet> const look(all->getColumns()->getByIndex(column), UNO_QUERY_THROW);
            look->setPropertyValue("Width", Any(widths[std::size_t(column)]));
            look->setPropertyValue("IsVisible", Any(column != mark));
        }
    }

    void set_page() const {
        OUString style;
        Reference<XPropertySet>(sheet_, UNO_QUERY_THROW)->getPropertyValue("PageStyle") >>= style;
        Reference<css::container::XNameAccess> const families(
            Reference<css::style::XStyleFamiliesSupplier>(report_, UNO_QUERY_THROW)->getStyleFamilies());
        Reference<css::container::XNameAccess> const pages(families->getByName("PageStyles"), UNO_QUERY_THROW);
        Reference<XPropertySet> const page(pages->getByName(style), UNO_QUERY_THROW);
        sal_Int32 width = 0, height = 0;
        page->getPropertyValue("Width") >>= width;
        page->getPropertyValue("Height") >>= height;
        page->setPropertyValue("IsLandscape", Any(true));
        page->setPropertyValue("Width", Any(std::max(width, height)));
        page->setPropertyValue("Height", Any(std::min(width, height)));
        page->setPropertyValue("ScaleToPagesX", Any(sal_Int16(1)));
        page->setPropertyValue("ScaleToPagesY", Any(sal_Int16(0)));
    }

    void remember() const {
        auto const own = Reference<css::document::XDocumentPropertiesSupplier>(report_, UNO_QUERY_THROW)
                             ->getDocumentProperties()
                             ->getUserDefinedProperties();
        own->addProperty(id_property, css::beans::PropertyAttribute::REMOVABLE, Any(document_.id));
        own->addProperty(address_property, css::beans::PropertyAttribute::REMOVABLE, Any(document_.address));
    }

    Surroundings const& surroundings_;
    CheckedDocument const& document_;
    checking::Result const& result_;
    Reference<css::sheet::XSpreadsheetDocument> report_;
    Reference<css::sheet::XSpreadsheet> sheet_;
    sal_Int32 next_ = 0; // row
};

OUString text_of(Any const& value) {
    OUString text;
    if (double number = 0; value >>= number)
        return OUString::number(number);
    value >>= text;
    return text;
}

} // namespace

void open_check_report(Surroundings const& surroundings, CheckedDocument const& document,
                       checking::Result const& result) {
    Report(surroundings, document, result).open();
}

std::optional<SeenInReport> seen_in_report(Reference<css::sheet::XSpreadsheetDocument> const& report) {
    Reference<XPropertySet> const own(Reference<css::document::XDocumentPropertiesSupplier>(report, UNO_QUERY_THROW)
                                          ->getDocumentProperties()
                                          ->getUserDefinedProperties(),
                                      UNO_QUERY_THROW);
    if (!own->getPropertySetInfo()->hasPropertyByName(id_property))
        return std::nullopt;
    SeenInReport found;
    own->getPropertyValue(id_property) >>= found.id;
    own->getPropertyValue(address_property) >>= found.address;
    Reference<css::container::XIndexAccess> const sheets(report->getSheets(), UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheet> const sheet(sheets->getByIndex(0), UNO_QUERY_THROW);
    auto const cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(true);
    auto const rows = Reference<css::sheet::XCellRangeData>(cursor, UNO_QUERY_THROW)->getDataArray();
    for (auto const& row : rows)
        if (row.getLength() > mark && !text_of(row[seen]).isEmpty())
            found.marks.merge(checking::marks_in(narrow(text_of(row[mark]))));
    return found;
}

} // namespace hearthcell::menu
