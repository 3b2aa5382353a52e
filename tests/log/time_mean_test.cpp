#include "logs.hpp"

namespace hearthcell::tests {

TEST(TimeMean, CountsEachReadingByTheTimeThatItStandsFor) {
    // Five minutes at 10, then a straight line to 30 in another ten: (50 + 200)/15.
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", {{0, 5, 15}, {10, 10, 30}})), 250.0 / 15);
    // The same with many more readings on the line.
    LogColumns log{{0, 5}, {10, 10}};
    for (int i = 1; i <= 1000; ++i) {
        log.minutes.push_back(5 + i * 0.01);
        log.temperatures.push_back(10 + i * 0.02);
    }
    EXPECT_NEAR(number_of(call_log("TIMEMEAN", log)), 250.0 / 15, 1e-12);
}

TEST(TimeMean, PutsTheEndsOfAStretchOnTheLineBetweenTwoReadings) {
    LogColumns const log{{0, 10}, {0, 100}};
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", log, {2.0, 4.0})), 30);
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", log, {Value(), 5.0})), 25);
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", log, {5.0})), 75);
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", {{0, 10, 20}, {0, 100, 0}}, {10.0, 20.0})), 50);
}

TEST(TimeMean, RefusesAStretchThatIsNotThere) {
    LogColumns const log{{3, 10}, {0, 100}};
    EXPECT_EQ(reason_of(call_log("TIMEMEAN", log, {2.0, 4.0})), Reason::stretch_beyond_log);
    EXPECT_EQ(reason_of(call_log("TIMEMEAN", log, {4.0, 11.0})), Reason::stretch_beyond_log);
    EXPECT_EQ(reason_of(call_log("TIMEMEAN", log, {5.0, 5.0})), Reason::to_not_above_from);
    EXPECT_EQ(reason_of(call_log("TIMEMEAN", {{3, 3}, {0, 100}})), Reason::time_repeated);
}

TEST(TimeMean, TakesValuesOfAnyKind) {
    EXPECT_DOUBLE_EQ(number_of(call_log("TIMEMEAN", {{0, 1, 2}, {-5000, 4e6, -5000}})), 1997500);
    EXPECT_NE(explained("TIMEMEAN", {{0, 5, 15}, {10, 10, 30}}).find("From 3 readings, at most 10 min apart"),
              std::string::npos);
}

} // namespace hearthcell::tests
