#include "timing.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSpreadsheets.hpp>

#include <algorithm>
#include <chrono>

namespace hearthcell::benchmarks {
namespace {

namespace uno = com::sun::star::uno;
namespace sheet = com::sun::star::sheet;

std::string column(std::size_t place) {
    return std::string(1, char('A' + place));
}

void write_inputs(office::Document& document, std::vector<double> const& inputs, int rows) {
    if (inputs.empty())
        return;
    uno::Sequence<uno::Sequence<uno::Any>> data(rows);
    for (int row = 0; row < rows; ++row) {
        uno::Sequence<uno::Any> line(sal_Int32(inputs.size()));
        for (std::size_t i = 0; i < inputs.size(); ++i)
            line.getArray()[i] <<= inputs[i] * (1 + row * 1e-12);
        data.getArray()[row] = line;
    }
    uno::Reference<com::sun::star::container::XIndexAccess> const sheets(document.model()->getSheets(),
                                                                         uno::UNO_QUERY_THROW);
    uno::Reference<com::sun::star::table::XCellRange> const first(sheets->getByIndex(0), uno::UNO_QUERY_THROW);
    uno::Reference<sheet::XCellRangeData> const range(
        first->getCellRangeByPosition(0, 0, sal_Int32(inputs.size()) - 1, rows - 1), uno::UNO_QUERY_THROW);
    range->setDataArray(data);
}

} // namespace

double median(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

Subject::Subject(office::Office& office, std::vector<std::string> const& formulas, std::vector<double> const& inputs,
                 int count, Stands how)
    : document(office::Document::blank(office)), rows(count) {
    write_inputs(document, inputs, rows);
    office::Sheet cells = document.sheet(0);
    constexpr std::size_t place = 17; // beyond the longest list of arguments
    std::string const first = column(place), last = column(place + formulas.size() - 1);
    std::string const beside = first + "1:" + last + std::to_string(rows);
    if (how == Stands::as_array_formula)
        cells.array_formula(beside, formulas.front());
    else
        cells.formulas(first + "1", {formulas});
    if (how == Stands::in_every_row)
        cells.fill_down(beside);
    result_cell = last + "1";
}

double Subject::measure() {
    auto const start = std::chrono::steady_clock::now();
    document.recalculate();
    std::chrono::duration<double, std::micro> const taken = std::chrono::steady_clock::now() - start;
    return taken.count() / rows;
}

Pair measure_in_turn(std::function<double()> const& subject, std::function<double()> const& baseline, int repetitions) {
    std::vector<double> subjects, baselines, ratios;
    subject(); // both warm
    baseline();
    for (int i = 0; i < repetitions; ++i) {
        subjects.push_back(subject());
        baselines.push_back(baseline());
        ratios.push_back(subjects.back() / baselines.back());
    }
    return {median(subjects), median(baselines), median(ratios)};
}

Pair measure_in_turn(Subject& subject, Subject& baseline) {
    return measure_in_turn([&] { return subject.measure(); }, [&] { return baseline.measure(); });
}

} // namespace hearthcell::benchmarks
