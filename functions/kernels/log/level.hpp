#pragma once
// The temperature at which the readings of a log settle as the water boils, by the probe that read them.
//
// A level is where readings stay together, within half a kelvin (a step of a coarse display), for the hold; two are
// enough where they are further apart than that. The highest such place counts, so that water that simmers lower after
// its boil moves nothing. Where nothing stays together up there, a reading within the tolerance of the boiling point is
// a boil as well, held or not: the pot was taken off, the fan turned down, the log ended. Below the boiling point a
// level counts to 3 K, and only after a heating that stopped there: water that creeps on settles nowhere.
// All limits are common practice, no source.

#include "functions/kernels/log/scatter.hpp"
#include "functions/number/median.hpp"

#include <numbers>

namespace hearthcell::kernels {

namespace level_rules {
inline constexpr double farthest_below = 3, farthest_above = 6; // K from the boiling point
inline constexpr double together = 0.5;                         // K
inline constexpr double section_length = 0.5;                   // min
inline constexpr double peak = 0.3;                             // K above the others of a level: not of it
inline constexpr double largest_overshoot = 2;                  // K, of a probe near the bottom as the boil sets in
inline constexpr double hiding_gap = 1.5;                       // min between readings, in which a boil may hide
inline constexpr double hidden_share = 0.75;                    // of the way up to the boiling point, on which it lay
inline constexpr double flat = 0.2;                             // K/min, of a level below the boiling point
inline constexpr double slows_down = 4;                         // times, from the heating before such a level
inline constexpr double approach = 5;                           // K below it, from which that heating is judged
inline constexpr std::size_t most_sections = 240;               // that a level is the middle of
inline constexpr double probe_offset = 0.4;                     // K, where only the boiling point tells the level
inline constexpr double wandering = 0.05;                       // K, of a level
} // namespace level_rules

enum class LevelKind { none, held, not_held };

struct Level {
    LevelKind kind = LevelKind::none;
    double temperature = 0; ///< at which the water boils, as this probe shows it
    double read = 0;        ///< what was read of it
    double uncertainty = 0; ///< of the first
    bool settled = false;   ///< told by readings that stay together, not by the boiling point
};

struct LevelQuery {
    double boiling_point, tolerance, hold;
};

/// The log cut into sections of half a minute, each shown by the middle one of its readings.
inline std::vector<Reading> sections_of(Log log) {
    std::vector<Reading> result;
    double const most = (log.back().minute - log.front().minute) / level_rules::section_length + 1;
    result.reserve(std::size_t(std::min(most, double(log.size()))));
    std::vector<double> temperatures;
    for (std::size_t i = 0; i < log.size();) {
        std::size_t end = i;
        temperatures.clear();
        for (; end < log.size() && (end == i || log[end].minute < log[i].minute + level_rules::section_length); ++end)
            temperatures.push_back(log[end].temperature);
        result.push_back({(log[i].minute + log[end - 1].minute) / 2, median(temperatures), log[i].row});
        i = end;
    }
    return result;
}

namespace level_rules {
/// Sections that stay together.
struct Stand {
    std::size_t first = 0, end = 0;
    double temperature = 0;
};

/// The highest two neighbours that stand together, and what stands with them.
inline Stand highest_stand(std::vector<Reading> const& sections, double low, double high, double apart, double wide) {
    Stand best;
    for (std::size_t i = 0; i + 1 < sections.size(); ++i) {
        Reading const &here = sections[i], &next = sections[i + 1];
        double const middle = (here.temperature + next.temperature) / 2;
        bool const stands = std::abs(next.temperature - here.temperature) <= apart;
        if (stands && middle >= low && middle <= high && (best.end == 0 || middle > best.temperature))
            best = {i, i + 2, middle};
    }
    if (best.end == 0)
        return best;
    auto const stays = [&](std::size_t i) { return std::abs(sections[i].temperature - best.temperature) <= wide; };
    while (best.first > 0 && stays(best.first - 1))
        --best.first;
    while (best.end < sections.size() && stays(best.end))
        ++best.end;
    std::vector<double> temperatures;
    for (std::size_t i = best.first; i < std::min(best.end, best.first + most_sections); ++i)
        temperatures.push_back(sections[i].temperature);
    best.temperature = median(temperatures);
    return best;
}

inline double highest_section(std::vector<Reading> const& sections, std::size_t end, double high) {
    double top = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < std::min(end, sections.size()); ++i)
        if (sections[i].temperature <= high)
            top = std::max(top, sections[i].temperature);
    return top;
}

/// Whether a heating ends in this stand, rather than creeps through it.
inline bool stops_there(std::vector<Reading> const& sections, Stand const& stand) {
    Reading const &first = sections[stand.first], &last = sections[stand.end - 1];
    double const pace = (last.temperature - first.temperature) / (last.minute - first.minute);
    bool const rises_on = sections.back().temperature > stand.temperature + 1.5 * together;
    if (std::abs(pace) >= flat || rises_on)
        return false;
    std::size_t before = stand.first;
    while (before > 0 && sections[before].temperature > first.temperature - approach)
        --before;
    if (before == stand.first)
        return false;
    double const heating =
        (first.temperature - sections[before].temperature) / (first.minute - sections[before].minute);
    return heating > slows_down * std::max(pace, flat / 2);
}

/// The level by the boiling point, of which the probe may be out, where the water was seen as high as this.
inline Level level_by_boiling_point(double boiling_point, double seen, double variance) {
    // A normal distribution, cut off below what was seen.
    double const spread = std::hypot(probe_offset, std::sqrt(variance)), cut = (seen - boiling_point) / spread;
    double const density = std::exp(-cut * cut / 2) / std::sqrt(2 * std::numbers::pi);
    double const above = std::max(std::erfc(cut / std::sqrt(2.0)) / 2, 1e-12), ratio = density / above;
    return {LevelKind::not_held, boiling_point + spread * ratio, seen,
            spread * std::sqrt(std::max(1 + cut * ratio - ratio * ratio, 0.01)), false};
}
} // namespace level_rules

