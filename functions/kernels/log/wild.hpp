#pragma once
// Wild readings: one alone that no water makes, as of a loose contact. The functions that look for a crossing or fit a
// curve leave them out, and EXPLAIN says so; HEATINGRATE does not, which is the plain regression of what it is given.
//
// Common practice, no source: a reading is wild when it stands off from the line between its two neighbours by more
// than 10 K and four times their difference. A first or last reading, which only one neighbour witnesses, is wild when
// it stands off by more than 10 K and four times as steeply as any of the five steps beside it.

#include "functions/kernels/log/readings.hpp"

#include <cmath>

namespace hearthcell::kernels {

namespace wild {
inline constexpr double jump = 10;     // K
inline constexpr double steepness = 4; // times that of the readings beside it
inline constexpr std::size_t witnesses = 5, least_witnesses = 2;

inline double pace(Reading const& a, Reading const& b) {
    return std::abs((b.temperature - a.temperature) / (b.minute - a.minute));
}

/// Whether the reading at(0) at an end of the log is wild; at(i) walks inwards.
template <class At> bool stands_off(At at, std::size_t count) {
    if (count < least_witnesses + 2 || std::abs(at(0).temperature - at(1).temperature) <= jump)
        return false;
    double steepest = 0;
    for (std::size_t i = 1; i + 1 < count && i <= witnesses; ++i)
        steepest = std::max(steepest, pace(at(i), at(i + 1)));
    return pace(at(0), at(1)) > steepness * steepest;
}

inline bool stands_off(Reading const& before, Reading const& here, Reading const& after) {
    double const change = after.temperature - before.temperature;
    double const part = (here.minute - before.minute) / (after.minute - before.minute);
    double const off = std::abs(here.temperature - before.temperature - part * change);
    return off > jump && off > steepness * std::abs(change);
}
} // namespace wild

/// Takes the wild readings out. Gives how many they were.
inline std::size_t tame(std::vector<Reading>& log) {
    std::size_t const all = log.size();
    if (all < 3)
        return 0;
    std::size_t kept = 1;
    for (std::size_t i = 1; i + 1 < all; ++i)
        if (!wild::stands_off(log[kept - 1], log[i], log[i + 1]))
            log[kept++] = log[i];
    log[kept++] = log[all - 1];
    log.resize(kept);
    if (wild::stands_off([&log](std::size_t i) { return log[log.size() - 1 - i]; }, log.size()))
        log.pop_back();
    if (wild::stands_off([&log](std::size_t i) { return log[i]; }, log.size()))
        log.erase(log.begin());
    return all - log.size();
}

} // namespace hearthcell::kernels
