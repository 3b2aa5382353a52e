// STOVE.MONTECARLO as a cell asks it, and what EXPLAIN says of it and, because of it, of UNCERTAINTY.

#include "functions/call/part.hpp"
#include "support/asking.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

std::string const water_mass = "WATERMASS", dry_mass = "DRYMASS", normal_boil_time = "NORMALBOILTIME";
Value const water = column({5.0, 20.0}), water_doubt = column({0.02, 2.0});

enum : std::size_t { mean, uncertainty, lower, upper, without };

std::vector<double> drawn(std::vector<Value> const& asked) {
    Block const result = block(call(*find_function("MONTECARLO"), asking_for_all(*find_function("MONTECARLO"), asked)));
    EXPECT_EQ(result.rows, 1U);
    EXPECT_EQ(result.columns, 5U);
    return result.numbers;
}

void expect_says(std::string const& text, std::initializer_list<char const*> parts) {
    for (char const* part : parts)
        EXPECT_NE(text.find(part), std::string::npos) << "'" << part << "' is not in: " << text;
}
void expect_silent(std::string const& text, std::initializer_list<char const*> parts) {
    for (char const* part : parts)
        EXPECT_EQ(text.find(part), std::string::npos) << "'" << part << "' is in: " << text;
}

TEST(MonteCarloFunction, AgreesWithFirstOrderWhereTheFunctionIsAllButLinear) {
    std::vector<double> const result = drawn({water_mass, water, water_doubt, empty, empty, 100000.0});
    double const u = number(ask("UNCERTAINTY", {water_mass, water, water_doubt}));
    EXPECT_NEAR(result[mean], number(ask("WATERMASS", {5.0, 20.0})), 0.5);
    EXPECT_NEAR(result[uncertainty], u, 0.01 * u);
    EXPECT_NEAR(result[upper] - result[lower], 2 * 1.96 * u, 0.03 * u * 4);
    EXPECT_EQ(result[without], 0);
}

TEST(MonteCarloFunction, GivesTheSameEveryTime) {
    EXPECT_EQ(drawn({water_mass, water, water_doubt}), drawn({water_mass, water, water_doubt}));
    EXPECT_EQ(drawn({water_mass, water, water_doubt}), drawn({water_mass, water, water_doubt, 0.95, empty, 10000.0}));
}

TEST(MonteCarloFunction, CountsCorrelationsIn) {
    // Two weighings on one scale: what they share falls out of their difference but for the ratio.
    std::string const moisture = "MOISTURE";
    Value const weighings = column({120.0, 100.0}), doubts = column({0.5, 0.5});
    for (double const r : {0.0, 0.8, 1.0}) {
        std::vector<Value> const asked{moisture, weighings, doubts, empty, square({1.0, r, r, 1.0})};
        double const u = number(ask("UNCERTAINTY", asked));
        EXPECT_NEAR(drawn(asked)[uncertainty], u, 0.03 * u) << r;
    }
}

TEST(MonteCarloFunction, ShowsAnExactCallAsExact) {
    std::vector<double> const result = drawn({water_mass, water, column({0.0, empty})});
    double const mass = number(ask("WATERMASS", {5.0, 20.0}));
    EXPECT_EQ(result, (std::vector<double>{mass, 0, mass, mass, 0}));
}

TEST(MonteCarloFunction, CountsDrawsBeyondTheRangeOfAnArgument) {
    // Half of all moistures about 0 are below it, the others have the mean u √(2/π) and the deviation u √(1 - 2/π).
    std::vector<double> const result = drawn({dry_mass, column({600.0, 0.001}), column({0.0, 0.1})});
    EXPECT_NEAR(result[without], 0.4960, 0.015);
    EXPECT_NEAR(result[mean], 600 * (1 - 0.0802), 1);
    EXPECT_NEAR(result[uncertainty], 600 * 0.1 * std::sqrt(1 - 2 / M_PI), 1);
    EXPECT_NEAR(result[upper], 600, 0.1);
}

TEST(MonteCarloFunction, RefusesWhereMostDrawsHaveNoResult) {
    // Each of the two is out of its range by half of its draws.
    EXPECT_EQ(failure_in(ask("MONTECARLO", {dry_mass, column({1.0, 0.0}), column({0.5, 0.1})})).reason,
              Reason::draws_without_result);
    expect_says(explained("MONTECARLO", {dry_mass, column({1.0, 0.0}), column({0.5, 0.1})}),
                {"More than half of the draws give no result"});
}

TEST(MonteCarloFunction, RefusesWhatUncertaintyRefuses) {
    EXPECT_EQ(failure_in(ask("MONTECARLO", {water_mass, water, column({0.02})})).reason, Reason::uncertainties_differ);
    EXPECT_EQ(failure_in(ask("MONTECARLO", {water_mass, column({5.0, 200.0}), water_doubt})).reason,
              Reason::out_of_range);
    EXPECT_EQ(failure_in(ask("MONTECARLO", {std::string("SERIES"), water, water_doubt})).reason,
              Reason::not_differentiable);
    for (double const draws : {999.0, 100001.0})
        EXPECT_EQ(failure_in(ask("MONTECARLO", {water_mass, water, water_doubt, empty, empty, draws})).reason,
                  Reason::out_of_range);
    expect_says(explained("MONTECARLO", {dry_mass, column({600.0, 12.0}), column({1.0, 0.1})}),
                {"STOVE.DRYMASS gives no result with these values: moisture is 12"});
}

