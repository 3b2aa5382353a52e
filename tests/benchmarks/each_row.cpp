#include "parts.hpp"
#include "timing.hpp"

#include <cmath>
#include <stdexcept>

namespace hearthcell::benchmarks {

void measure_each_row(office::Office& office, Report& report) {
    constexpr int rows = 100000;
    std::string const call = "STOVE.EACHROW(\"DRYMASS\";A1:A100000;B1:B100000)";
    std::vector<double> const inputs{520, 0.14};
    Subject single(office, {"=STOVE.DRYMASS(A1;B1)"}, inputs, rows);
    report.note("EACHROW over 100,000 rows, against DRYMASS in 100,000 cells:");
    report.head({"formula", "µs a row", "single cells", "ratio"});
    for (auto const& [formula, stands] :
         {std::pair("=SUM(" + call + ")", Stands::in_one_cell), std::pair("=" + call, Stands::as_array_formula)}) {
        Subject subject(office, {formula}, inputs, rows, stands);
        Pair const pair = measure_in_turn(subject, single);
        if (!(std::get<double>(subject.first_result()) >= 447.2 * (1 - 1e-12)))
            throw std::runtime_error(formula + " does not work through its rows");
        report.row(formula, {figure(pair.subject, 2), figure(pair.baseline, 2), figure(pair.ratio, 2)});
    }
}

} // namespace hearthcell::benchmarks
