#include "extension/archive/report/draw_pages.hpp"

#include "extension/archive/report/page_drawing.hpp"
#include "extension/office/document.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

using Sheet = Reference<css::sheet::XSpreadsheet>;

constexpr sal_Int32 long_side = 29700, short_side = 21000, margin = 1400; // A4, 1/100 mm
constexpr sal_Int32 gap = 400;                                            // between charts
constexpr sal_Int32 points_apart = 3;                                     // columns between the page and its points

Sheet sheet_for(office::Document const& document, std::size_t number, std::string const& name) {
    auto const sheets = document.model()->getSheets();
    Reference<css::container::XIndexAccess> const in_order(sheets, UNO_QUERY_THROW);
    if (static_cast<std::size_t>(in_order->getCount()) <= number)
        sheets->insertNewByName(wide(name), static_cast<sal_Int16>(number));
    Sheet const sheet(in_order->getByIndex(static_cast<sal_Int32>(number)), UNO_QUERY_THROW);
    Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->setName(wide(name));
    return sheet;
}

void set_up_paper(office::Document const& document) {
    auto const families =
        Reference<css::style::XStyleFamiliesSupplier>(document.model(), UNO_QUERY_THROW)->getStyleFamilies();
    Reference<css::container::XNameAccess> const papers(families->getByName("PageStyles"), UNO_QUERY_THROW);
    Reference<css::uno::XInterface> const paper(papers->getByName("Default"), UNO_QUERY_THROW);
    set(paper, "IsLandscape", Any(true));
    set(paper, "Width", Any(long_side));
    set(paper, "Height", Any(short_side));
    for (char const* side : {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"})
        set(paper, side, Any(margin));
    for (char const* line : {"HeaderIsOn", "FooterIsOn"})
        set(paper, line, Any(false));
    set(paper, "CenterHorizontally", Any(true));
    for (char const* direction : {"ScaleToPagesX", "ScaleToPagesY"})
        set(paper, direction, Any(sal_Int16(1)));
}

void write_line(Sheet const& sheet, sal_Int32 row, std::string const& text, float height, sal_Int32 colour) {
    auto const cell = sheet->getCellByPosition(0, row);
    Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)->setString(wide(text));
    set(cell, "CharHeight", Any(height));
    set(cell, "CharColor", Any(colour));
}

void set_widths(Sheet const& sheet, Page const& page) {
    auto const columns = Reference<css::table::XColumnRowRange>(sheet, UNO_QUERY_THROW)->getColumns();
    auto const& widths = page.tables.front().columns;
    for (std::size_t column = 0; column < widths.size(); ++column)
        set(Reference<css::uno::XInterface>(columns->getByIndex(static_cast<sal_Int32>(column)), UNO_QUERY_THROW),
            "Width", Any(static_cast<sal_Int32>(100 * widths[column].width)));
}

/// What stands on a page, from top to bottom.
class Drawing {
public:
    Drawing(office::Document const& document, Sheet const& sheet, Page const& page, Formats const& formats)
        : document_(document), sheet_(sheet), page_(page), formats_(formats) {}

    void draw() {
        write_line(sheet_, 0, page_.title, 18, heading_ground);
        set(sheet_->getCellByPosition(0, 0), "CharWeight", Any(css::awt::FontWeight::BOLD));
        row_ = 1;
        for (std::string const& words : page_.words)
            write_line(sheet_, row_++, words, 10, ink);
        if (!page_.tables.empty())
            set_widths(sheet_, page_);
        for (PageTable const& table : page_.tables) {
            ++row_;
            Block const block = draw_table(sheet_, document_.model(), table, 0, row_, formats_);
            first_ = first_.rows == 0 ? block : first_;
            row_ += block.rows;
        }
        for (std::string const& note : page_.notes)
            write_line(sheet_, row_++, note, 9, faint);
        draw_charts();
        set_print_area();
    }

private:
    [[nodiscard]] sal_Int32 columns() const {
        return page_.tables.empty() ? 8 : static_cast<sal_Int32>(page_.tables.front().columns.size());
    }

    void draw_charts() {
        if (page_.charts.empty())
            return;
        Block points{};
        if (!page_.points.columns.empty()) {
            auto const beside = columns() + points_apart;
            write_line_of_points(beside);
            points = draw_table(sheet_, document_.model(), page_.points, beside, 1, formats_);
        }
        ++row_;
        css::awt::Point place;
        Reference<css::beans::XPropertySet>(sheet_->getCellByPosition(0, row_), UNO_QUERY_THROW)
            ->getPropertyValue("Position") >>= place;
        sal_Int32 total = 0;
        for (PageColumn const& column : page_.tables.front().columns)
            total += 100 * column.width;
        auto const count = static_cast<sal_Int32>(page_.charts.size());
        sal_Int32 const width = (total - gap * (count - 1)) / count;
        sal_Int32 left = 0, height = 0;
        for (std::size_t number = 0; number < page_.charts.size(); ++number) {
            PageChart const& chart = page_.charts[number];
            draw_chart(sheet_, chart, chart.of_points ? points : first_, {left, place.Y, width, 100 * chart.height},
                       number, formats_);
            left += width + gap;
            height = std::max(height, 100 * chart.height);
        }
        row_ = row_at(place.Y + height);
    }

    void write_line_of_points(sal_Int32 column) const {
        Reference<css::text::XTextRange>(sheet_->getCellByPosition(column, 0), UNO_QUERY_THROW)
            ->setString("What the charts are drawn from (not printed)");
    }

    /// The row that begins below a place.
    [[nodiscard]] sal_Int32 row_at(sal_Int32 y) const {
        for (sal_Int32 row = row_;; ++row) {
            css::awt::Point place;
            Reference<css::beans::XPropertySet>(sheet_->getCellByPosition(0, row), UNO_QUERY_THROW)
                ->getPropertyValue("Position") >>= place;
            if (place.Y >= y)
                return row;
        }
    }

    void set_print_area() const {
        auto const all = cells(sheet_, {0, 0, columns(), row_ + 1});
        css::table::CellRangeAddress const area =
            Reference<css::sheet::XCellRangeAddressable>(all, UNO_QUERY_THROW)->getRangeAddress();
        Reference<css::sheet::XPrintAreas>(sheet_, UNO_QUERY_THROW)->setPrintAreas({&area, 1});
    }

    office::Document const& document_;
    Sheet sheet_;
    Page const& page_;
    Formats const& formats_;
    sal_Int32 row_ = 0;
    Block first_{};
};

} // namespace

void draw_pages(office::Office& office, std::vector<Page> const& pages, std::filesystem::path const& file) {
    office::Document document = office::Document::blank(office);
    office::asking("drawing the summary", [&] {
        set_up_paper(document);
        Formats const formats(document.model());
        for (std::size_t number = 0; number < pages.size(); ++number)
            Drawing(document, sheet_for(document, number, pages[number].name), pages[number], formats).draw();
    });
    document.save(file);
}

} // namespace hearthcell::archive