TEST(ExplainMonteCarlo, SaysWhatTheFiguresAreAndHowWellTheyAreKnown) {
    std::string const text = explained("MONTECARLO", {water_mass, water, water_doubt});
    expect_says(text, {"Fine: mean 499", "share without a result 0.", "Each of the 10000 draws gave a result.",
                       "the shortest interval that holds 95 % of the results (JCGM 101, 7.7)",
                       "From so many draws the mean is known to 0.", "the draws are always the same",
                       "First order, as STOVE.UNCERTAINTY computes it, gives the standard uncertainty 20.0706 g."});
    expect_silent(text, {"Only", "exactly known"});
    expect_says(explained("MONTECARLO", {water_mass, water, column({0.0, 0.0})}), {"the mean is known to 0,"});
    expect_says(explained("MONTECARLO", {water_mass, water, water_doubt, 0.999}),
                {"Only 10 draws lie outside the limits: give more draws."});
}

TEST(ExplainMonteCarlo, CountsTheDrawsWithoutAResult) {
    expect_says(explained("MONTECARLO", {dry_mass, column({600.0, 0.001}), column({0.0, 0.1})}),
                {" of 10000 draws gave no result, since a number or the result lay outside its range"});
}

TEST(ExplainMonteCarlo, ListsWhatCountsAsExactlyKnown) {
    expect_says(explained("MONTECARLO", {std::string("CHARENERGY"), 50.0, 3.0}),
                {"Not given as a number, and so counted as exactly known: char calorific value 29.5 MJ/kg (its source "
                 "gives 14.9 to 58 MJ/kg)."});
}

TEST(ExplainMonteCarlo, SaysNothingOfFirstOrderWhereThatHasNoResult) {
    // A last digit above the 60 kW that a fire may have: half of the draws lie beyond, by chance just less.
    std::vector<Value> asked{
        std::string("FIREPOWER"), column({3600.001, 1.0}), column({500.0, 0.0}), empty, empty, 0.0};
    ASSERT_EQ(failure_in(ask("UNCERTAINTY", {asked[0], asked[1], asked[2]})).reason, Reason::result_out_of_range);
    double draws = 900;
    do {
        draws += 100;
        asked.back() = draws;
    } while (std::holds_alternative<Failure>(ask("MONTECARLO", asked)) && draws < 20000);
    EXPECT_GT(drawn(asked)[without], 0.4);
    expect_silent(explained("MONTECARLO", asked), {"First order"});
}

TEST(ExplainUncertaintyByDraws, NamesTheRangeThatIsNear) {
    std::string const wood = explained("UNCERTAINTY", {dry_mass, column({600.0, 0.001}), column({0.0, 0.1})});
    expect_says(wood, {"Fine: uncertainty 60.", "But moisture two standard uncertainties away lies outside 0 to 0.75",
                       "But of 10000 draws (JCGM 101) the results have 36.", "% less.",
                       "STOVE.MONTECARLO counts all that in."});
    expect_says(explained("UNCERTAINTY", {std::string("BOILINGPOINT"), 8999.0, 500.0}),
                {"But altitude two standard uncertainties away lies outside -450 to 9000 m", "STOVE.MONTECARLO"});
    expect_says(explained("UNCERTAINTY", {std::string("FIREPOWER"), column({9000.0, 3.0}), column({0.0, 0.4})}),
                {"But the result two standard uncertainties away lies outside 0 to 60 kW"});
    expect_silent(explained("UNCERTAINTY", {water_mass, water, water_doubt}), {"But", "MONTECARLO"});
}

TEST(ExplainUncertaintyByDraws, SaysWhenDrawsDisagree) {
    expect_says(
        explained("UNCERTAINTY", {normal_boil_time, column({20.0, 80.0, 90.0, 75.0}), column({0.0, 2.0, 2.0, 0.0})}),
        {"But of 10000 draws (JCGM 101) the results have", "% more.", "STOVE.MONTECARLO counts all that in."});
    expect_says(explained("UNCERTAINTY", {dry_mass, column({1.0, 0.0}), column({0.5, 0.1})}),
                {"But of 10000 draws (JCGM 101) more than half give no result."});
    // What correlation cancels, it cancels in every draw.
    expect_silent(
        explained("UNCERTAINTY", {std::string("WATERHEAT"), column({1000.0, 40.0, 60.0, std::string("WBT 3")}),
                                  column({0.0, 0.5, 0.5, empty}), 1.0,
                                  square({1.0, 0.0, 0.0, empty, 0.0, 1.0, 1.0, empty, 0.0, 1.0, 1.0, empty, empty,
                                          empty, empty, empty})}),
        {"But", "MONTECARLO"});
}

TEST(ExplainUncertaintyByDraws, ListsWhatCountsAsExactlyKnown) {
    expect_says(explained("UNCERTAINTY", {std::string("POTHEAT"), column({500.0, std::string("aluminium"), 20.0, 95.0}),
                                          column({1.0, 0.0, 0.5, 0.5})}),
                {"counted as exactly known: material 0.897 kJ/(kg K)."});
    expect_says(explained("BUDGET", {std::string("CHARENERGY"), 50.0, 3.0}),
                {"counted as exactly known: char calorific value 29.5 MJ/kg (its source gives 14.9 to 58 MJ/kg)."});
}

} // namespace
} // namespace hearthcell::tests
