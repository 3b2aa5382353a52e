// Writes tests/log/RESULTS.md to standard output.

#include "accuracy.hpp"

#include <cmath>
#include <cstdio>

namespace {

using namespace hearthcell::tests;

void print_share(double share) {
    std::printf(std::isnan(share) ? " – |" : " %.0f %% |", 100 * share);
}

void print_time(double minutes) {
    std::printf(std::isnan(minutes) ? " – / " : " %.2f / ", minutes);
}

void print_row(AccuracyRow const& row, Accuracy const& found, bool uncertain_at_first) {
    std::printf("| %s | %.2f / %.2f | %.0f %% | %.0f %% | ", row.log.data(), found.bias, found.rms, 100 * found.within,
                100 * found.answered);
    std::printf("%.2f / %.2f |", row.wanted.bias, row.wanted.rms);
    print_share(row.wanted.within > 0 ? row.wanted.within : hearthcell::absent);
    print_time(row.at_first.bias);
    std::printf(std::isnan(row.at_first.rms) ? "– |" : "%.2f |", row.at_first.rms);
    if (uncertain_at_first)
        print_share(row.at_first.within);
    print_share(row.at_first.answered);
    std::printf("\n");
}

void print_head(char const* title, bool uncertain_at_first) {
    std::printf("\n## %s\n\n| log | bias / rms, min | within 2 u | answered | wanted: bias / rms | within 2 u | "
                "first edition: bias / rms | %sanswered |\n|---|---|---|---|---|---|---|%s---|\n",
                title, uncertain_at_first ? "within 2 u | " : "", uncertain_at_first ? "---|" : "");
}

} // namespace

int main() {
    std::printf(
        "# How well a boil time and a forecast hold\n\n"
        "Written by `build/tests/log/hearthcell-log-results > tests/log/RESULTS.md`; the same bounds are held by the "
        "test "
        "`log`.\n\n"
        "Simulated boils (`simulated.hpp`): 4.4 kg of water, 1.0 to 2.2 kW that wander by 10 %% and are remembered for "
        "3 "
        "min, 2 to 6 W/K, a probe that is out by 0.4 K and scatters by 0.1 K, readings that begin anywhere; 500 logs a "
        "row, "
        "fixed seeds. The truth is the minute at which the water comes within 0.5 K of its boiling temperature. "
        "'Within "
        "2 u': the share of the answers whose truth lies within two standard uncertainties. The first edition told no "
        "uncertainty of a boil time; its figures are of its own kernels on the same logs (commit a089a9f).\n");
    print_head("BOILTIME", false);
    for (AccuracyRow const& row : boils())
        print_row(row, accuracy_of_boils(row.bench), false);
    print_head("BOILFORECAST", true);
    for (AccuracyRow const& row : forecasts())
        print_row(row, accuracy_of_forecasts(row.bench), true);
    return 0;
}