inline Level level_of(Log log, Fineness const& fineness, LevelQuery const& query) {
    using namespace level_rules;
    std::vector<Reading> const sections = sections_of(log);
    double const scatter = std::sqrt(fineness.variance), rounding = fineness.step / std::sqrt(12.0);
    double const apart = std::max({together, 1.01 * fineness.step, 2 * scatter});
    double const low = query.boiling_point - farthest_below, high = query.boiling_point + farthest_above;
    double const reached = query.boiling_point - query.tolerance;
    Stand const stand = highest_stand(sections, low, high, apart, std::max(apart, 3.5 * scatter));
    if (stand.end > 0) {
        double const n = std::min(double(stand.end - stand.first), 10.0);
        double const above = highest_section(sections, stand.first + 2, high) - stand.temperature;
        bool const held = sections[stand.end - 1].minute - sections[stand.first].minute >= query.hold - section_length;
        bool const is_top = above <= std::max({peak, 3 * scatter, 1.01 * fineness.step});
        Level level{LevelKind::held, stand.temperature, stand.temperature,
                    std::hypot(rounding, scatter / std::sqrt(n), wandering), true};
        bool const at_boil = stand.temperature >= reached;
        if (held && is_top && at_boil)
            return level;
        if (held && is_top && stops_there(sections, stand)) {
            double const below = query.boiling_point - stand.temperature;
            level.uncertainty = std::hypot(level.uncertainty, below / std::sqrt(12.0));
            // A boil between two readings far apart, and a simmer after it, look the same as a probe that reads low.
            bool const may_hide = sections[stand.first].minute - sections[stand.first - 1].minute > hiding_gap;
            level.temperature += may_hide ? hidden_share * below : 0;
            return level;
        }
        // A peak and a lower stand at the boiling point: the boil and a simmer, or a probe that overshot.
        if (held && at_boil && stand.temperature <= query.boiling_point + query.tolerance &&
            above <= largest_overshoot) {
            level.temperature += above / 2;
            level.uncertainty = std::hypot(level.uncertainty, above / std::sqrt(12.0));
            return level;
        }
    }
    double const top = highest_section(sections, sections.size(), high);
    return top >= reached ? level_by_boiling_point(query.boiling_point, top - scatter / 2, fineness.variance) : Level{};
}

} // namespace hearthcell::kernels
