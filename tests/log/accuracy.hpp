#pragma once
// How well BOILTIME and BOILFORECAST find the truth of simulated logs, a row a kind of log, with what is wanted of each
// and what the first edition's method gave on the same logs.

#include "simulated.hpp"

#include <string_view>

namespace hearthcell::tests {

/// Of the answers less the truth: their mean and root mean square in min, the share within two standard uncertainties;
/// and the share of the logs that were answered.
struct Accuracy {
    double bias = 0, rms = 0, within = 0, answered = 0;
};

struct AccuracyRow {
    std::string_view log;
    Bench bench;
    Accuracy wanted;   ///< bias and rms at most, shares at least
    Accuracy at_first; ///< measured with the first edition's kernels, as of commit a089a9f
};

std::span<AccuracyRow const> boils();
std::span<AccuracyRow const> forecasts();

Accuracy accuracy_of_boils(Bench const& bench);
Accuracy accuracy_of_forecasts(Bench const& bench);

} // namespace hearthcell::tests
