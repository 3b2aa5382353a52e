#include "calls.hpp"
#include "references.hpp"

#include "functions/kernels/statistics/blocked.hpp"

#include <random>

namespace hearthcell::tests {
namespace {

Value words(std::vector<std::string> const& names) {
    Block block{names.size(), 1, std::vector<double>(names.size(), text_in_block), {}};
    for (std::size_t i = 0; i < names.size(); ++i)
        block.texts.push_back({i, names[i]});
    return block;
}

} // namespace

TEST(BlockedDifference, AgreesWithRsLinearModelOfTwoThousandTables) {
    std::vector<std::string> const lines = lines_of("blocked.csv");
    ASSERT_EQ(lines.size(), 2000U);
    std::size_t several = 0;
    for (std::string const& line : lines) {
        std::vector<std::string> const fields = split(line, ';');
        Outcome const result =
            outcome("BLOCKEDDIFFERENCE", {column(numbers_of(fields[0])), column(numbers_of(fields[1])),
                                          column(numbers_of(fields[2])), numbers_of(fields[3]).front()});
        Block const* const list = std::get_if<Block>(&result);
        ASSERT_NE(list, nullptr) << line;
        std::vector<double> const expected = numbers_of(fields[4]);
        ASSERT_EQ(list->numbers.size(), expected.size()) << line;
        several += list->rows > 1 ? 1U : 0U;
        for (std::size_t row = 0; row < list->rows; ++row) {
            double const *const given = &list->numbers[row * 6], *const r = &expected[row * 6];
            double const scale = std::max({1.0, std::fabs(r[1]), std::fabs(r[2])});
            for (std::size_t part : {0U, 1U, 2U})
                EXPECT_NEAR(given[part], r[part], 1e-9 * scale) << line;
            EXPECT_NEAR(given[3], r[3], 1e-8 * r[3]) << line;
            EXPECT_EQ(given[4], r[4]) << line;
            EXPECT_EQ(std::stod(list->texts[row].text), r[5]) << line;
        }
    }
    EXPECT_GT(several, 500U);
}

TEST(BlockedDifference, FindsWhatDaysWouldHide) {
    // Days 10 % apart, runs 3 % within them, five runs of each variant, a change of 8 %: by simulation some 0.97 of
    // such comparisons show it, and 0.2 of those that leave the days out.
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    int blocked = 0, plain = 0;
    constexpr int campaigns = 1000;
    for (int i = 0; i < campaigns; ++i) {
        std::vector<double> results, variants, days, flat, ribbed;
        for (int day = 0; day < 5; ++day) {
            double const of_day = 0.1 * scatter(chance);
            for (double const variant : {0.0, 1.0}) {
                double const result = 30 * (1 + of_day - 0.08 * variant + 0.03 * scatter(chance));
                results.push_back(result);
                variants.push_back(variant);
                days.push_back(day);
                (variant == 0 ? flat : ribbed).push_back(result);
            }
        }
        Outcome const list = outcome("BLOCKEDDIFFERENCE", {column(results), column(variants), column(days), 0.0});
        blocked += std::get<Block>(list).numbers[3] < 0.05 ? 1 : 0;
        plain += parts("DIFFERENCE", {column(flat), column(ribbed)}).at(3) < 0.05 ? 1 : 0;
    }
    EXPECT_GT(blocked, campaigns * 0.8);
    EXPECT_LT(plain, campaigns * 0.4);
}

TEST(BlockedDifference, TakesNamesAsTheyAreTyped) {
    Value const results = column({32.1, 28.4, 30.8, 27.7, 31.5, 28.9});
    Value const variants =
        words({"flat grate", "ribbed grate", "flat grate", "ribbed grate", "flat grate", "ribbed grate"});
    Value const days = column({46000, 46000, 46001, 46001, 46002, 46002});
    Outcome const result = outcome("BLOCKEDDIFFERENCE", {results, variants, days, std::string("flat grate")});
    Block const& list = std::get<Block>(result);
    ASSERT_EQ(list.rows, 1U);
    EXPECT_EQ(list.texts.at(0).text, "ribbed grate");
    // Two variants that meet once a block are pairs.
    auto const pairs = parts("PAIREDDIFFERENCE", {column({32.1, 30.8, 31.5}), column({28.4, 27.7, 28.9})});
    for (std::size_t part : {0U, 1U, 2U, 3U})
        EXPECT_NEAR(list.numbers[part], pairs[part], 1e-12 * std::fabs(pairs[part]) + 1e-12);
}

TEST(BlockedDifference, RefusesWhatCannotBeTold) {
    Value const results = column({32.1, 28.4, 30.8, 27.7});
    auto const why = [&](std::vector<double> variants, std::vector<double> blocks, Value baseline) {
        return refusal("BLOCKEDDIFFERENCE", {results, column(std::move(variants)), column(std::move(blocks)), baseline})
            .reason;
    };
    EXPECT_EQ(why({1, 2, 1, 2}, {1, 1, 2, 2}, 3.0), Reason::baseline_not_run);
    EXPECT_EQ(why({1, 1, 1, 1}, {1, 1, 2, 2}, 1.0), Reason::baseline_alone);
    EXPECT_EQ(why({1, 1, 2, 2}, {1, 1, 2, 2}, 1.0), Reason::blocks_unconnected) << "each day had a variant of its own";
    EXPECT_EQ(why({1, 2, 1, 2}, {1, 1, 2}, 1.0), Reason::runs_differ);
    EXPECT_EQ(why({1, 2, absent, 2}, {1, 1, 2, 2}, 1.0), Reason::run_unnamed);
    EXPECT_EQ(why({1, 2, 1, 2}, {1, 1, 2, absent}, 1.0), Reason::run_unnamed);
    EXPECT_EQ(refusal("BLOCKEDDIFFERENCE", {column({1, 2}), column({1, 2}), column({1, 1}), 1.0}).reason,
              Reason::too_few_in_blocks);
    EXPECT_EQ(
        refusal("BLOCKEDDIFFERENCE", {column({1, 2, 1, 2}), column({1, 2, 1, 2}), column({1, 1, 2, 2}), 1.0}).reason,
        Reason::no_scatter);
    std::vector<double> many(51);
    for (std::size_t i = 0; i < many.size(); ++i)
        many[i] = double(i);
    EXPECT_EQ(
        refusal("BLOCKEDDIFFERENCE", {column(many), column(many), column(std::vector<double>(51, 1.0)), 0.0}).reason,
        Reason::too_many_names);
    std::vector<double> days(1001), two(1001);
    for (std::size_t i = 0; i < days.size(); ++i) {
        days[i] = double(i);
        two[i] = double(i % 2);
    }
    EXPECT_EQ(refusal("BLOCKEDDIFFERENCE", {column(days), column(two), column(days), 0.0}).reason,
              Reason::too_many_names);
    EXPECT_EQ(why({1, 2, 1, 2}, {1, 1, 2, 2}, column({1, 2})), Reason::block_for_value);
}

TEST(Holm, FollowsTheExampleOfR) {
    // R 4.2: p.adjust(c(0.01, 0.02, 0.03, 0.04, 0.05), "holm") = 0.05 0.08 0.09 0.09 0.09
    std::vector<double> const adjusted = kernels::adjusted_by_holm({0.03, 0.01, 0.05, 0.02, 0.04});
    std::vector<double> const expected{0.09, 0.05, 0.09, 0.08, 0.09};
    for (std::size_t i = 0; i < expected.size(); ++i)
        EXPECT_NEAR(adjusted[i], expected[i], 1e-15);
    EXPECT_EQ(kernels::adjusted_by_holm({0.9, 0.8}), (std::vector<double>{1, 1}));
}

} // namespace hearthcell::tests
