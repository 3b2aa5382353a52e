// The temperatures of a log: their unit, and jumps that no pot can make.

#include "functions/diagnosis/log_check.hpp"
#include "functions/kernels/constants.hpp"
#include "functions/number/median.hpp"

#include <cmath>

namespace hearthcell::diagnosis {
namespace {

using namespace kernels;
using namespace log_limits;

double celsius_of_fahrenheit(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
}
double celsius_of_kelvin(double kelvin) {
    return kelvin - 273.15;
}

struct Unit {
    Sentence const &all, &one, &several; ///< what is said of a whole log, of one reading, of several
    double (*celsius)(double);
    double low, high; ///< what liquid water reads in it
    double least_top; ///< of a log: below it, °F could as well be °C that are a little too high
};
constexpr Unit units[] = {{sentences::temperatures_in_kelvin, sentences::reading_in_kelvin,
                           sentences::readings_in_kelvin, celsius_of_kelvin, 268, 380, 268},
                          {sentences::temperatures_in_fahrenheit, sentences::reading_in_fahrenheit,
                           sentences::readings_in_fahrenheit, celsius_of_fahrenheit, 30, 225, 122}};

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
        findings.add(FindingKind::unit, 0, [&](Speaker const& say) {
            return say(unit.all, {{"reading", say.tenths(top)}, {"degrees", say.tenths(unit.celsius(top))}});
        });
        for (Reading& reading : log)
            reading.temperature = unit.celsius(reading.temperature);
        return;
    }
}

double usual_step(Log log) {
    std::vector<double> steps;
    steps.reserve(log.size());
    for (std::size_t i = 1; i < log.size(); ++i)
        steps.push_back(std::abs(log[i].temperature - log[i - 1].temperature));
    return median(steps);
}

/// How far a reading may lie from an earlier one, upwards and downwards.
class Reach {
public:
    Reach(LogQuery const& query, double noise_of_log, double usual_step)
        : per_minute(query.power * 60 / wbt::specific_heat * 1000 /
                     (is_absent(query.water) ? usual_water : query.water)),
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
    findings.add(FindingKind::reading_unit, first.row, [&](Speaker const& say) {
        return say(count == 1 ? unit.one : unit.several, {{"reading", say.tenths(first.temperature)},
                                                          {"count", std::to_string(count - 1)},
                                                          {"degrees", say.tenths(unit.celsius(first.temperature))}});
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
        findings.add(FindingKind::jump, log[i].row, [&](Speaker const& say) {
            Sentence const& alone =
                rise > 0 ? sentences::reading_above_neighbours : sentences::reading_below_neighbours;
            Sentence const& lasting = rise > 0 ? sentences::jump_up : sentences::jump_down;
            return say(comes_back ? alone : lasting, {{"degrees", say.tenths(log[i].temperature)},
                                                      {"kelvins", say.tenths(std::abs(rise))},
                                                      {"minutes", say.hundredths(log[i].minute - before.minute)}});
        });
        if (!comes_back)
            good.push_back(log[i]);
    }
    return good;
}

} // namespace

double noise_of(Log log) {
    constexpr std::size_t least_readings = 9; // a reading has a say in three differences, of which there are two fewer
    if (log.size() < least_readings)
        return 0;
    std::vector<double> off;
    off.reserve(log.size());
    for (std::size_t i = 1; i + 1 < log.size(); ++i)
        off.push_back(std::abs(log[i - 1].temperature - 2 * log[i].temperature + log[i + 1].temperature));
    return median(off) / 0.6745 / std::sqrt(6.0); // of a normal distribution
}

std::vector<Reading> check_jumps(std::vector<Reading> log, LogQuery const& query, Findings& findings) {
    convert_unit(log, query, findings);
    return follow(log, Reach(query, noise_of(log), usual_step(log)), findings);
}

} // namespace hearthcell::diagnosis
