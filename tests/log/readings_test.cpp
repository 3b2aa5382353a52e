// Which readings count: the highest of a log, the middle one, those between two minutes, and wild ones.

#include "functions/kernels/log/readings.hpp"
#include "functions/kernels/log/wild.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

using kernels::Reading;

std::vector<Reading> log_at(std::vector<double> const& minutes, std::vector<double> const& temperatures) {
    std::vector<Reading> log;
    for (std::size_t i = 0; i < minutes.size(); ++i)
        log.push_back({minutes[i], temperatures[i], unsigned(i + 1)});
    return log;
}
/// A reading a minute, from a minute that is not 0 on.
std::vector<Reading> log_of(std::vector<double> const& temperatures, double step = 1) {
    std::vector<double> minutes;
    for (std::size_t i = 0; i < temperatures.size(); ++i)
        minutes.push_back(10 + double(i) * step);
    return log_at(minutes, temperatures);
}

double highest(std::vector<double> const& temperatures) {
    return kernels::highest(log_of(temperatures));
}

/// The rows that are left.
std::vector<unsigned> left(std::vector<Reading> log) {
    std::size_t const all = log.size();
    EXPECT_EQ(kernels::tame(log) + log.size(), all);
    std::vector<unsigned> rows;
    for (Reading const& reading : log)
        rows.push_back(reading.row);
    return rows;
}
std::vector<unsigned> left(std::vector<double> const& temperatures, double step = 1) {
    return left(log_of(temperatures, step));
}
using Rows = std::vector<unsigned>;

} // namespace

TEST(MiddleReading, IsTheSameInEveryOrder) {
    for (auto const& [a, b, c] : {std::tuple{1.0, 2.0, 3.0},
                                  {1.0, 3.0, 2.0},
                                  {2.0, 1.0, 3.0},
                                  {2.0, 3.0, 1.0},
                                  {3.0, 1.0, 2.0},
                                  {3.0, 2.0, 1.0}})
        EXPECT_EQ(kernels::middle(a, b, c), 2) << a << b << c;
}

TEST(HighestReading, DoesNotStandAlone) {
    EXPECT_EQ(highest({20, 80}), 80);
    EXPECT_EQ(highest({80, 20}), 80);
    EXPECT_EQ(highest({100, 20, 30}), 30);
    EXPECT_EQ(highest({20, 30, 25}), 25);
    EXPECT_EQ(highest({90, 90, 20, 20}), 90); // the first two
    EXPECT_EQ(highest({20, 90, 90, 20}), 90);
    EXPECT_EQ(highest({20, 90, 20, 20}), 20);
    EXPECT_EQ(highest({-40, -40, -40}), -40);
}

TEST(HighestReading, IsTheLastOneWhereItGoesOnRisingAsBefore) {
    EXPECT_EQ(highest({20, 30, 40}), 40);
    EXPECT_EQ(highest({20, 30, 100}), 40);
    EXPECT_EQ(highest({50, 40, 30}), 40);
}

TEST(ReadingsBetweenTwoMinutes, IncludeThoseAtBoth) {
    std::vector<Reading> const log = log_of({20, 30, 40, 50});
    EXPECT_EQ(kernels::between(log, 11, 12).size(), 2U);
    EXPECT_EQ(kernels::between(log, 11, 12).front().row, 2U);
    EXPECT_EQ(kernels::between(log, 11.1, 11.9).size(), 0U);
    EXPECT_EQ(kernels::between(log, 12, 11).size(), 0U);
}

TEST(WildReading, StandsOffFromItsNeighboursByMoreThanTenKelvins) {
    EXPECT_EQ(left({20, 30, 20, 20}), (Rows{1, 2, 3, 4}));
    EXPECT_EQ(left({20, 30.5, 20, 20}), (Rows{1, 3, 4}));
    EXPECT_EQ(left({20, 9.5, 20, 20}), (Rows{1, 3, 4}));
    EXPECT_EQ(left({20, 90, 22}), (Rows{1, 3}));
    EXPECT_EQ(left({20, 90}), (Rows{1, 2}));
}

TEST(WildReading, StandsOffByMoreThanFourTimesTheDifferenceOfItsNeighbours) {
    EXPECT_EQ(left({20, 38, 24, 24}), (Rows{1, 2, 3, 4})); // 16 K from the middle of 20 and 24
    EXPECT_EQ(left({20, 38.5, 24, 24}), (Rows{1, 3, 4}));
    EXPECT_EQ(left({20, 45, 40, 30}), (Rows{1, 2, 3, 4}));
    EXPECT_EQ(left({24, 36, 20, 20}), (Rows{1, 2, 3, 4})); // where they fall
    EXPECT_EQ(left({24, 38.5, 20, 20}), (Rows{1, 3, 4}));
}

