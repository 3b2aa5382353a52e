#pragma once
// The straight line through readings by least squares, in two passes about their means: digits that the means share
// are gone before anything is squared.

#include "functions/kernels/log/readings.hpp"

#include <cmath>

namespace hearthcell::kernels {

struct Line {
    double slope = 0;                   ///< K/min
    double minute = 0, temperature = 0; ///< of the middle of the readings, which the line passes through
    double scatter = 0;                 ///< standard deviation of the readings about it, K; 0 where two fix it
    double slope_uncertainty = 0;       ///< standard uncertainty of the slope, K/min
};

/// Two readings at least, at different times.
inline Line fit_line(Log log) {
    double const n = double(log.size());
    // The means, each corrected by what its own rounding left over.
    Line line{.minute = log.front().minute, .temperature = log.front().temperature};
    for (int pass = 0; pass < 2; ++pass) {
        double minutes = 0, temperatures = 0;
        for (Reading const& reading : log) {
            minutes += reading.minute - line.minute;
            temperatures += reading.temperature - line.temperature;
        }
        line.minute += minutes / n;
        line.temperature += temperatures / n;
    }
    double spread = 0, product = 0;
    for (Reading const& reading : log) {
        double const minute = reading.minute - line.minute;
        spread += minute * minute;
        product += minute * (reading.temperature - line.temperature);
    }
    line.slope = product / spread;
    if (log.size() < 3)
        return line;
    double squares = 0;
    for (Reading const& reading : log) {
        double const off = reading.temperature - line.temperature - line.slope * (reading.minute - line.minute);
        squares += off * off;
    }
    line.scatter = std::sqrt(squares / (n - 2));
    line.slope_uncertainty = line.scatter / std::sqrt(spread);
    return line;
}

} // namespace hearthcell::kernels
