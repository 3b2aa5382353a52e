#include "logs.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSpreadsheets.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stdexcept>

namespace hearthcell::benchmarks {
namespace {

namespace uno = com::sun::star::uno;

/// A = minutes, B = a pot that comes to the boil at 95 °C, C = a pot that cools down, D = one that has not boiled yet.
void write_logs(office::Document& document, int readings) {
    constexpr double minutes_in_all = 100;
    uno::Sequence<uno::Sequence<uno::Any>> data(readings);
    for (int row = 0; row < readings; ++row) {
        double const time = minutes_in_all * row / readings;
        double const wobble = 0.05 * std::sin(row * 1.7); // no two readings alike, as a logger has them
        uno::Sequence<uno::Any> line(4);
        line.getArray()[0] <<= time;
        line.getArray()[1] <<= std::min(95.0, 20 + 75 * time / 80) + wobble;
        line.getArray()[2] <<= 20 + 70 * std::exp(-time / 200) + wobble;
        line.getArray()[3] <<= 20 + 110 * (1 - std::exp(-time / 100)) + wobble;
        data.getArray()[row] = line;
    }
    uno::Reference<com::sun::star::container::XIndexAccess> const sheets(document.model()->getSheets(),
                                                                         uno::UNO_QUERY_THROW);
    uno::Reference<com::sun::star::table::XCellRange> const sheet(sheets->getByIndex(0), uno::UNO_QUERY_THROW);
    uno::Reference<com::sun::star::sheet::XCellRangeData> const range(
        sheet->getCellRangeByPosition(0, 0, 3, readings - 1), uno::UNO_QUERY_THROW);
    range->setDataArray(data);
}

double milliseconds(office::Document& document, office::Sheet& sheet, std::string const& formula) {
    sheet.formula("F1", formula);
    std::vector<double> times;
    for (int i = 0; i < 5; ++i) {
        auto const start = std::chrono::steady_clock::now();
        document.recalculate();
        times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    if (std::holds_alternative<office::CellError>(sheet.value("F1")))
        throw std::runtime_error(formula + " gives an error");
    std::ranges::sort(times);
    return times[times.size() / 2];
}

} // namespace

std::vector<LogTiming> measure_logs(office::Office& office, int readings) {
    office::Document document = office::Document::blank(office);
    write_logs(document, readings);
    office::Sheet sheet = document.sheet(0);
    std::string const last = std::to_string(readings), times = "$A$1:$A$" + last;
    auto const column = [&last](char name) { return std::string("$") + name + "$1:$" + name + "$" + last; };
    struct Subject {
        std::string name, arguments;
    };
    std::vector<LogTiming> result;
    for (Subject const& subject :
         {Subject{"TIMEAT", column('B') + ";60"}, Subject{"BOILTIME", column('B') + ";95"},
          Subject{"HEATINGRATE", column('B')}, Subject{"HEATGAIN", column('B') + ";5000"},
          Subject{"HEATLOSS", column('C') + ";5000;20"}, Subject{"BOILFORECAST", column('D') + ";95;20"},
          Subject{"LOGCHECK", column('B') + ";95;5000"}}) {
        std::string const call = subject.name + "(" + times + ";" + subject.arguments + ")";
        result.push_back({subject.name, milliseconds(document, sheet, "=STOVE." + call),
                          milliseconds(document, sheet, "=EMPTY." + call)});
    }
    return result;
}

} // namespace hearthcell::benchmarks
