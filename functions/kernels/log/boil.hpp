#pragma once
// When the water boils, in a log whose thermometer or boiling point may be a little out, and how well that is known.
//
// The boil begins when the water comes within the tolerance of its level (level.hpp). The readings before that are
// followed as a heating over a fire that wanders (heating.hpp) and carried on to that mark; what the first readings
// there show confines the result. With a reading every five minutes the heating tells far more than a straight line to
// the next reading does. The uncertainty holds the readings' scatter and rounding, the fire's wandering over the gap
// and the level's own; nothing of a probe that lags. All limits are common practice, no source.

#include "functions/kernels/log/level.hpp"
#include "functions/kernels/log/moment.hpp"

namespace hearthcell::kernels {

namespace boil {
inline constexpr double watch = 0.5, falls_back = 2;     // min and K: what a boil may fall back at once
inline constexpr double blur = 3;                        // scatters: readings as near to the mark may be on either side
inline constexpr double another_boil = 10;               // K that the water must have fallen before it
inline constexpr double slowest = 0.3;                   // K/min, of a heating that no reading tells of
inline constexpr double tellable_gap = 0.2;              // min between readings whose difference is more than noise
inline constexpr double slow_gap = 1;                    // min between readings, from which on one tells the rate
inline constexpr double day = 1440, longest_before = 60; // min
} // namespace boil

struct BoilQuery {
    double boiling_point, tolerance, start, hold; ///< the start may be absent: the first reading
};

struct Boil {
    Reason reason = Reason::none;
    double minutes = 0, uncertainty = 0; ///< from the start
    double earliest = 0, latest = 0;     ///< the readings about the boil
    bool foretold = false;               ///< whether the heating tells, or the two readings alone
    double rate = 0;                     ///< K/min, as it boils
    Level level{};
    unsigned row = 0;      ///< of the first reading at the boil
    std::size_t boils = 0; ///< that the log holds
};

namespace boil {
/// A start on the clock of the log: in minutes, or, where that lies far outside, a part of a day.
inline double on_clock(Log log, double start) {
    double const first = log.front().minute, last = log.back().minute;
    double const earliest = first - std::max(longest_before, last - first);
    for (double const minute : {start, start * day})
        if (minute >= earliest && minute <= last)
            return minute;
    return absent;
}

/// The first reading at a temperature near which most of the next half minute stays: of a logger that is three readings
/// or so, of which one may be wild; of notes it is that reading alone.
inline std::size_t first_at(Log log, double temperature) {
    for (std::size_t i = 0; i < log.size(); ++i) {
        if (log[i].temperature < temperature)
            continue;
        std::size_t near = 0, end = i;
        for (; end < log.size() && log[end].minute <= log[i].minute + watch; ++end)
            near += log[end].temperature >= temperature - falls_back ? 1 : 0;
        if (2 * near > end - i)
            return i;
    }
    return log.size();
}

inline std::size_t count_boils(Log log, double mark) {
    std::size_t count = 0;
    bool boils = false;
    for (Reading const& reading : log) {
        bool const hot = reading.temperature >= mark;
        count += hot && !boils ? 1 : 0;
        boils = hot || (boils && reading.temperature > mark - another_boil);
    }
    return count;
}

/// The rate at which the readings before a mark come to it, and when; at least as fast as the bracket shows.
inline Arrival foretold_by(Log heating, double variance, double mark, double pace) {
    Arrival nothing{absent, absent, std::max(pace, slowest), 1};
    if (heating.size() < 2)
        return nothing;
    Arrival arrived = arrival(taken_together(heating, variance), mark, heating::usual_air);
    arrived.rate = std::max(arrived.rate, pace);
    bool const heats = arrived.rate > 0; // a fire that only cools comes to no mark
    return arrived.never < heating::most_never && heats ? arrived : nothing;
}
} // namespace boil

/// The first reading at the boil and the one before it, without a word about when between them it boiled.
struct BoilBracket {
    Reason reason = Reason::none;
    Log log{}; ///< from the start on
    double start = 0;
    Fineness fineness{};
    Level level{};
    double mark = 0, seen = 0; ///< °C that the boil begins at, and that readings at it show
    std::size_t at = 0;        ///< the first of these readings

