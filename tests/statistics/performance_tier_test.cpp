#include "calls.hpp"

#include "functions/kernels/performance_tier.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

struct Row {
    char const* measure;
    double limit;
    double below, at, above; ///< the tiers a last shown digit below the limit, at it and above it
};

// ISO/TR 19867-3:2018, default tiers, from memory of its table.
constexpr Row rows[] = {
    {"efficiency", 0.10, 0, 1, 1}, {"efficiency", 0.20, 1, 2, 2}, {"efficiency", 0.30, 2, 3, 3},
    {"efficiency", 0.40, 3, 4, 4}, {"efficiency", 0.50, 4, 5, 5}, {"CO", 18.3, 1, 1, 0},
    {"CO", 11.5, 2, 2, 1},         {"CO", 7.2, 3, 3, 2},          {"CO", 4.4, 4, 4, 3},
    {"CO", 3.0, 5, 5, 4},          {"PM2.5", 1031, 1, 1, 0},      {"PM2.5", 481, 2, 2, 1},
    {"PM2.5", 218, 3, 3, 2},       {"PM2.5", 62, 4, 4, 3},        {"PM2.5", 5, 5, 5, 4},
    {"safety", 60, 0, 1, 1},       {"safety", 68, 1, 2, 2},       {"safety", 77, 2, 3, 3},
    {"safety", 86, 3, 4, 4},       {"safety", 95, 4, 5, 5},       {"durability", 35, 1, 0, 0},
    {"durability", 25, 2, 1, 1},   {"durability", 20, 3, 2, 2},   {"durability", 15, 4, 3, 3},
    {"durability", 10, 5, 4, 4},
};

double tier(char const* measure, double value) {
    return number("PERFORMANCETIER", {std::string(measure), value});
}

} // namespace

TEST(PerformanceTier, FollowsTheTableAtAndAroundEachLimit) {
    for (Row const& row : rows) {
        EXPECT_EQ(tier(row.measure, row.limit * (1 - 1e-6)), row.below) << row.measure << " below " << row.limit;
        EXPECT_EQ(tier(row.measure, row.limit), row.at) << row.measure << " at " << row.limit;
        EXPECT_EQ(tier(row.measure, row.limit * (1 + 1e-6)), row.above) << row.measure << " above " << row.limit;
    }
}

TEST(PerformanceTier, TakesTheRoundingOfASheetForTheLimitItself) {
    for (Row const& row : rows)
        for (double const towards : {0.0, 1e9})
            EXPECT_EQ(tier(row.measure, std::nextafter(row.limit, towards)), row.at) << row.measure << row.limit;
    EXPECT_LT(0.7 - 0.4, 0.3);
    EXPECT_EQ(tier("efficiency", 0.7 - 0.4), 3);
}

TEST(PerformanceTier, KnowsItsMeasuresInAnyLetterCase) {
    EXPECT_EQ(tier("co", 1), 5);
    EXPECT_EQ(tier(" pm2.5 ", 1), 5);
    EXPECT_EQ(refusal("PERFORMANCETIER", {std::string("smoke"), 1.0}).reason, Reason::unknown_name);
    EXPECT_EQ(refusal("PERFORMANCETIER", {0.0, 1.0}).reason, Reason::number_for_text);
}

TEST(PerformanceTier, RefusesWhatTheMeasureCannotBe) {
    for (auto const& [measure, value] : {std::pair{"efficiency", 35.0},
                                         {"efficiency", 1.001},
                                         {"safety", 101.0},
                                         {"CO", 1001.0},
                                         {"durability", 1001.0}}) {
        Failure const why = refusal("PERFORMANCETIER", {std::string(measure), value});
        EXPECT_EQ(why.reason, Reason::beyond_measure) << measure << " " << value;
        EXPECT_EQ(why.argument, 1U);
    }
}

TEST(PerformanceTier, TakesTheMostThatTheMeasureCanBe) {
    int measure = 0;
    for (auto const& [most, tier_of_it] : {std::pair{1.0, 5}, {1000.0, 0}, {100000.0, 0}, {100.0, 5}, {1000.0, 0}}) {
        EXPECT_EQ(kernels::performance_tier(most, {measure}), tier_of_it);
        EXPECT_EQ(failure_of(kernels::performance_tier(most * 1.000005, {measure})).reason, Reason::beyond_measure);
        ++measure;
    }
}

TEST(PerformanceTier, GivesAnEmptyCellNoTier) {
    // An empty cell arrives as 0, which would be the best tier of an emission.
    for (char const* measure : {"efficiency", "CO", "PM2.5", "safety"})
        EXPECT_EQ(refusal("PERFORMANCETIER", {std::string(measure), 0.0}).reason, Reason::beyond_measure) << measure;
    EXPECT_EQ(tier("durability", 0), 5); // a score that can be; EXPLAIN asks
}

} // namespace hearthcell::tests
