#pragma once
// When a log passes a temperature for good.
//
// A passage lasts when, of the readings of the time that follows it (a minute, for STOVE.TIMEAT; at least three
// readings, while there are so many), three in four or more stay beyond. A single reading is no passage, and one
// that falls back for a moment, as when the lid is lifted, does not undo it. Where noise makes the readings waver about
// the level, the passage is put where the fewest readings stand on the wrong side; the time itself is a straight line
// between the two readings around it.

#include "functions/kernels/log/readings.hpp"

#include <cmath>
#include <limits>

namespace hearthcell::kernels {

enum class CrossingKind { found, beyond_from_start, none };

struct Crossing {
    CrossingKind kind = CrossingKind::none;
    double minute = 0;
    std::size_t next = 0; ///< the first reading beyond
};

namespace crossing {
inline constexpr double watch = 1;            // min that TIMEAT looks ahead
inline constexpr std::size_t least_ahead = 3; // readings
inline bool is_beyond(Reading const& reading, double level, bool rising) {
    return rising ? reading.temperature >= level : reading.temperature <= level;
}

/// How many readings count as those that follow reading i: one past the last of them, from which the search for that of
/// the next reading goes on.
inline std::size_t end_of_watch(Log log, std::size_t i, std::size_t from, double minutes) {
    std::size_t end = from;
    while (end < log.size() && log[end].minute <= log[i].minute + minutes)
        ++end;
    return std::max(end, std::min(i + least_ahead, log.size()));
}

inline double interpolated(Reading const& before, Reading const& after, double level) {
    double const part = (level - before.temperature) / (after.temperature - before.temperature);
    return before.minute + part * (after.minute - before.minute);
}

/// The passage between the readings from first to last that leaves fewest on the wrong side; the mean of equal ones.
inline Crossing best_passage(Log log, double level, bool rising, std::size_t first, std::size_t last) {
    std::ptrdiff_t wrong = 0, fewest = std::numeric_limits<std::ptrdiff_t>::max();
    Crossing result;
    double equal = 0;
    for (std::size_t i = first; i < last; ++i) { // up to a constant, `wrong` counts those of a passage before i
        bool const beyond = is_beyond(log[i], level, rising);
        bool const passes = i > 0 && beyond && !is_beyond(log[i - 1], level, rising);
        if (passes && wrong <= fewest) {
            equal = wrong < fewest ? 1 : equal + 1;
            fewest = wrong;
            double const minute = interpolated(log[i - 1], log[i], level);
            double const mean = equal == 1 ? minute : result.minute + (minute - result.minute) / equal;
            result = {CrossingKind::found, mean, i};
        }
        wrong += beyond ? 1 : -1;
    }
    return result;
}
} // namespace crossing

/// The first lasting passage of a level, upwards or downwards, that lasts for so many minutes. Linear in the readings.
inline Crossing lasting_crossing(Log log, double level, bool rising, double minutes = crossing::watch) {
    using namespace crossing;
    std::size_t end = 0, beyond = 0; // of the readings that follow i
    for (std::size_t i = 0; i < log.size(); ++i) {
        for (std::size_t const next_end = end_of_watch(log, i, end, minutes); end < next_end; ++end)
            beyond += is_beyond(log[end], level, rising) ? 1 : 0;
        bool const here = is_beyond(log[i], level, rising);
        if (here && 4 * beyond >= 3 * (end - i)) {
            if (i == 0)
                return {CrossingKind::beyond_from_start, log[0].minute, 0};
            // Back to a reading that is not beyond, so that there is a passage to be found. Where all before i are
            // beyond, one that is not comes after i, or else the first reading would have lasted.
            std::size_t first = i;
            while (first > 0 && (log[first].minute >= log[i].minute - minutes || first + least_ahead > i ||
                                 is_beyond(log[first], level, rising)))
                --first;
            return best_passage(log, level, rising, first, end);
        }
        beyond -= here ? 1 : 0;
    }
    return {};
}

/// The minute at which a log first passes a target for good: upwards when it starts below it, else downwards.
inline Crossing time_at(Log log, double target) {
    if (log.front().temperature == target)
        return {CrossingKind::found, log.front().minute, 0};
    return lasting_crossing(log, target, log.front().temperature < target);
}

} // namespace hearthcell::kernels
