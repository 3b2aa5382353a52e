#pragma once
// An instrument that had more before it than it can show stays at its highest reading.

#include "functions/kernels/log/readings.hpp"

namespace hearthcell::diagnosis {

/// The longest stretch that stands at the highest reading; none where that is no ceiling.
struct Ceiling {
    double reading = 0;
    std::size_t count = 0; ///< readings of it
    double minutes = 0;    ///< from the first of them to the last
};

/// Three readings in a row or more, while others lie well below. Common practice, no source.
inline Ceiling ceiling_of(kernels::Log log) {
    constexpr std::size_t least = 3;
    constexpr double well_below = 0.9;
    auto const [lowest, highest] = std::ranges::minmax(log, {}, &kernels::Reading::temperature);
    if (lowest.temperature >= well_below * highest.temperature)
        return {};
    Ceiling found{highest.temperature};
    std::size_t run = 0;
    for (std::size_t i = 0; i < log.size(); ++i) {
        run = log[i].temperature == found.reading ? run + 1 : 0;
        if (run > found.count) {
            found.count = run;
            found.minutes = log[i].minute - log[i + 1 - run].minute;
        }
    }
    return found.count >= least ? found : Ceiling{};
}

} // namespace hearthcell::diagnosis
