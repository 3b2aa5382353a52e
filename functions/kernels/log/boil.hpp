#pragma once
// When the water boils, in a log whose thermometer or boiling point may be a little out.
//
// The boil begins when the readings come within the tolerance of the temperature at which they settle and stay there
// for the hold. They settle on a plateau: three minutes or more, and three readings or more, that rise or fall by less
// than 0.2 K/min, within 3 K of the boiling point. A thermometer that reads low, a boiling point of the wrong altitude
// or weather, and the rolling boil that is commonly called 2 K early all show as a plateau beside the boiling point.
// Without any plateau the boiling point itself is the level, as in a log that ends soon after the boil. Among several
// plateaus the one nearest to the boiling point counts, and none after which the readings rise by more than a
// kelvin.
// Slope, length, the 3 K and the default tolerance are common practice, no source.

#include "functions/kernels/log/crossing.hpp"
#include "functions/kernels/log/line.hpp"

namespace hearthcell::kernels {

namespace boil {
inline constexpr double farthest_plateau = 3;      // K from the boiling point
inline constexpr double flat = 0.2;                // K/min
inline constexpr std::size_t plateau_sections = 3; // a minute each, or a reading each in a sparse log
inline constexpr double further_rise = 1;          // K
inline constexpr double same_level = 0.5;          // K, between sections of one plateau
inline constexpr std::size_t most_sections = 240;  // that a level is the mean of, so that the time stays linear
} // namespace boil

struct BoilQuery {
    double boiling_point, tolerance, start_minute, hold; ///< the start may be absent: the first reading
};

struct Boil {
    Reason reason = Reason::none;
    double minutes = 0;    ///< from the start minute
    double level = absent; ///< of the plateau, where there is one
};

/// The log cut into sections of a minute, each shown by the middle one of its readings.
inline std::vector<Reading> sections_of(Log log) {
    std::vector<Reading> result;
    std::vector<double> temperatures;
    for (std::size_t i = 0; i < log.size();) {
        std::size_t end = i;
        temperatures.clear();
        for (; end < log.size() && (end == i || log[end].minute < log[i].minute + 1); ++end)
            temperatures.push_back(log[end].temperature);
        auto const half = temperatures.begin() + std::ptrdiff_t(temperatures.size() / 2);
        std::ranges::nth_element(temperatures, half);
        result.push_back({(log[i].minute + log[end - 1].minute) / 2, *half, log[i].row});
        i = end;
    }
    return result;
}

/// The level of the plateau nearest to the boiling point; absent where there is none.
inline double plateau_level(Log log, double boiling_point) {
    using namespace boil;
    std::vector<Reading> const sections = sections_of(log);
    // What is still to come decides, so the log is read backwards: the highest level from here on.
    std::vector<double> later(sections.size() + 1, -std::numeric_limits<double>::infinity());
    for (std::size_t i = sections.size(); i-- > 0;)
        later[i] = std::max(later[i + 1], sections[i].temperature);
    double nearest = absent;
    for (std::size_t i = 0; i + plateau_sections <= sections.size(); ++i) {
        Line const line = fit_line(Log(sections).subspan(i, plateau_sections));
        // A level lies within same_level of its line; twice that leaves room for rounding.
        if (std::abs(line.slope) >= flat ||
            std::abs(line.temperature - boiling_point) > farthest_plateau + 2 * same_level)
            continue;
        double sum = 0;
        std::size_t end = i;
        std::size_t const last = std::min(i + most_sections, sections.size());
        for (; end < last && std::abs(sections[end].temperature - line.temperature) <= same_level; ++end)
            sum += sections[end].temperature;
        double const level = end > i ? sum / double(end - i) : line.temperature;
        bool const last_word = later[i + 1] <= level + further_rise;
        bool const nearer = is_absent(nearest) || std::abs(level - boiling_point) < std::abs(nearest - boiling_point);
        if (last_word && nearer && std::abs(level - boiling_point) <= farthest_plateau)
            nearest = level;
    }
    return nearest;
}

inline Boil find_boil(Log log, BoilQuery const& query) {
    double const start = is_absent(query.start_minute) ? log.front().minute : query.start_minute;
    log = between(log, start, log.back().minute);
    if (log.size() < 2)
        return {Reason::too_few_readings};
    Boil result;
    result.level = plateau_level(log, query.boiling_point);
    double const temperature = (is_absent(result.level) ? query.boiling_point : result.level) - query.tolerance;
    Crossing const reached = lasting_crossing(log, temperature, true, query.hold);
    if (reached.kind == CrossingKind::none)
        return {Reason::no_boil_found};
    if (reached.kind == CrossingKind::beyond_from_start)
        return {Reason::boils_from_start};
    constexpr double rounding = 1e-9; // of times that are sums of tenths
    if (log.back().minute + rounding < reached.minute + query.hold)
        return {Reason::boil_not_held};
    result.minutes = reached.minute - start;
    return result;
}

} // namespace hearthcell::kernels
