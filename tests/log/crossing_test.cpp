#include "logs.hpp"

#include <cmath>

namespace hearthcell::tests {

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

} // namespace hearthcell::tests
