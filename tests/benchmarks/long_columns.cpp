#include "long_columns.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSpreadsheets.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stdexcept>
#include <vector>

namespace hearthcell::benchmarks {
namespace {

namespace uno = com::sun::star::uno;
using Shape = LongColumns::Shape;

double temperature_at(double minute, Shape shape) {
    if (shape == Shape::cooling)
        return 20 + 70 * std::exp(-minute / 150);
    double const heated = 320 - 300 * std::exp(-5 * minute * 60 / 21380); // 1500 W, 5 W/K, 21380 J/K
    return std::min(heated, 95.0);
}

void write(office::Document& document, Shape shape, int readings) {
    uno::Reference<com::sun::star::container::XIndexAccess> const sheets(document.model()->getSheets(),
                                                                         uno::UNO_QUERY_THROW);
    uno::Reference<com::sun::star::table::XCellRange> const sheet(sheets->getByIndex(0), uno::UNO_QUERY_THROW);
    double const minutes = shape == Shape::stopped_early ? 17 : 40;
    constexpr int at_once = 65536; // a million rows in one call would take a gigabyte on both sides
    for (int first = 0; first < readings; first += at_once) {
        int const count = std::min(at_once, readings - first);
        uno::Sequence<uno::Sequence<uno::Any>> data(count);
        for (int row = 0; row < count; ++row) {
            double const minute = minutes * (first + row) / readings;
            uno::Sequence<uno::Any> line(2);
            line.getArray()[0] <<= minute;
            line.getArray()[1] <<= temperature_at(minute, shape);
            data.getArray()[row] = line;
        }
        uno::Reference<com::sun::star::sheet::XCellRangeData> const range(
            sheet->getCellRangeByPosition(0, first, 1, first + count - 1), uno::UNO_QUERY_THROW);
        range->setDataArray(data);
    }
}

} // namespace

LongColumns::LongColumns(office::Office& office, Shape shape, int readings)
    : document(office::Document::blank(office)) {
    write(document, shape, readings);
}

double LongColumns::milliseconds(std::string const& formula) {
    office::Sheet sheet = document.sheet(0);
    sheet.formula("D1", formula);
    auto const start = std::chrono::steady_clock::now();
    document.recalculate();
    std::chrono::duration<double, std::milli> const taken = std::chrono::steady_clock::now() - start;
    if (std::holds_alternative<office::CellError>(sheet.value("D1")))
        throw std::runtime_error(formula + " gives an error");
    return taken.count();
}

Pair LongColumns::measure(std::string const& name, std::string const& columns, std::string const& further_arguments) {
    std::string const call = name + "(" + columns + further_arguments + ")";
    return measure_in_turn([&] { return milliseconds("=STOVE." + call); },
                           [&] { return milliseconds("=EMPTY." + call); }, 5);
}

} // namespace hearthcell::benchmarks
