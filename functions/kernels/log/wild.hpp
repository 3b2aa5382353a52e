#pragma once
// Wild readings: one alone that no water makes, as of a loose contact or a slip of the pen. The functions that look for
// a crossing, a line or a curve leave them out, and EXPLAIN says so.
//
// Common practice, no source: a reading is wild when it stands off from the line between its two neighbours by more
// than 10 K and four times their difference; or when it stands above them, or below, by more than water cools from one
// reading to the next (2 K and 3 K/min) and by eight times what readings of this log usually stand off. A first or last
// reading, which only one neighbour witnesses, is wild when it stands off by more than 10 K and four times as steeply
// as any of the five steps beside it; but no rise from notes to notes that a strong fire can make.

#include "functions/kernels/log/readings.hpp"
#include "functions/number/median.hpp"

#include <cmath>

namespace hearthcell::kernels {

namespace wild {
inline constexpr double jump = 10;                   // K
inline constexpr double steepness = 4;               // times that of the readings beside it
inline constexpr double least_fall = 2, fall_by = 3; // K, and K/min: how far water may cool
inline constexpr double usual_share = 8;             // times what readings usually stand off
inline constexpr double note = 2, fastest_rise = 20; // min between notes; K/min
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
    bool const rises = (at(1).temperature - at(0).temperature) / (at(1).minute - at(0).minute) > 0;
    bool const by_fire = rises && std::abs(at(1).minute - at(0).minute) >= note && pace(at(0), at(1)) <= fastest_rise;
    return !by_fire && pace(at(0), at(1)) > steepness * steepest;
}

inline double off_line(Reading const& before, Reading const& here, Reading const& after) {
    double const part = (here.minute - before.minute) / (after.minute - before.minute);
    return std::abs(here.temperature - before.temperature - part * (after.temperature - before.temperature));
}

inline double largest_fall(Reading const& from, Reading const& to) {
    return least_fall + fall_by * (to.minute - from.minute);
}

/// Up and down again, or down and up, faster than water cools, where the log goes on from the reading before.
inline bool is_spike(Reading const& before, Reading const& here, Reading const& after) {
    bool const goes_on = after.temperature >= before.temperature - largest_fall(before, after);
    bool const up =
        here.temperature > before.temperature && here.temperature - after.temperature > largest_fall(here, after);
    bool const down =
        after.temperature > here.temperature && before.temperature - here.temperature > largest_fall(before, here);
    return goes_on && (up || down);
}

/// `after` holds all that follow: where the next reading stands off more, that one is the spike.
inline bool stands_off(Reading const& before, Reading const& here, Log after, double usual) {
    double const off = off_line(before, here, after[0]);
    bool const far = off > jump && off > steepness * std::abs(after[0].temperature - before.temperature);
    bool const next_is = after.size() > 1 && off_line(here, after[0], after[1]) > off;
    return far || (off > usual_share * usual && is_spike(before, here, after[0]) && !next_is);
}

/// How far readings usually stand off from the line between their neighbours.
inline double usual_off(Log log) {
    std::vector<double> offs;
    offs.reserve(log.size());
    for (std::size_t i = 1; i + 1 < log.size(); ++i)
        offs.push_back(off_line(log[i - 1], log[i], log[i + 1]));
    return median(offs);
}
} // namespace wild

/// Takes the wild readings out. Gives how many they were.
inline std::size_t tame(std::vector<Reading>& log) {
    std::size_t const all = log.size();
    if (all < 3)
        return 0;
    double const usual = wild::usual_off(log);
    std::size_t kept = 1;
    for (std::size_t i = 1; i + 1 < all; ++i)
        if (!wild::stands_off(log[kept - 1], log[i], Log(log).subspan(i + 1), usual))
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