    double earliest() const { return log[at - 1].minute - start; }
    double latest() const { return log[at].minute - start; }
};

inline BoilBracket boil_bracket(Log log, BoilQuery const& query) {
    using namespace boil;
    BoilBracket result;
    result.start = is_absent(query.start) ? log.front().minute : on_clock(log, query.start);
    if (is_absent(result.start))
        return {Reason::start_outside_log};
    log = between(log, result.start, log.back().minute);
    if (log.size() < 2)
        return {Reason::too_few_readings};
    result.log = log;
    // How finely it is read shows while it heats.
    std::size_t const heats_until = first_at(log, query.boiling_point - level_rules::farthest_below);
    result.fineness = fineness_of(log.first(std::max<std::size_t>(heats_until, 2)));
    double const scatter = std::sqrt(result.fineness.variance);
    result.level = level_of(log, result.fineness, {query.boiling_point, query.tolerance, query.hold});
    Level const& level = result.level;
    if (level.kind == LevelKind::none)
        return {Reason::no_boil_found};
    result.mark = level.temperature - query.tolerance;
    result.seen = level.settled ? level.read - query.tolerance : std::min(result.mark, level.read - 2 * scatter);
    result.at = first_at(log, result.seen);
    if (result.at == log.size())
        return {Reason::no_boil_found};
    if (result.at == 0)
        return {Reason::boils_from_start};
    return result;
}

inline Boil find_boil(BoilBracket const& bracket) {
    using namespace boil;
    if (bracket.reason != Reason::none)
        return {bracket.reason};
    auto const [reason, log, start, fineness, level, mark, seen, at] = bracket;
    double const scatter = std::sqrt(fineness.variance);
    Boil result;
    result.level = level;
    result.boils = count_boils(log, seen);
    // Readings so near the mark that they may lie on either side are weighed, not followed.
    std::size_t from = at;
    while (from > 1 && log[from - 1].temperature > seen - blur * scatter)
        --from;
    Reading const &last_below = log[from - 1], &first_there = log[at];
    double const gap = first_there.minute - last_below.minute;
    // The least that it heats from the one to the other; between readings close together that is noise.
    double const pace =
        gap < tellable_gap ? 0 : (first_there.temperature - last_below.temperature - blur * scatter) / gap;
    Arrival foretold = foretold_by(log.first(from), fineness.variance, mark, pace);
    // A reading on the way from the mark to the level shows the rate, where the fire has weakened as nothing foretold.
    bool const on_the_way = level.settled && level.temperature == level.read &&
                            first_there.temperature < level.temperature - blur * scatter;
    if (on_the_way && gap >= slow_gap)
        foretold.rate = std::max((first_there.temperature - last_below.temperature) / gap, slowest / blur);
    double const margin = blur * scatter / foretold.rate;
    double const low = std::max(last_below.minute - margin, start);
    double const high = std::min(first_there.minute + margin, log.back().minute);
    Log const after = between(log, first_there.minute, high);
    std::size_t const end = std::max(std::min(at + 2, log.size()), at + after.size());
    bool const falls = end > at + 1 && log[at + 1].temperature < mark - blur * scatter;
    Approach const near{taken_together(log.subspan(from, end - from), fineness.variance), mark, level.temperature,
                        foretold.rate, falls || level.temperature > level.read};
    Moment const moment = weighed(near, foretold, low, high);
    result.minutes = moment.minute - start;
    result.uncertainty = std::hypot(moment.uncertainty, level.uncertainty / foretold.rate);
    result.earliest = std::min(bracket.earliest(), result.minutes);
    result.latest = std::max(bracket.latest(), result.minutes);
    result.row = first_there.row;
    result.foretold = !is_absent(foretold.minute);
    result.rate = foretold.rate;
    return result;
}

inline Boil find_boil(Log log, BoilQuery const& query) {
    return find_boil(boil_bracket(log, query));
}

} // namespace hearthcell::kernels
