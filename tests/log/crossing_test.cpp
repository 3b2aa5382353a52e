#include "logs.hpp"

#include "functions/kernels/log/crossing.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

using kernels::Crossing;
using kernels::CrossingKind;

/// 60 °C where there is an X, else 40 °C, so that a passage of 50 °C stands in the middle between two readings.
std::vector<kernels::Reading> readings_of(std::string_view pattern, double step) {
    std::vector<kernels::Reading> log;
    for (char const c : pattern)
        log.push_back({double(log.size()) * step, c == 'X' ? 60.0 : 40.0, 0});
    return log;
}

/// The first reading beyond a passage that lasts for so many minutes, as its place with a half step before it.
double passage(std::string_view pattern, double step, double minutes) {
    Crossing const found = kernels::lasting_crossing(readings_of(pattern, step), 50, true, minutes);
    EXPECT_EQ(found.kind, CrossingKind::found) << pattern;
    return found.minute / step;
}
CrossingKind kind(std::string_view pattern, double step, double minutes) {
    return kernels::lasting_crossing(readings_of(pattern, step), 50, true, minutes).kind;
}

Crossing best(std::string_view pattern) {
    return kernels::crossing::best_passage(readings_of(pattern, 1), 50, true, 0, pattern.size());
}

} // namespace

TEST(TimeAt, InterpolatesBetweenTheReadingsAroundTheTarget) {
    // 22 + 2 (94.983 - 93.2)/(95.4 - 93.2), by hand.
    EXPECT_NEAR(number_of(call_log("TIMEAT", {{22, 24}, {93.2, 95.4}}, {94.983})), 23.6209, 5e-5);
    EXPECT_NEAR(number_of(call_log("TIMEAT", {{0, 10, 20}, {90, 80, 72}}, {76.0})), 15, 1e-12); // a cooling
    EXPECT_EQ(number_of(call_log("TIMEAT", {{3, 10, 20}, {20, 30, 50}}, {20.0})), 3);           // at its first reading
}

TEST(TimeAt, IsNotFooledByASpikeAnywhere) {
    Pot const pot;
    LogColumns const clean = log_of(pot, 0.5, 22);
    double const truth = number_of(call_log("TIMEAT", clean, {80.0}));
    EXPECT_NEAR(truth, pot.minutes_to(80), 0.01); // the chord of half a minute
    for (double const wild : {-5.0, 119.0}) {
        for (std::size_t place = 0; place < clean.minutes.size(); ++place) {
            LogColumns log = clean;
            log.temperatures[place] = wild;
            double const found = number_of(call_log("TIMEAT", log, {80.0}));
            EXPECT_NEAR(found, truth, 0.5) << wild << " °C in row " << place + 1; // a reading at the crossing is lost
        }
    }
}

TEST(TimeAt, TakesNoNoticeOfAFallThatDoesNotLast) {
    // The lid is lifted at minute 31: two of twelve readings fall back.
    LogColumns log;
    for (int i = 0; i < 480; ++i) {
        log.minutes.push_back(i / 12.0);
        log.temperatures.push_back(20 + 2 * i / 12.0 - (i == 368 || i == 369 ? 6 : 0));
    }
    EXPECT_NEAR(number_of(call_log("TIMEAT", log, {80.0})), 30, 1e-9);
}

TEST(TimeAt, HasNoBiasWhereNoiseWaversAboutTheTarget) {
    // A reading a second, 2.8 K/min and a noise of 0.4 K: it crosses the target many times.
    Pot const pot;
    Random random(11);
    double sum = 0, worst = 0;
    constexpr int logs = 300;
    for (int i = 0; i < logs; ++i) {
        LogColumns log = log_of(pot, 1 / 60.0, 20);
        add_noise(log, 0.4, random);
        double const off = number_of(call_log("TIMEAT", log, {80.0})) - pot.minutes_to(80);
        sum += off;
        worst = std::max(worst, std::abs(off));
    }
    std::printf("mean error %.4f min, worst %.3f min\n", sum / logs, worst);
    EXPECT_LT(std::abs(sum / logs), 0.01);
    EXPECT_LT(worst, 0.3);
}

TEST(TimeAt, TakesTheFirstOfTwoTests) {
    LogColumns const log{{0, 5, 10, 15, 20, 25, 30, 35, 40, 45}, {20, 40, 60, 80, 90, 92, 40, 60, 80, 90}};
    EXPECT_NEAR(number_of(call_log("TIMEAT", log, {70.0})), 12.5, 1e-12);
}

