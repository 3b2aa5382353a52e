// The clock of a log: its unit, and times that do not run forwards.

#include "functions/diagnosis/log_check.hpp"

#include <cmath>
#include <optional>

namespace hearthcell::diagnosis {
namespace {

using namespace kernels;
using namespace log_limits;

/// The steps from each time to the next, where it runs forwards.
std::vector<double> steps_of(Log log) {
    std::vector<double> steps;
    steps.reserve(log.size());
    for (std::size_t i = 1; i < log.size(); ++i)
        if (log[i].minute > log[i - 1].minute)
            steps.push_back(log[i].minute - log[i - 1].minute);
    return steps;
}

/// The step that a share of all steps, which are put into another order, does not exceed; 0 without any.
double step_at(std::vector<double>& steps, double share) {
    if (steps.empty())
        return 0;
    auto const place = steps.begin() + std::ptrdiff_t(share * double(steps.size() - 1));
    std::ranges::nth_element(steps, place);
    return *place;
}

/// Minutes and seconds in cells that stored hours and minutes make a pot that needs hours.
bool is_too_slow(double minutes, double step, double rise) {
    return step >= slow_step && rise >= slow_rise && rise / minutes < slow_rate;
}

/// What a time has to be multiplied by to be in minutes, said as a finding where that is not 1.
double minutes_in(Log log, Findings& findings) {
    double const rise = highest(log) - log.front().temperature;
    auto const [low, high] = std::ranges::minmax(log, {}, &Reading::minute);
    std::vector<double> steps = steps_of(log);
    double const span = high.minute - low.minute, step = step_at(steps, 0.5);
    constexpr double day = 1440, hour = 60;
    bool const within_a_minute = span < 1;
    double scale = 1;
    if (within_a_minute)
        scale = is_too_slow(span * day, step * day, rise) ? day / hour : day;
    else if (rise / span > fast_rate)
        scale = day / hour;
    else if (is_too_slow(span, step, rise))
        scale = 1 / hour;
    if (scale == day)
        findings.add(FindingKind::clock, 0,
                     [](Speaker const& say) { return say(sentences::times_are_parts_of_a_day); });
    else if (scale != 1)
        findings.add(FindingKind::clock, 0, [&](Speaker const& say) {
            return say(sentences::times_are_hours_and_minutes, {{"minutes", say.hundredths(span * scale)}});
        });
    return scale;
}

/// What a time may have been meant to be, when it must lie between two others.
struct Guess {
    double minute;
    Sentence const* sentence;
};

std::optional<Guess> meant(double minute, double after, double before, double scale) {
    Sentence const* const stored = &sentences::guess_hours_and_minutes;
    Guess const factors[] = {
        {minute * 24, stored}, {minute / 60, stored}, {minute * 1440, &sentences::guess_time_of_calc}};
    for (Guess const& guess : factors) {
        bool const of_days = guess.minute > minute; // a column that is in days already holds no further days
        if (guess.minute > after && guess.minute < before && !(of_days && scale != 1))
            return guess;
    }
    for (double const lost : {10.0, 20.0, 30.0, 40.0, 50.0})
        if (minute + lost > after && minute + lost < before)
            return Guess{minute + lost, &sentences::guess_lost_digit};
    return {};
}

/// Walks through the times and leaves out, or mends, those that cannot be right.
class Walk {
public:
    Walk(std::vector<Reading> const& all, double minutes, double usual_step, Findings& to)
        : log(all), scale(minutes), step(usual_step), findings(to) {}

    std::vector<Reading> run() {
        for (std::size_t i = 0; i < log.size(); ++i)
            take(i);
        return std::move(good);
    }

private:
    void take(std::size_t i) {
        double const minute = log[i].minute;
        if (!good.empty() && minute < good.back().minute)
            runs_backwards(i);
        else if (!good.empty() && minute == good.back().minute)
            report(i, [=](Speaker const& say) {
                return say(sentences::time_is_repeated, {{"minutes", say.hundredths(minute)}});
            });
        else if (stands_too_late(i))
            mend(i, log[i + 1].minute,
                 {sentences::time_stands_before, sentences::time_stands_before_guess, minute, log[i + 1].minute,
                  absent});
        else
            good.push_back(log[i]);
    }

