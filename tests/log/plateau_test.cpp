// Where the readings of a log settle: the limits of a plateau.

#include "functions/kernels/log/boil.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

using kernels::Reading;

std::vector<Reading> log_of(std::vector<double> const& temperatures, double step) {
    std::vector<Reading> log;
    for (double const temperature : temperatures)
        log.push_back({double(log.size()) * step, temperature, unsigned(log.size() + 1)});
    return log;
}

/// The level of readings a minute apart, or as far as told.
double level(std::vector<double> const& temperatures, double boiling_point, double step = 1) {
    return kernels::plateau_level(log_of(temperatures, step), boiling_point);
}

} // namespace

TEST(Plateau, IsLookedForInSectionsOfAMinuteShownByTheirMiddleReading) {
    std::vector<Reading> const sections =
        kernels::sections_of(log_of({14, 11, 13, 12, 25, 24, 21, 22, 35, 31, 32}, 0.25));
    ASSERT_EQ(sections.size(), 3U);
    EXPECT_EQ(sections[0].temperature, 13); // of four the upper one
    EXPECT_EQ(sections[1].temperature, 24);
    EXPECT_EQ(sections[2].temperature, 32);
    EXPECT_EQ(sections[0].minute, 0.375);
    EXPECT_EQ(sections[1].minute, 1.375);
    EXPECT_EQ(sections[2].minute, 2.25);
    EXPECT_EQ(kernels::sections_of(log_of({10, 20}, 5)).size(), 2U);
}

TEST(Plateau, LastsForThreeSections) {
    EXPECT_EQ(level({86, 89, 92, 92, 92}, 93), 92);
    EXPECT_EQ(level({92, 92, 92}, 93), 92);
    EXPECT_TRUE(is_absent(level({86, 89, 92, 92}, 93)));
}

TEST(Plateau, ChangesByLessThanAFifthOfAKelvinAMinute) {
    EXPECT_DOUBLE_EQ(level({90, 90.95, 91.9}, 91, 5), 90.95);
    EXPECT_TRUE(is_absent(level({90, 91, 92}, 91, 5)));
    EXPECT_TRUE(is_absent(level({95, 92, 89}, 92)));
    EXPECT_DOUBLE_EQ(level({93.8, 91.9, 90}, 92, 10), 91.9);
}

TEST(Plateau, IsWithinThreeKelvinsOfTheBoilingPoint) {
    for (double const boiling_point : {93.0, 87.0})
        EXPECT_EQ(level({90, 90, 90}, boiling_point), 90);
    for (double const boiling_point : {93.02, 86.98})
        EXPECT_TRUE(is_absent(level({90, 90, 90}, boiling_point)));
}

TEST(Plateau, IsTheMeanOfTheSectionsWithinHalfAKelvin) {
    EXPECT_EQ(level({92, 92, 92, 92.5}, 93), 92.125);
    EXPECT_EQ(level({92, 92, 92, 91.5}, 93), 91.875);
    EXPECT_EQ(level({92, 92, 92, 92.502}, 93), 92);
    EXPECT_EQ(level({92, 92, 92, 91}, 93), 92);
}

TEST(Plateau, IsTheMeanOfFourHoursAtMost) {
    std::vector<double> temperatures(480, 92.4);
    std::fill_n(temperatures.begin(), 240, 92.0);
    EXPECT_EQ(level(temperatures, 92), 92);
}

TEST(Plateau, IsNotFollowedByARiseOfMoreThanAKelvin) {
    EXPECT_EQ(level({93, 93, 93, 94, 94, 94}, 93), 93);
    EXPECT_EQ(level({93, 93, 93, 94.02, 94.02, 94.02}, 93), 94.02);
    EXPECT_EQ(level({93, 93, 93, 94.5, 94.5, 94.5}, 93), 94.5);
    EXPECT_TRUE(is_absent(level({90, 93.2, 92.2}, 92, 10))); // nor by one of its own
}

TEST(Plateau, IsTheOneNearestToTheBoilingPoint) {
    EXPECT_DOUBLE_EQ(level({94.6, 94.6, 94.6, 93, 93, 93}, 95), 94.6);
    EXPECT_DOUBLE_EQ(level({93, 93, 93, 93.9, 93.9, 93.9}, 95), 93.9);
    EXPECT_EQ(level({96, 96, 96, 94, 94, 94}, 95), 96); // the first of two as near
}

} // namespace hearthcell::tests
