// The boil of a log: an odd time, a probe that is out, readings too far apart.

#include "functions/diagnosis/boil_limits.hpp"
#include "functions/diagnosis/log_check.hpp"
#include "functions/kernels/log/boil.hpp"

#include <cmath>

namespace hearthcell::diagnosis {
namespace {

using namespace kernels;
using namespace log_limits;

bool is_odd(double minutes) {
    return minutes < boil_limits::shortest || minutes > boil_limits::longest;
}

void report_time(double minutes, unsigned row, Sentence const& sentence, Findings& findings) {
    if (is_odd(minutes))
        findings.add(FindingKind::boil, row, [&](Speaker const& say) {
            return say(sentence, {{"minutes", say.hundredths(minutes)}});
        });
}

/// Without a boiling point: the time to the last few kelvins of the rise.
void report_pace(Log log, Findings& findings) {
    double const top = highest(log);
    if (top < start_of(log) + slow_rise)
        return;
    auto const near = std::ranges::find_if(
        log, [&](Reading const& reading) { return reading.temperature >= top - boil_limits::last_rise; });
    double const minutes = near->minute - log.front().minute; // too few are said of the clock
    report_time(std::max(minutes, boil_limits::shortest), near->row, sentences::heated_at_odd_time, findings);
}

void report_level(BoilBracket const& bracket, LogQuery const& query, Findings& findings) {
    Level const& level = bracket.level;
    double const off = level.read - query.boiling_point;
    if (!level.settled || std::abs(off) <= boil_limits::near_level || off > above_boiling)
        return; // what lies far above is said of the readings themselves
    findings.add(FindingKind::boil, bracket.log[bracket.at].row, [&](Speaker const& say) {
        return say(off < 0 ? sentences::log_settles_below : sentences::log_settles_above,
                   {{"degrees", say.tenths(level.read)}, {"kelvins", say.tenths(std::abs(off))}});
    });
}

/// Whether the readings about the boil alone tell that neither its time nor their distance is worth a word.
bool is_plain(BoilBracket const& bracket) {
    double const earliest = bracket.earliest(), latest = bracket.latest();
    return latest - earliest <= boil_limits::close && earliest >= 2 * boil_limits::shortest &&
           latest <= boil_limits::longest / 2;
}

void report_bracket(Boil const& boil, Findings& findings) {
    if (boil.latest - boil.earliest > boil_limits::far_apart && boil.uncertainty > boil_limits::unsure)
        findings.add(FindingKind::boil, boil.row, [&](Speaker const& say) {
            return say(sentences::readings_far_apart, {{"minutes", say.hundredths(boil.latest - boil.earliest)},
                                                       {"uncertainty", say.hundredths(boil.uncertainty)}});
        });
}

} // namespace

void check_boil(Log log, LogQuery const& query, Findings& findings) {
    if (is_absent(query.boiling_point))
        return report_pace(log, findings);
    constexpr double tolerance = 0.5, hold = 2; // BOILTIME's defaults
    BoilBracket const bracket = boil_bracket(log, {query.boiling_point, tolerance, absent, hold});
    if (bracket.reason != Reason::none)
        return report_pace(log, findings);
    if (is_plain(bracket))
        return report_level(bracket, query, findings);
    Boil const boil = find_boil(bracket);
    report_time(boil.minutes, boil.row, sentences::boils_at_odd_time, findings);
    report_level(bracket, query, findings);
    if (!is_odd(boil.minutes))
        report_bracket(boil, findings);
}

} // namespace hearthcell::diagnosis
