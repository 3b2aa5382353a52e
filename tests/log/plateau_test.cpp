// Where the readings of a log settle: the limits of a level.

#include "functions/kernels/log/level.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

using namespace kernels;

std::vector<Reading> log_of(std::vector<double> const& temperatures, double step) {
    std::vector<Reading> log;
    for (double const temperature : temperatures)
        log.push_back({double(log.size()) * step, temperature, unsigned(log.size() + 1)});
    return log;
}

/// Of readings a minute apart, or as far as told, without rounding.
Level level(std::vector<double> const& temperatures, double boiling_point, double step = 1, double hold = 2) {
    return level_of(log_of(temperatures, step), {0, 0.01}, {boiling_point, 0.5, hold});
}
bool is_none(Level const& level) {
    return level.kind == LevelKind::none;
}

} // namespace

TEST(Level, IsLookedForInSectionsOfHalfAMinuteShownByTheirMiddleReading) {
    std::vector<Reading> const sections = sections_of(log_of({14, 11, 13, 12, 25, 24, 21, 22, 35, 31, 32}, 0.125));
    ASSERT_EQ(sections.size(), 3U);
    EXPECT_EQ(sections[0].temperature, 13); // of four the upper one
    EXPECT_EQ(sections[1].temperature, 24);
    EXPECT_EQ(sections[2].temperature, 32);
    EXPECT_EQ(sections[0].minute, 0.1875);
    EXPECT_EQ(sections[2].minute, 1.125);
    EXPECT_EQ(sections_of(log_of({10, 20}, 5)).size(), 2U);
}

TEST(Level, IsWhereReadingsStayTogetherForTheHold) {
    EXPECT_EQ(level({80, 86, 92, 92, 92}, 92).read, 92);
    EXPECT_EQ(level({80, 86, 92, 92, 92}, 92).kind, LevelKind::held);
    EXPECT_EQ(level({80, 86, 92, 92}, 92).kind, LevelKind::not_held);
    EXPECT_EQ(level({80, 86, 92, 92}, 92, 5).kind, LevelKind::held); // two are enough where they are far apart
    EXPECT_TRUE(is_none(level({80, 86, 92, 92}, 94)));               // beside the boiling point it must be held
    EXPECT_TRUE(is_none(level({80, 86, 92, 92, 92}, 94, 1, 5)));
}

TEST(Level, BelowTheBoilingPointIsWithinThreeKelvinsAndAboveItWithinSix) {
    std::vector<double> const settles{75, 80, 85, 90, 90, 90, 90};
    EXPECT_EQ(level(settles, 93).read, 90);
    EXPECT_TRUE(is_none(level(settles, 93.02)));
    EXPECT_EQ(level(settles, 84).read, 90);
    EXPECT_NE(level(settles, 83.9).read, 90);
}

TEST(Level, BelowTheBoilingPointEndsAHeating) {
    EXPECT_TRUE(is_none(level({90, 90.2, 90.4, 90.6, 90.8, 91}, 92.5))); // creeps
    EXPECT_TRUE(is_none(level({80, 85, 90, 90.3, 90.6, 90.9}, 92.5)));   // goes on by 0.3 K/min
    EXPECT_TRUE(is_none(level({80, 85, 90, 90, 90, 91.2}, 92.5)));       // rises on at the end
    EXPECT_TRUE(is_none(level({90, 90, 90, 90}, 92.5)));                 // nobody sees a heating
    EXPECT_EQ(level({80, 85, 90, 90.1, 90.1, 90.2}, 92.5).kind, LevelKind::held);
}

TEST(Level, IsTheHighestPlace) {
    EXPECT_EQ(level({80, 86, 92, 92, 92, 94.6, 94.6, 94.6}, 95).read, 94.6);
    // Water that simmers lower afterwards moves nothing; where its boil was short, the boiling point tells the level.
    Level const short_boil = level({80, 86, 92, 95, 93, 93, 93, 93}, 95);
    EXPECT_EQ(short_boil.kind, LevelKind::not_held);
    EXPECT_FALSE(short_boil.settled);
    EXPECT_GT(short_boil.temperature, 95);
    EXPECT_NEAR(short_boil.temperature, 95.3, 0.1);
    EXPECT_NEAR(short_boil.uncertainty, 0.25, 0.05);                   // half of a normal distribution of 0.4 K
    EXPECT_TRUE(is_none(level({80, 86, 92, 94, 93, 93, 93, 93}, 95))); // a peak that nothing explains
}

TEST(Level, IsWiderWhereABoilMayHideBetweenTwoReadings) {
    Level const near = level({70, 80, 90, 93, 93, 93, 93}, 95, 1), far = level({70, 80, 90, 93, 93, 93, 93}, 95, 5);
    EXPECT_EQ(near.temperature, 93);
    EXPECT_EQ(far.temperature, 94.5);
    EXPECT_EQ(far.read, 93);
    EXPECT_GT(far.uncertainty, 0.5);
}

TEST(Level, IsTheMiddleOfItsReadingsAndAsUncertainAsTheDisplayIsCoarse) {
    EXPECT_EQ(level({80, 86, 92, 92.1, 92.2, 92.3, 92.4}, 92).read, 92.2);
    Level const coarse = level_of(log_of({80, 86, 92, 92, 92, 92}, 1), {1, 0.1}, {92, 0.5, 2});
    EXPECT_NEAR(coarse.uncertainty, std::hypot(1 / std::sqrt(12.0), 0.16, 0.05), 0.01);
}

} // namespace hearthcell::tests
