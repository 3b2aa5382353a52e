#include "by_hand.hpp"
#include "parts.hpp"
#include "timing.hpp"

#include <cmath>
#include <stdexcept>

namespace hearthcell::benchmarks {
namespace {

/// A benchmark against maths that is not the same would tell nothing.
void must_agree(ByHand const& row, Subject const& by_hand, Subject const& ours) {
    double const expected = std::get<double>(ours.first_result());
    double const difference = std::get<double>(by_hand.first_result()) - expected;
    if (!(std::abs(difference) < 1e-6 * std::abs(expected)))
        throw std::runtime_error(row.what + ", written out by hand, differs by " + std::to_string(difference));
}

} // namespace

void measure_against_cells(office::Office& office, Report& report, int rows) {
    report.note("The same maths written out in cells, against our function:");
    report.head({"maths", "µs a row by hand", "our function", "ratio"});
    for (ByHand const& row : written_by_hand()) {
        Subject by_hand(office, row.formulas, row.inputs, rows);
        Subject ours(office, {"=" + row.call}, row.inputs, rows);
        Pair const pair = measure_in_turn(by_hand, ours);
        must_agree(row, by_hand, ours);
        report.row(row.what, {figure(pair.subject, 2), figure(pair.baseline, 2), figure(pair.ratio, 2)});
    }

    report.note("What Calc brings along, against BOILINGPOINT:");
    report.head({"formula", "µs a row", "BOILINGPOINT", "ratio"});
    Subject ours(office, {"=STOVE.BOILINGPOINT(A1)"}, {1240}, rows);
    for (char const* const formula : {"=A1", "=SQRT(LN(A1))", "=SQRTPI(A1)", "=BESSELJ(A1/1000;1)"}) {
        Subject subject(office, {formula}, {1240}, rows);
        Pair const pair = measure_in_turn(subject, ours);
        report.row(formula, {figure(pair.subject, 2), figure(pair.baseline, 2), figure(pair.ratio, 2)});
    }
}

} // namespace hearthcell::benchmarks
