#include "extension/archive/report/page_drawing.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/table/CellHoriJustify.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/text/XTextContent.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::wide;
using rtl::OUString;

namespace hearthcell::archive {
namespace {

constexpr sal_Int16 indent = 300; // 1/100 mm

Any any_of(PageCell const& cell) {
    if (auto const* const number = std::get_if<double>(&cell.value))
        return Any(*number);
    if (auto const* const text = std::get_if<std::string>(&cell.value))
        return Any(wide(*text));
    return Any(OUString());
}

Sequence<Sequence<Any>> data_of(PageTable const& table) {
    Sequence<Sequence<Any>> data(static_cast<sal_Int32>(table.rows.size()) + 1);
    auto* const rows = data.getArray();
    rows[0].realloc(static_cast<sal_Int32>(table.columns.size()));
    for (std::size_t column = 0; column < table.columns.size(); ++column)
        rows[0].getArray()[column] <<= wide(table.columns[column].heading);
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        rows[row + 1].realloc(static_cast<sal_Int32>(table.columns.size()));
        for (std::size_t column = 0; column < table.columns.size(); ++column)
            rows[row + 1].getArray()[column] = any_of(table.rows[row].at(column));
    }
    return data;
}

/// The text of a cell becomes a link.
void link(Reference<css::table::XCell> const& cell, Reference<css::sheet::XSpreadsheetDocument> const& document,
          PageCell const& content) {
    Reference<css::text::XTextContent> const field(Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW)
                                                       ->createInstance("com.sun.star.text.TextField.URL"),
                                                   UNO_QUERY_THROW);
    set(field, "URL", Any(office::file_url(content.link)));
    set(field, "Representation", Any(wide(std::get<std::string>(content.value))));
    Reference<css::text::XText> const text(cell, UNO_QUERY_THROW);
    text->setString(OUString());
    text->insertTextContent(Reference<css::text::XTextRange>(text->createTextCursor(), UNO_QUERY_THROW), field, false);
}

void draw_heading(Reference<css::table::XCellRange> const& heading) {
    set(heading, "CellBackColor", Any(heading_ground));
    set(heading, "CharColor", Any(white));
    set(heading, "CharWeight", Any(css::awt::FontWeight::BOLD));
}

} // namespace

Reference<css::table::XCellRange> cells(Reference<css::sheet::XSpreadsheet> const& sheet, Block const& block) {
    return sheet->getCellRangeByPosition(block.column, block.row, block.column + block.columns - 1,
                                         block.row + block.rows - 1);
}

void set(Reference<css::uno::XInterface> const& object, char const* property, Any const& value) {
    Reference<css::beans::XPropertySet>(object, UNO_QUERY_THROW)
        ->setPropertyValue(OUString::createFromAscii(property), value);
}

Formats::Formats(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    auto const formats = Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
    // A sign says what is larger and smaller, not a colour.
    constexpr std::array texts{"@", "#,##0", "+0.000%;-0.000%;0%", "General", "YYYY-MM-DD"}; // in the order of Look
    css::lang::Locale const english("en", "US", "");
    for (std::size_t look = 0; look < texts.size(); ++look) {
        OUString const text = OUString::createFromAscii(texts.at(look));
        sal_Int32 const known = formats->queryKey(text, english, false);
        keys_.at(look) = known >= 0 ? known : formats->addNew(text, english);
    }
}

Block draw_table(Reference<css::sheet::XSpreadsheet> const& sheet,
                 Reference<css::sheet::XSpreadsheetDocument> const& document, PageTable const& table, sal_Int32 column,
                 sal_Int32 row, Formats const& formats) {
    Block const whole{column, row, static_cast<sal_Int32>(table.columns.size()),
                      static_cast<sal_Int32>(table.rows.size()) + 1};
    for (std::size_t one = 0; one < table.columns.size() && whole.rows > 1; ++one) {
        auto const below = cells(sheet, {column + static_cast<sal_Int32>(one), row + 1, 1, whole.rows - 1});
        set(below, "NumberFormat", Any(formats.of(table.columns[one].look)));
        if (table.columns[one].look == Look::text)
            set(below, "IsTextWrapped", Any(true));
    }
    auto const block = cells(sheet, whole);
    Reference<css::sheet::XCellRangeData>(block, UNO_QUERY_THROW)->setDataArray(data_of(table));
    set(block, "VertJustify", Any(css::table::CellVertJustify2::TOP));
    draw_heading(cells(sheet, {column, row, whole.columns, 1}));
    for (std::size_t one = 0; one < table.columns.size(); ++one)
        if (table.columns[one].look != Look::text)
            set(cells(sheet, {column + static_cast<sal_Int32>(one), row, 1, whole.rows}), "HoriJustify",
                Any(css::table::CellHoriJustify_RIGHT));
    for (std::size_t one = 1; one < table.columns.size(); ++one) // a text after a number keeps its distance
        if (table.columns[one].look == Look::text) {
            auto const texts = cells(sheet, {column + static_cast<sal_Int32>(one), row, 1, whole.rows});
            set(texts, "HoriJustify", Any(css::table::CellHoriJustify_LEFT));
            set(texts, "ParaIndent", Any(indent));
        }
    for (sal_Int32 line = 2; line < whole.rows; line += 2)
        set(cells(sheet, {column, row + line, whole.columns, 1}), "CellBackColor", Any(band));
    for (std::size_t line = 0; line < table.rows.size(); ++line)
        for (std::size_t one = 0; one < table.columns.size(); ++one)
            if (!table.rows[line].at(one).link.empty())
                link(block->getCellByPosition(static_cast<sal_Int32>(one), static_cast<sal_Int32>(line) + 1), document,
                     table.rows[line].at(one));
    // A link does not make its row higher by itself.
    set(Reference<css::table::XColumnRowRange>(block, UNO_QUERY_THROW)->getRows(), "OptimalHeight", Any(true));
    return whole;
}

} // namespace hearthcell::archive
