#include "calls.hpp"

#include <random>

namespace hearthcell::tests {

TEST(Pairs, TakeOutWhatTheyHaveInCommon) {
    // Six invented households that differ by 50 %, and of which each saves about a sixth.
    Value const before = column({812, 640, 1105, 930, 720, 860}), after = column({655, 560, 870, 741, 610, 690});
    EXPECT_LT(parts("PAIREDDIFFERENCE", {before, after}).at(3), 0.001);
    EXPECT_GT(parts("DIFFERENCE", {before, after}).at(3), 0.05) << "side by side the households hide it";
    EXPECT_GT(parts("PAIREDSAVING", {before, after}).at(1), 0.14);
}

TEST(Pairs, AreLeftOutAndCountedWhereOneValueIsMissing) {
    Value const before = column({812, 640, absent, 930, absent}), after = column({655, absent, 700, 741, absent});
    for (char const* function : {"PAIREDDIFFERENCE", "PAIREDSAVING"}) {
        auto const row = parts(function, {before, after});
        EXPECT_EQ(row.at(6), 2) << function;
        EXPECT_EQ(row.at(7), 2) << function << ": the wholly empty row is none";
    }
}

TEST(Pairs, AreRefusedWhereThereAreTooFew) {
    for (char const* function : {"PAIREDDIFFERENCE", "PAIREDSAVING"}) {
        EXPECT_EQ(refusal(function, {column({1, 2}), column({1, absent})}).reason, Reason::too_few_pairs);
        EXPECT_EQ(refusal(function, {column({1, 2, 3}), column({1, 2})}).reason, Reason::pairs_differ);
        EXPECT_EQ(refusal(function, {column({1, 2, 3}), column({2, 3, 4})}).reason, Reason::no_scatter);
    }
    EXPECT_EQ(refusal("PAIREDSAVING", {column({1, 2, -3}), column({2, 3, 5})}).reason, Reason::mean_not_positive);
}

TEST(PairedSaving, HasLimitsThatLeaveOutNothingSavedJustWhenPIsSmall) {
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    int small = 0, large = 0;
    for (int i = 0; i < 10000; ++i) {
        std::size_t const households = 3 + std::size_t(i) % 8;
        std::vector<double> before, after;
        for (std::size_t j = 0; j < households; ++j) {
            before.push_back(900 + 200 * scatter(chance));
            after.push_back(before.back() * (0.9 + 0.1 * scatter(chance)));
        }
        if (refusal("PAIREDSAVING", {column(before), column(after)}).reason != Reason::none)
            continue;
        std::vector<double> const row = parts("PAIREDSAVING", {column(before), column(after)});
        if (failed(row[1]))
            continue;
        bool const leaves_out_0 = row[1] > 0 || row[2] < 0;
        EXPECT_EQ(leaves_out_0, row[3] < 0.05);
        (leaves_out_0 ? small : large) += 1;
    }
    EXPECT_GT(small, 1000);
    EXPECT_GT(large, 1000);
}

} // namespace hearthcell::tests
