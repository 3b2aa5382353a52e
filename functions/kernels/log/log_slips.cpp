// The temperatures of a log: their unit, jumps, readings above the boiling point, stuck readings, an odd start.

#include "functions/kernels/log/log_check.hpp"

#include <cmath>

namespace hearthcell::kernels {
namespace {

using Kind = Findings::Kind;
using namespace log_limits;

double celsius_of_fahrenheit(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
}
double celsius_of_kelvin(double kelvin) {
    return kelvin - 273.15;
}

struct Unit {
    std::string_view name;
    double (*celsius)(double);
    double low, high; ///< what liquid water reads in it
    double least_top; ///< of a log: below it, °F could as well be °C that are a little too high
};
constexpr Unit units[] = {{"kelvin", celsius_of_kelvin, 268, 380, 268}, {"°F", celsius_of_fahrenheit, 30, 225, 122}};

double boiling_limit(LogQuery const& query) {
    return is_absent(query.boiling_point) ? no_water_above : query.boiling_point;
}

/// The temperature that the log starts at, whatever its first reading alone says.
double start_of(Log log) {
    double const first = log.front().temperature;
    return log.size() < 3 ? first : std::min(first, middle(first, log[1].temperature, log[2].temperature));
}

/// A log that is all in another unit is said so once, and turned into °C for the other checks.
void convert_unit(std::vector<Reading>& log, LogQuery const& query, Findings& findings) {
    double const limit = boiling_limit(query) + unit_above, top = highest(log);
    if (top <= limit)
        return;
    double const first = start_of(log);
    for (Unit const& unit : units) {
        auto const fitting = std::ranges::count_if(log, [&unit](Reading const& reading) {
            return reading.temperature >= unit.low && reading.temperature <= unit.high;
        });
        bool const starts_liquid = unit.celsius(first) > -unit_above; // else only some readings are in that unit
        if (top < unit.least_top || unit.celsius(top) > limit || !starts_liquid ||
            double(fitting) < unit_share * double(log.size()))
            continue;
        findings.add(Kind::unit, 0, [&] {
            return "The temperatures look like " + std::string(unit.name) + ": " + tenths(top) + " would be " +
                   tenths(unit.celsius(top)) + " °C.";
        });
        for (Reading& reading : log)
            reading.temperature = unit.celsius(reading.temperature);
        return;
    }
}

double median(std::vector<double> values) {
    auto const half = values.begin() + std::ptrdiff_t(values.size() / 2);
    std::ranges::nth_element(values, half);
    return *half;
}

double usual_step(Log log) {
    std::vector<double> steps;
    steps.reserve(log.size());
    for (std::size_t i = 1; i < log.size(); ++i)
        steps.push_back(std::abs(log[i].temperature - log[i - 1].temperature));
    return median(std::move(steps));
}

/// Standard deviation of the readings, from how each differs from the middle of its neighbours; wild ones hardly count.
double noise_of(Log log) {
    if (log.size() < 5)
        return 0;
    std::vector<double> off;
    off.reserve(log.size());
    for (std::size_t i = 1; i + 1 < log.size(); ++i)
        off.push_back(std::abs(log[i - 1].temperature - 2 * log[i].temperature + log[i + 1].temperature));
    return median(std::move(off)) / 0.6745 / std::sqrt(6.0); // of a normal distribution
}

/// How far a reading may lie from an earlier one, upwards and downwards.
class Reach {
public:
    Reach(LogQuery const& query, double noise_of_log, double usual_step)
        : per_minute(query.power * 60 / 4.186 * 1000 / (is_absent(query.water) ? usual_water : query.water)),
          allowance(jump + 6 * noise_of_log), other_unit(std::max(unit_fit, unit_steps * usual_step)) {}

    bool holds(Reading const& from, Reading const& to) const {
        double const minutes = to.minute - from.minute, rise = to.temperature - from.temperature;
        return rise <= per_minute * minutes + allowance && rise >= -falling_share * per_minute * minutes - allowance;
    }

