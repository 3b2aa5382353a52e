// What is odd about the temperatures of a log without being a jump: above the boiling point, stuck, an odd start.

#include "functions/diagnosis/log_check.hpp"

#include <cmath>
#include <limits>

namespace hearthcell::diagnosis {
namespace {

using namespace kernels;
using namespace log_limits;

void report_above_boiling(Log log, LogQuery const& query, double noise, Findings& findings) {
    double const limit = boiling_limit(query) + above_boiling + 3 * noise;
    for (std::size_t i = 0; i < log.size();) {
        std::size_t end = i;
        double top = -std::numeric_limits<double>::infinity();
        for (; end < log.size() && log[end].temperature > limit; ++end)
            top = std::max(top, log[end].temperature);
        if (end > i)
            findings.add(FindingKind::above_boiling, log[i].row, [&](Speaker const& say) {
                return say(end - i == 1 ? sentences::above_boiling_once : sentences::above_boiling_in_several,
                           {{"degrees", say.tenths(top)},
                            {"count", std::to_string(end - i)},
                            {"boiling", say.tenths(boiling_limit(query))}});
            });
        i = std::max(end, i + 1);
    }
}

/// The smallest difference between readings: the step of the display; infinite where none differ.
double least_change(Log log) {
    double step = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < log.size(); ++i)
        if (double const change = std::abs(log[i].temperature - log[i - 1].temperature); change > 1e-6)
            step = std::min(step, change);
    return step;
}

void report_stuck(Log log, LogQuery const& query, double noise, Findings& findings) {
    double const least = std::max(stuck_rise, stuck_steps * least_change(log)) + 3 * noise;
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
            findings.add(FindingKind::stuck, log[i].row, [&](Speaker const& say) {
                return say(sentences::reading_is_stuck, {{"degrees", say.tenths(log[i].temperature)},
                                                         {"minutes", say.hundredths(minutes)},
                                                         {"rate", say.tenths(pace)}});
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
        findings.add(FindingKind::start, log.front().row, [&](Speaker const& say) {
            std::string const degrees = say.tenths(start);
            if (is_absent(query.air))
                return say(sentences::start_is_unusual, {{"degrees", degrees}});
            return say(start > query.air ? sentences::start_is_above_air : sentences::start_is_below_air,
                       {{"degrees", degrees}, {"kelvins", say.tenths(std::abs(start - query.air))}});
        });
}

} // namespace

void check_temperatures(std::vector<Reading> log, LogQuery const& query, Findings& findings) {
    if (log.size() < 2)
        return;
    std::vector<Reading> const good = check_jumps(std::move(log), query, findings);
    double const noise = noise_of(good);
    report_above_boiling(good, query, noise, findings);
    report_stuck(good, query, noise, findings);
    report_start(good, query, findings);
    check_boil(good, query, findings);
}

} // namespace hearthcell::diagnosis
