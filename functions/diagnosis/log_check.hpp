#pragma once
// STOVE.LOGCHECK: what looks wrong in a log, a sentence a finding with the row it concerns. It takes the columns as
// they are, texts and impossible values included, since those are what it looks for; it changes nothing.

#include "functions/diagnosis/findings.hpp"
#include "functions/kernels/log/readings.hpp"

namespace hearthcell::diagnosis {

using kernels::Log;
using kernels::Reading;

/// Where findings begin. Common practice, no source, but what physics forbids.
namespace log_limits {
// times
inline constexpr double slow_step = 15;      // min between readings, and
inline constexpr double slow_rise = 20;      // K of a rise, and
inline constexpr double slow_rate = 0.3;     // K/min: then minutes and seconds were stored as hours and minutes
inline constexpr double fast_rate = 40;      // K/min: likewise, stored as parts of a day
inline constexpr double gap_share = 2.5;     // of the longest usual step (nine in ten are no longer), and
inline constexpr double gap_minutes = 1;     // min more than that
inline constexpr std::size_t rows_ahead = 5; // in which the times must have caught up after a slip
// temperatures
inline constexpr double no_water_above = 101.5; // °C, where the boiling point is not given: the lowest lands on earth
inline constexpr double above_boiling = 1.5;    // K
inline constexpr double unit_share = 0.8;       // of the readings that must look like °F or K
inline constexpr double unit_above = 3;         // K above the boiling point
inline constexpr double unit_fit = 4;           // K from the reading before, or 1.5 usual steps where those are more
inline constexpr double unit_steps = 1.5;
inline constexpr double jump = 2;             // K that any reading may jump, plus six times the noise
inline constexpr double usual_water = 2500;   // g, where the mass is not given: half a usual pot
inline constexpr double falling_share = 0.25; // of the power, which a pot may lose
inline constexpr std::size_t stuck_readings = 5;
inline constexpr double stuck_rise = 1.5; // K that it should have changed meanwhile, or 2.5 display steps
inline constexpr double stuck_steps = 2.5;
inline constexpr double stuck_minutes = 3;                     // min before it, from which its pace is taken
inline constexpr double near_boiling = 3;                      // K below it, where a steady reading is no surprise
inline constexpr double start_from_air = 10;                   // K
inline constexpr double coldest_start = 2, warmest_start = 40; // °C, where the air is not given
} // namespace log_limits

struct LogQuery {
    double boiling_point, water, air, power; ///< the first three may be absent
    Language language;                       ///< of the findings
};

/// What the readings would be in minutes and °C, as far as it can be told; slips of the clock are left out.
std::vector<Reading> check_clock(std::vector<Reading> log, Findings& findings);

/// Of two readings at least. The boil: when it comes, at which reading of the probe, and how near to it the readings
/// lie.
void check_boil(Log log, LogQuery const& query, Findings& findings);

void check_temperatures(std::vector<Reading> log, LogQuery const& query, Findings& findings);

/// Turns a log that is all in another unit into °C and leaves wild readings out, each with a finding. Two readings at
/// least.
std::vector<Reading> check_jumps(std::vector<Reading> log, LogQuery const& query, Findings& findings);

/// Standard deviation of the readings, from how each differs from the middle of its neighbours; a wild one hardly
/// counts. 0 for so few that one wild reading would decide.
double noise_of(Log log);

/// The temperature that the log starts at, whatever its first reading alone says.
inline double start_of(Log log) {
    double const first = log.front().temperature;
    return log.size() < 3 ? first : std::min(first, kernels::middle(first, log[1].temperature, log[2].temperature));
}

inline double boiling_limit(LogQuery const& query) {
    return is_absent(query.boiling_point) ? log_limits::no_water_above : query.boiling_point;
}

/// Any columns of equal length, taken as they are.
Block check_log(Block const& times, Block const& temperatures, LogQuery const& query);

/// Times, temperatures, boiling point, water mass, air, largest power, language as the catalogue has checked them.
Outcome log_check(std::span<Value const> given);

} // namespace hearthcell::diagnosis