    /// Whether a reading that was turned into °C goes on with one beside it.
    bool holds_converted(Reading const& from, Reading const& to) const {
        bool const liquid = std::min(from.temperature, to.temperature) > -unit_above;
        return liquid && std::abs(to.temperature - from.temperature) <= other_unit && holds(from, to);
    }

private:
    double per_minute, allowance, other_unit;
};

Reading in(Unit const& unit, Reading reading) {
    reading.temperature = unit.celsius(reading.temperature);
    return reading;
}

/// The other unit in which a reading goes on from the one before; null where none does.
Unit const* other_unit(Reading const& before, Reading const& reading, Reach const& reach) {
    for (Unit const& unit : units)
        if (reach.holds_converted(before, in(unit, reading)))
            return &unit;
    return nullptr;
}

void report_unit(Reading const& first, std::size_t count, Unit const& unit, Findings& findings) {
    findings.add(Kind::reading_unit, first.row, [&] {
        std::string const which =
            count == 1 ? " looks" : ", like the " + std::to_string(count - 1) + " after it, looks";
        return tenths(first.temperature) + which + " like " + std::string(unit.name) + ": it would be " +
               tenths(unit.celsius(first.temperature)) + " °C.";
    });
}

/// Jumps, wild readings and readings in another unit. Gives the log without them, as far as it goes on in °C.
std::vector<Reading> follow(Log log, Reach const& reach, Findings& findings) {
    std::vector<Reading> good{log.front()};
    if (!reach.holds(log[0], log[1])) // a first reading in another unit shows only by the second
        for (Unit const& unit : units)
            if (Reading const converted = in(unit, log[0]); reach.holds_converted(converted, log[1])) {
                report_unit(log[0], 1, unit, findings);
                good[0] = converted;
                break;
            }
    for (std::size_t i = 1; i < log.size(); ++i) {
        Reading const before = good.back();
        if (reach.holds(before, log[i])) {
            good.push_back(log[i]);
            continue;
        }
        if (Unit const* const unit = other_unit(before, log[i], reach)) {
            std::size_t const first = i;
            for (;
                 i < log.size() && !reach.holds(good.back(), log[i]) && other_unit(good.back(), log[i], reach) == unit;
                 ++i)
                good.push_back(in(*unit, log[i]));
            report_unit(log[first], i - first, *unit, findings);
            --i;
            continue;
        }
        double const rise = log[i].temperature - before.temperature;
        bool const comes_back = i + 1 < log.size() && reach.holds(before, log[i + 1]) &&
                                std::abs(log[i + 1].temperature - before.temperature) <
                                    std::abs(log[i + 1].temperature - log[i].temperature);
        findings.add(Kind::jump, log[i].row, [&] {
            std::string const size = tenths(std::abs(rise)) + " K " + (rise > 0 ? "above" : "below");
            return comes_back ? "A reading of " + tenths(log[i].temperature) + " °C stands " + size +
                                    " its neighbours: no pot jumps like that."
                              : "A jump to " + tenths(log[i].temperature) + " °C, " + size + " the reading " +
                                    hundredths(log[i].minute - before.minute) +
                                    " min before: no pot jumps like that. Was water added or the probe moved?";
        });
        if (!comes_back)
            good.push_back(log[i]);
    }
    return good;
}

void report_above_boiling(Log log, LogQuery const& query, double noise, Findings& findings) {
    double const limit = boiling_limit(query) + above_boiling + 3 * noise;
    for (std::size_t i = 0; i < log.size();) {
        std::size_t end = i;
        double top = -1e9;
        for (; end < log.size() && log[end].temperature > limit; ++end)
            top = std::max(top, log[end].temperature);
        if (end > i)
            findings.add(Kind::above_boiling, log[i].row, [&] {
                std::string const count = end - i == 1 ? "" : " in " + std::to_string(end - i) + " readings from here";
                return "Up to " + tenths(top) + " °C" + count + ", where water boils at " +
                       tenths(boiling_limit(query)) + " °C at most: check probe, altitude and weather.";
            });
        i = std::max(end, i + 1);
    }
}

/// The smallest difference between readings: the step of the display.
double display_step(Log log) {
    double step = 1e9;
    for (std::size_t i = 1; i < log.size(); ++i)
        if (double const change = std::abs(log[i].temperature - log[i - 1].temperature); change > 1e-6)
            step = std::min(step, change);
    return step < 1e9 ? step : 0;
}

void report_stuck(Log log, LogQuery const& query, double noise, Findings& findings) {
    double const least = std::max(stuck_rise, stuck_steps * display_step(log)) + 3 * noise;
    // Below 80 °C no kitchen's water boils; above, a steady reading may be a boil where the boiling point is unknown.
    double const may_boil = is_absent(query.boiling_point) ? 80 : query.boiling_point - near_boiling;
    std::size_t earlier = 0;
    for (std::size_t i = 1, end = 0; i < log.size(); i = end) {
        end = i;
        while (end < log.size() && log[end].temperature == log[i].temperature)
            ++end;
        while (earlier + 1 < i && log[earlier + 1].minute <= log[i].minute - stuck_minutes)
            ++earlier;
        if (end - i < stuck_readings)
            continue;
        double const pace = (log[i].temperature - log[earlier].temperature) / (log[i].minute - log[earlier].minute);
        double const minutes = log[end - 1].minute - log[i].minute;
        bool const boils = pace > 0 && log[i].temperature >= may_boil;
        if (!boils && std::abs(pace) * minutes > least)
            findings.add(Kind::stuck, log[i].row, [&] {
                return "The reading stays at " + tenths(log[i].temperature) + " °C for " + hundredths(minutes) +
                       " min, where it changed by " + tenths(pace) + " K/min before: stuck?";
            });
    }
}

void report_start(Log log, LogQuery const& query, Findings& findings) {
    double const start = start_of(log);
    if (highest(log) < start + slow_rise) // a cooling, or a simmer
        return;
    bool const near = is_absent(query.air) ? start >= coldest_start && start <= warmest_start
                                           : std::abs(start - query.air) <= start_from_air;
    if (!near)
        findings.add(Kind::start, log.front().row, [&] {
            return "The log starts at " + tenths(start) + " °C, " +
                   (is_absent(query.air) ? "unusual for water that has not been heated."
                                         : tenths(std::abs(start - query.air)) + " K " +
                                               (start > query.air ? "above" : "below") + " the air.");
        });
}

} // namespace

void check_temperatures(std::vector<Reading> log, LogQuery const& query, Findings& findings) {
    if (log.size() < 2)
        return;
    convert_unit(log, query, findings);
    double const noise = noise_of(log);
    std::vector<Reading> const good = follow(log, Reach(query, noise, usual_step(log)), findings);
    report_above_boiling(good, query, noise, findings);
    report_stuck(good, query, noise, findings);
    report_start(good, query, findings);
}

} // namespace hearthcell::kernels