TEST(TimeAt, FindsNothingWhereTheLogDoesNotGet) {
    EXPECT_EQ(reason_of(call_log("TIMEAT", {{0, 1, 2, 3}, {20, 30, 40, 50}}, {60.0})), Reason::never_crosses);
    EXPECT_EQ(reason_of(call_log("TIMEAT", {{0, 1, 2, 3}, {20, 30, 40, 50}}, {10.0})), Reason::never_crosses);
    // 100 °C in the middle, one reading alone.
    EXPECT_EQ(reason_of(call_log("TIMEAT", {{0, 1, 2, 3, 4}, {20, 30, 100, 50, 60}}, {95.0})), Reason::never_crosses);
}

TEST(TimeAt, CountsAReadingAtTheTargetItselfAsBeyond) {
    EXPECT_EQ(number_of(call_log("TIMEAT", {{0, 1, 2}, {20, 30, 40}}, {40.0})), 2);
    EXPECT_EQ(number_of(call_log("TIMEAT", {{0, 1, 2}, {60, 50, 40}}, {40.0})), 2);
}

TEST(TimeAt, LooksAMinuteAhead) {
    // Four readings in five within the minute, the one at its end counted; nothing is asked of the time after it.
    std::vector<kernels::Reading> log = readings_of("....XXXX.............", 0.25);
    EXPECT_EQ(kernels::time_at(log, 50).minute, 3.5 * 0.25);
    log = readings_of("....XXX.......XXXXXXXX", 0.25); // three in five, though three in four
    EXPECT_EQ(kernels::time_at(log, 50).minute, 13.5 * 0.25);
}

TEST(LastingPassage, KeepsThreeInFourReadingsBeyond) {
    EXPECT_EQ(passage("....XXX.............", 0.25, 0.75), 3.5);
    EXPECT_EQ(passage("....XX.X............", 0.25, 0.75), 3.5);
    EXPECT_EQ(passage("....XX.......XXXXXXX", 0.25, 0.75), 12.5);
    EXPECT_EQ(kind("....XX..............", 0.25, 0.75), CrossingKind::none);
}

TEST(LastingPassage, KeepsThreeReadingsBeyondWhereTheyAreFarApart) {
    EXPECT_EQ(passage("..XXX....", 5, 1), 1.5);
    EXPECT_EQ(passage("..XX.X....XXX", 5, 1), 9.5);
    EXPECT_EQ(passage(".....XX", 5, 1), 4.5); // or as many as there are
    EXPECT_EQ(passage("......X", 5, 1), 5.5);
}

TEST(LastingPassage, IsNoneWhereTheLogStartsBeyond) {
    EXPECT_EQ(kind("XXX.....", 1, 0), CrossingKind::beyond_from_start);
    std::vector<kernels::Reading> log = readings_of("XXXX", 1);
    for (kernels::Reading& reading : log)
        reading.minute += 7;
    EXPECT_EQ(kernels::lasting_crossing(log, 50, true).minute, 7);
    EXPECT_EQ(passage("X....XXXX", 1, 0), 4.5); // but not after a single reading
}

TEST(LastingPassage, MayBeginBeforeTheReadingsThatShowIt) {
    // Three passages leave as few on the wrong side; the first is too far back by the number of readings.
    EXPECT_EQ(passage(".X.X.XXX", 1, 0), (2.5 + 4.5) / 2);
    // Four of them, the first too far back in time. The search goes back to a reading that is not beyond.
    EXPECT_DOUBLE_EQ(passage(".XX..X.XXX...XXXXXXXX", 1, 7), (4.5 + 6.5 + 12.5) / 3);
}

TEST(LastingPassage, StandsWhereTheFewestReadingsAreOnTheWrongSide) {
    EXPECT_EQ(best(".X...XXX").minute, 4.5);
    EXPECT_EQ(best("...XX.XXX").minute, 2.5);
    EXPECT_EQ(best("..X.XX").minute, (1.5 + 3.5) / 2);
    EXPECT_DOUBLE_EQ(best("..X.X.XX").minute, (1.5 + 3.5 + 5.5) / 3);
    EXPECT_EQ(best("..X.X.XX").next, 6U);
    EXPECT_EQ(best("X.XX").minute, 1.5);
    EXPECT_EQ(best(".X").minute, 0.5);
    EXPECT_EQ(best("XX.").kind, CrossingKind::none);
}

} // namespace hearthcell::tests
