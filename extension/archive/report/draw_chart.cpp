#include "extension/archive/report/page_drawing.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/chart/ChartDataCaption.hpp>
#include <com/sun/star/chart/ChartLegendPosition.hpp>
#include <com/sun/star/chart/ChartSymbolType.hpp>
#include <com/sun/star/chart/X3DDisplay.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/LineStyle.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using hearthcell::office::wide;

namespace hearthcell::archive {
namespace {

css::table::CellRangeAddress address(Reference<css::sheet::XSpreadsheet> const& sheet, Block const& data,
                                     std::size_t column) {
    auto const block = cells(sheet, {data.column + static_cast<sal_Int32>(column), data.row, 1, data.rows});
    return Reference<css::sheet::XCellRangeAddressable>(block, UNO_QUERY_THROW)->getRangeAddress();
}

Sequence<css::table::CellRangeAddress> addresses(Reference<css::sheet::XSpreadsheet> const& sheet,
                                                 PageChart const& chart, Block const& data) {
    Sequence<css::table::CellRangeAddress> all(static_cast<sal_Int32>(chart.series.size()) + 1);
    all.getArray()[0] = address(sheet, data, chart.labels);
    for (std::size_t series = 0; series < chart.series.size(); ++series)
        all.getArray()[series + 1] = address(sheet, data, chart.series[series]);
    return all;
}

Reference<css::chart::XChartDocument> embedded(Reference<css::sheet::XSpreadsheet> const& sheet, PageChart const& chart,
                                               Block const& data, Frame const& frame, std::size_t number) {
    auto const charts = Reference<css::table::XTableChartsSupplier>(sheet, UNO_QUERY_THROW)->getCharts();
    // Unique in the whole document.
    rtl::OUString const name = Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName() + " " +
                               rtl::OUString::number(static_cast<sal_Int64>(number + 1));
    bool const names_beside = chart.shape != ChartShape::points; // else the first column is x
    charts->addNewByName(name, css::awt::Rectangle(frame.left, frame.top, frame.width, frame.height),
                         addresses(sheet, chart, data), true, names_beside);
    Reference<css::container::XNameAccess> const names(charts, UNO_QUERY_THROW);
    Reference<css::document::XEmbeddedObjectSupplier> const object(names->getByName(name), UNO_QUERY_THROW);
    return {object->getEmbeddedObject(), UNO_QUERY_THROW};
}

void set_title(Reference<css::uno::XInterface> const& of, char const* shown, std::string const& text,
               Reference<css::drawing::XShape> const& title) {
    set(of, shown, Any(!text.empty()));
    if (text.empty())
        return;
    set(title, "String", Any(wide(text)));
    set(title, "CharHeight", Any(10.0F));
    set(title, "CharColor", Any(ink));
}

void draw_axes(Reference<css::chart::XDiagram> const& diagram, PageChart const& chart, Formats const& formats) {
    Reference<css::chart::XAxisXSupplier> const x(diagram, UNO_QUERY_THROW);
    Reference<css::chart::XAxisYSupplier> const y(diagram, UNO_QUERY_THROW);
    set_title(diagram, "HasXAxisTitle", chart.x_title, x->getXAxisTitle());
    set_title(diagram, "HasYAxisTitle", chart.y_title, y->getYAxisTitle());
    if (chart.shape != ChartShape::points) {
        set(y->getYAxis(), "Min", Any(0.0));
        set(y->getYAxis(), "NumberFormat", Any(formats.of(Look::count)));
        set(y->getYAxis(), "LinkNumberFormatToSource", Any(false));
    } else if (chart.days) {
        set(x->getXAxis(), "NumberFormat", Any(formats.of(Look::day)));
        set(x->getXAxis(), "LinkNumberFormatToSource", Any(false));
    }
    if (chart.low < chart.high)
        for (auto const& axis : {x->getXAxis(), y->getYAxis()}) {
            set(axis, "Min", Any(chart.low));
            set(axis, "Max", Any(chart.high));
        }
    set(x->getXAxis(), "TextBreak", Any(true));
    Reference<css::chart::X3DDisplay> const walls(diagram, UNO_QUERY_THROW);
    set(walls->getWall(), "FillStyle", Any(css::drawing::FillStyle_NONE));
    set(walls->getWall(), "LineStyle", Any(css::drawing::LineStyle_NONE));
    if (chart.shape == ChartShape::bars)
        set(x->getXAxis(), "ReverseDirection", Any(true)); // the first at the top, as in the table
}

void draw_series(Reference<css::chart::XDiagram> const& diagram, PageChart const& chart) {
    for (std::size_t series = 0; series < chart.series.size(); ++series) {
        // Of points the first row is that of x.
        bool const points = chart.shape == ChartShape::points;
        auto const row = diagram->getDataRowProperties(static_cast<sal_Int32>(series + (points ? 1 : 0)));
        sal_Int32 const colour = series == 0 ? colour_lower : colour_higher;
        if (chart.last_is_line && series + 1 == chart.series.size()) {
            set(row, "Color", Any(faint));
            set(row, "SymbolType", Any(css::chart::ChartSymbolType::NONE));
            set(row, "Lines", Any(true));
        } else if (points) {
            set(row, "Color", Any(colour));
            set(row, "SymbolType", Any(css::chart::ChartSymbolType::SYMBOL0));
            set(row, "SymbolSize", Any(css::awt::Size(180, 180)));
            set(row, "Lines", Any(false));
        } else {
            set(row, "FillColor", Any(colour));
            set(row, "DataCaption", Any(css::chart::ChartDataCaption::VALUE));
        }
    }
}

} // namespace

void draw_chart(Reference<css::sheet::XSpreadsheet> const& sheet, PageChart const& chart, Block const& data,
                Frame const& frame, std::size_t number, Formats const& formats) {
    auto const document = embedded(sheet, chart, data, frame, number);
    bool const points = chart.shape == ChartShape::points;
    Reference<css::chart::XDiagram> const diagram(
        Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW)
            ->createInstance(points ? rtl::OUString("com.sun.star.chart.XYDiagram")
                                    : rtl::OUString("com.sun.star.chart.BarDiagram")),
        UNO_QUERY_THROW);
    document->setDiagram(diagram);
    set(diagram, "Vertical", Any(chart.shape == ChartShape::bars));
    set_title(document, "HasMainTitle", chart.title, document->getTitle());
    set(document, "HasLegend", Any(chart.series.size() > 1));
    if (chart.series.size() > 1) {
        set(document->getLegend(), "Alignment", Any(css::chart::ChartLegendPosition_BOTTOM));
        set(document->getLegend(), "LineStyle", Any(css::drawing::LineStyle_NONE));
        set(document->getLegend(), "FillStyle", Any(css::drawing::FillStyle_NONE));
    }
    draw_axes(diagram, chart, formats);
    draw_series(diagram, chart);
}

} // namespace hearthcell::archive