TEST(WildReading, IsMeasuredFromTheLineBetweenItsNeighbours) {
    EXPECT_EQ(left(log_at({10, 11, 14, 15}, {20, 37, 24, 24})), (Rows{1, 2, 3, 4})); // the line stands at 21
    EXPECT_EQ(left(log_at({10, 11, 14, 15}, {20, 37.5, 24, 24})), (Rows{1, 3, 4}));
}

TEST(WildReading, IsMeasuredFromTheLastOneThatWasNotWild) {
    EXPECT_EQ(left({20, 60, 20, 60, 20, 20}), (Rows{1, 3, 5, 6}));
    EXPECT_EQ(left({20, 20, 20, 60, 20}), (Rows{1, 2, 3, 5})); // the last but one
}

TEST(WildReading, GoesUpAndDownFasterThanWaterCools) {
    // A minute apart: 2 K and 3 K/min.
    EXPECT_EQ(left({20, 23, 26, 37.2, 32, 35, 38, 41, 44, 47}), (Rows{1, 2, 3, 5, 6, 7, 8, 9, 10}));
    EXPECT_EQ(left({20, 23, 26, 36.9, 32, 35, 38, 41, 44, 47}), (Rows{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}));
    EXPECT_EQ(left({20, 23, 26, 20.9, 32, 35, 38, 41, 44, 47}), (Rows{1, 2, 3, 5, 6, 7, 8, 9, 10}));
    EXPECT_EQ(left({20, 23, 26, 21.1, 32, 35, 38, 41, 44, 47}), (Rows{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}));
    // Fresh water in the pot is no wild reading, and neither is the last of the hot.
    EXPECT_EQ(left({87, 91, 95, 95, 20, 23, 26, 29}), (Rows{1, 2, 3, 4, 5, 6, 7, 8}));
    // Nor a boil that is seen once.
    EXPECT_EQ(left({80, 85, 89.5, 93.4, 92, 92, 92, 92}), (Rows{1, 2, 3, 4, 5, 6, 7, 8}));
    // Readings that always stand off so much.
    EXPECT_EQ(left({20, 26, 20, 26, 20, 26, 20, 26}), (Rows{1, 2, 3, 4, 5, 6, 7, 8}));
}

TEST(WildReading, IsNoFirstNoteBeforeTheFireHeatsFast) {
    EXPECT_EQ(left({20, 95, 95, 95, 95}, 5), (Rows{1, 2, 3, 4, 5}));
    EXPECT_EQ(left({20, 95, 95, 95, 95}, 3), (Rows{2, 3, 4, 5})); // 25 K/min
    EXPECT_EQ(left({95, 20, 20, 20, 20}, 5), (Rows{2, 3, 4, 5}));
}

TEST(WildReading, AtAnEndIsTenKelvinsOff) {
    EXPECT_EQ(left({30, 20, 20.5, 21}), (Rows{1, 2, 3, 4}));
    EXPECT_EQ(left({30.5, 20, 20.5, 21}), (Rows{2, 3, 4}));
    EXPECT_EQ(left({21, 20.5, 20, 30}), (Rows{1, 2, 3, 4}));
    EXPECT_EQ(left({21, 20.5, 20, 30.5}), (Rows{1, 2, 3}));
    EXPECT_EQ(left({9.5, 20, 20.5, 21}), (Rows{2, 3, 4}));
}

TEST(WildReading, AtAnEndIsFourTimesAsSteepAsTheSteepestStepBesideIt) {
    EXPECT_EQ(left({60, 20, 30, 40, 50}), (Rows{1, 2, 3, 4, 5}));
    EXPECT_EQ(left({60.5, 20, 30, 40, 50}), (Rows{2, 3, 4, 5}));
    EXPECT_EQ(left({60, 20, 40, 41, 42}), (Rows{1, 2, 3, 4, 5})); // the step right beside it
    EXPECT_EQ(left({60, 20, 0, -1, -2}), (Rows{1, 2, 3, 4, 5}));  // which may fall
    EXPECT_EQ(left({35, 20, 20, 20, 20}, 5), (Rows{2, 3, 4, 5})); // and may be none
    EXPECT_EQ(left({34, 20, 20.5, 20.5, 20.5}, 8), (Rows{2, 3, 4, 5}));
}

TEST(WildReading, AtAnEndHasUpToFiveStepsBesideItAndTwoAtLeast) {
    EXPECT_EQ(left({60, 20, 21}), (Rows{1, 2, 3}));
    EXPECT_EQ(left({60, 20, 21, 22}), (Rows{2, 3, 4}));
    EXPECT_EQ(left({60, 20, 21, 41}), (Rows{1, 2, 3, 4}));
    EXPECT_EQ(left({60, 20, 21, 22, 23, 24, 44, 45, 46}), (Rows{1, 2, 3, 4, 5, 6, 7, 8, 9}));
    EXPECT_EQ(left({60, 20, 21, 22, 23, 24, 25, 45, 46, 47}), (Rows{2, 3, 4, 5, 6, 7, 8, 9, 10}));
}

} // namespace hearthcell::tests