    /// Later than the two that follow, which go on from the one before.
    bool stands_too_late(std::size_t i) const {
        if (i + 1 == log.size() || log[i + 1].minute >= log[i].minute)
            return false;
        bool const next_goes_on = good.empty() || log[i + 1].minute > good.back().minute;
        bool const caught_up = i + 2 < log.size() && log[i + 2].minute > log[i].minute;
        return next_goes_on && !caught_up;
    }

    void runs_backwards(std::size_t i) {
        double const before = good.back().minute;
        bool const goes_on_from_here =
            i + 1 < log.size() && log[i + 1].minute > log[i].minute && log[i + 1].minute < before;
        double const next = next_time_after(before, i);
        if (is_number(next) || !goes_on_from_here)
            return mend(
                i, next,
                {sentences::time_runs_backwards, sentences::time_runs_backwards_guess, log[i].minute, absent, before});
        report(i, [before, minute = log[i].minute](Speaker const& say) {
            return say(sentences::second_log_starts,
                       {{"before", say.hundredths(before)}, {"minutes", say.hundredths(minute)}});
        });
        good.push_back(log[i]);
    }

    /// The first time beyond `before` in the rows that follow; a step or three later where the log ends; else absent.
    double next_time_after(double before, std::size_t i) const {
        for (std::size_t j = i + 1; j < log.size() && j <= i + rows_ahead; ++j)
            if (log[j].minute > before)
                return log[j].minute;
        return i + 1 == log.size() ? before + 3 * step : absent;
    }

    /// A time that cannot be right: what is said of it alone, and with what it may have been meant to be.
    struct Slip {
        Sentence const &alone, &with_guess;
        double minutes, next, before;

        std::string words(Speaker const& say, std::optional<Guess> const& guess) const {
            std::string const meant =
                guess ? say(*guess->sentence, {{"minutes", say.hundredths(guess->minute)}}) : std::string();
            return say(guess ? with_guess : alone, {{"minutes", say.hundredths(minutes)},
                                                    {"next", say.hundredths(next)},
                                                    {"before", say.hundredths(before)},
                                                    {"guess", meant}});
        }
    };

    void mend(std::size_t i, double next, Slip const& slip) {
        double const before = good.empty() ? -step : good.back().minute;
        std::optional<Guess> const guess =
            is_number(next) ? meant(log[i].minute, before, next, scale) : std::optional<Guess>();
        report(i, [&](Speaker const& say) { return slip.words(say, guess); });
        if (!guess)
            return;
        good.push_back(log[i]);
        good.back().minute = guess->minute;
    }

    template <class Words> void report(std::size_t i, Words words) {
        findings.add(FindingKind::time, log[i].row, words);
        slips.push_back(log[i].row);
    }

    std::vector<Reading> const& log;
    double const scale, step;
    Findings& findings;
    std::vector<Reading> good;

public:
    std::vector<unsigned> slips; ///< rows whose time is reported, in order
};

/// Steps far longer than the usual ones, unless a slip between them explains it.
void report_gaps(Log log, std::vector<unsigned> const& slips, Findings& findings) {
    std::vector<double> steps = steps_of(log);
    double const usual = step_at(steps, 0.9), typical = step_at(steps, 0.5);
    auto slip = slips.begin();
    for (std::size_t i = 1; i < log.size(); ++i) {
        double const step = log[i].minute - log[i - 1].minute;
        while (slip != slips.end() && *slip <= log[i - 1].row)
            ++slip;
        bool const explained = slip != slips.end() && *slip <= log[i].row;
        if (!explained && step > gap_share * usual && step >= usual + gap_minutes)
            findings.add(FindingKind::gap, log[i].row, [&](Speaker const& say) {
                return say(sentences::gap_in_log,
                           {{"minutes", say.hundredths(step)}, {"usual", say.hundredths(typical)}});
            });
    }
}

} // namespace

std::vector<Reading> check_clock(std::vector<Reading> log, Findings& findings) {
    double const first = log.front().minute;
    if (std::ranges::all_of(log, [first](Reading const& reading) { return reading.minute == first; })) {
        findings.add(FindingKind::clock, 0, [&](Speaker const& say) {
            return say(sentences::all_times_alike, {{"minutes", say.hundredths(first)}});
        });
        return {};
    }
    double const scale = minutes_in(log, findings);
    for (Reading& reading : log)
        reading.minute *= scale;
    std::vector<double> steps = steps_of(log);
    Walk walk(log, scale, step_at(steps, 0.5), findings);
    std::vector<Reading> good = walk.run();
    report_gaps(good, walk.slips, findings);
    return good;
}

} // namespace hearthcell::diagnosis
