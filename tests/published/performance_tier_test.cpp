#include "functions/kernels/performance_tier.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace hearthcell::tests {
namespace {

struct Limit {
    char const* measure;
    double value;
    double below, at, above; ///< the tiers a last shown digit below the limit, at it and above it
};

// ISO/TR 19867-3:2018, default tiers, from memory of its table.
constexpr Limit limits[] = {
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

constexpr std::string_view limit_itself = "ISO/TR 19867-3:2018, default tiers, from memory: the limit of a tier";
PublishedTable const at_limits{
    {"PERFORMANCETIER", {"efficiency", 0.3}, {3, 0}, limit_itself},
    {"PERFORMANCETIER", {"CO", 7.2}, {3, 0}, limit_itself},
    {"PERFORMANCETIER", {"PM2.5", 62}, {4, 0}, limit_itself},
    {"PERFORMANCETIER", {"safety", 95}, {5, 0}, limit_itself},
    {"PERFORMANCETIER", {"durability", 10}, {4, 0}, limit_itself},
};

// Limits of both kinds, by R 4.2: diff(pnorm((c(-Inf, limits, Inf) - value)/u)).
constexpr std::array<Expected, 6> of_carbon_monoxide{
    {{0, 1e-15}, {0, 1e-15}, {0, 1e-15}, {0.369441340182, 5e-13}, {0.630551316394, 5e-13}, {7.34342383689e-6, 5e-17}}};
constexpr std::array<Expected, 6> of_durability{{{0, 1e-15},
                                                 {1.898956248e-8, 1e-16},
                                                 {1.34987904207e-3, 5e-15},
                                                 {0.307187640694, 5e-13},
                                                 {0.668712329326, 5e-13},
                                                 {0.0227501319482, 5e-14}}};
constexpr std::array<Expected, 6> of_safety{{{2.22477597851e-18, 5e-29},
                                             {9.86587642813e-10, 5e-21},
                                             {1.34989704504e-3, 5e-15},
                                             {0.498650101968, 5e-13},
                                             {0.498650101968, 5e-13},
                                             {1.34989803163e-3, 5e-15}}};
PublishedTable const probabilities{
    {"TIERPROBABILITY", {"CO", 4.3, 0.3}, of_carbon_monoxide, "R 4.2, pnorm"},
    {"TIERPROBABILITY", {"durability", 14, 2}, of_durability, "R 4.2, pnorm"},
    {"TIERPROBABILITY", {"safety", 86, 3}, of_safety, "R 4.2, pnorm"},
};

double tier(char const* measure, double value) {
    return number("PERFORMANCETIER", {measure, value});
}

} // namespace

TEST(PerformanceTier, IsThatOfTheLimit) {
    at_limits.check();
}

TEST(PerformanceTier, FollowsTheTableAtAndAroundEachLimit) {
    for (Limit const& limit : limits) {
        EXPECT_EQ(tier(limit.measure, limit.value * (1 - 1e-6)), limit.below)
            << limit.measure << " below " << limit.value;
        EXPECT_EQ(tier(limit.measure, limit.value), limit.at) << limit.measure << " at " << limit.value;
        EXPECT_EQ(tier(limit.measure, limit.value * (1 + 1e-6)), limit.above)
            << limit.measure << " above " << limit.value;
    }
}

TEST(PerformanceTier, TakesTheRoundingOfASheetForTheLimitItself) {
    for (Limit const& limit : limits)
        for (double const towards : {0.0, 1e9})
            EXPECT_EQ(tier(limit.measure, std::nextafter(limit.value, towards)), limit.at)
                << limit.measure << limit.value;
    EXPECT_LT(0.7 - 0.4, 0.3);
    EXPECT_EQ(tier("efficiency", 0.7 - 0.4), 3);
}

TEST(TierProbability, IsThatOfLyingBetweenTheLimits) {
    probabilities.check();
}

TEST(TierProbability, AddsUpToOneWhateverTheValue) {
    for (Limit const& limit : limits)
        for (double const share : {0.7, 0.999, 1.0, 1.02}) {
            if (std::string_view(limit.measure) == "safety" && limit.value * share > 100)
                continue;
            Outcome const outcome = called("TIERPROBABILITY", {limit.measure, limit.value * share, limit.value / 20});
            double sum = 0;
            for (double const probability : std::get<Block>(outcome).numbers) {
                EXPECT_GE(probability, 0);
                sum += probability;
            }
            EXPECT_NEAR(sum, 1, 1e-15) << limit.measure << " " << limit.value * share;
        }
}

TEST(TierProbability, IsCertainFarFromEveryLimitAndHalfAtOne) {
    auto const of = [](char const* measure, double value, double uncertainty) {
        return std::get<Block>(called("TIERPROBABILITY", {measure, value, uncertainty})).numbers;
    };
    EXPECT_EQ(of("efficiency", 0.45, 0.001)[4], 1);
    EXPECT_EQ(of("PM2.5", 30, 1)[4], 1);
    EXPECT_NEAR(of("PM2.5", 62, 1)[4], 0.5, 1e-15);
    EXPECT_NEAR(of("PM2.5", 62, 1)[3], 0.5, 1e-15);
}

TEST(TierProbability, SaysWhatItIsOfAndRefusesPerCent) {
    std::string const text = explained("TIERPROBABILITY", {"efficiency", 0.401, 0.02});
    EXPECT_TRUE(text.starts_with("Fine: tier 0 ")) << text;
    EXPECT_NE(text.find("tier 3 0.480061; tier 4 0.519938;"), std::string::npos) << text;
    EXPECT_NE(text.find("By \"efficiency\": "), std::string::npos) << text;
    EXPECT_NE(text.find("distributed normally"), std::string::npos) << text;
    EXPECT_NE(text.find("laboratory test of ISO 19867-1 only"), std::string::npos) << text;
    EXPECT_NE(explained("TIERPROBABILITY", {"efficiency", 0.401, 2}).find("standard uncertainty is 2, more than half"),
              std::string::npos);
    EXPECT_EQ(reason("TIERPROBABILITY", {"efficiency", 0.401, 0.0}), Reason::out_of_range);
}

TEST(PerformanceTier, NamesTheProbabilityWhereALimitIsNear) {
    auto const sends_there = [](char const* measure, double value) {
        return explained("PERFORMANCETIER", {measure, value}).find("STOVE.TIERPROBABILITY") != std::string::npos;
    };
    EXPECT_TRUE(sends_there("efficiency", 0.401));
    EXPECT_TRUE(sends_there("efficiency", 0.385));
    EXPECT_FALSE(sends_there("efficiency", 0.45));
    EXPECT_TRUE(sends_there("CO", 4.5));
    EXPECT_FALSE(sends_there("CO", 5.5));
    EXPECT_TRUE(sends_there("durability", 14.5));
}

TEST(PerformanceTier, KnowsItsMeasuresInAnyLetterCase) {
    EXPECT_EQ(tier("co", 1), 5);
    EXPECT_EQ(tier(" pm2.5 ", 1), 5);
    EXPECT_EQ(reason("PERFORMANCETIER", {"smoke", 1.0}), Reason::unknown_name);
    EXPECT_EQ(reason("PERFORMANCETIER", {0.0, 1.0}), Reason::number_for_text);
}

TEST(PerformanceTier, RefusesWhatTheMeasureCannotBe) {
    for (auto const& [measure, value] : {std::pair{"efficiency", 35.0},
                                         {"efficiency", 1.001},
                                         {"safety", 101.0},
                                         {"CO", 1001.0},
                                         {"durability", 1001.0}}) {
        Outcome const outcome = called("PERFORMANCETIER", {measure, value});
        Failure const why = std::get<Failure>(outcome);
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
        EXPECT_EQ(reason("PERFORMANCETIER", {measure, 0.0}), Reason::beyond_measure) << measure;
    EXPECT_EQ(tier("durability", 0), 5); // a score that can be; EXPLAIN asks
}

} // namespace hearthcell::tests
