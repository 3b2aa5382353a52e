// STOVE.EACHROW gives, row by row, what a call of that row alone gives.

#include "tests/support/asking.hpp"

namespace hearthcell::tests {
namespace {

std::string const dry_mass = "DRYMASS", boiling_point = "BOILINGPOINT", explain_name = "EXPLAIN";

Block rows_of(std::vector<Value> const& arguments) {
    return block(ask("EACHROW", arguments));
}

TEST(EachRow, GivesTheBitsOfSingleCallsWithTextsMethodsAndColumns) {
    Value const masses = column({520.0, 430.0, 395.5}), moistures = column({0.14, 0.12, 0.2});
    Block const result =
        rows_of({std::string("WOODENERGY"), masses, moistures, 18.7, std::string("WBT 4.2.3"), 95.85, 20.0});
    ASSERT_EQ(result.rows, 3U);
    ASSERT_EQ(result.columns, 1U);
    for (std::size_t row = 0; row < 3; ++row)
        EXPECT_EQ(result.numbers[row], number(ask("WOODENERGY", {std::get<Block>(masses).numbers[row],
                                                                 std::get<Block>(moistures).numbers[row], 18.7,
                                                                 std::string("WBT 4.2.3"), 95.85, 20.0})));
    Block const energies = rows_of({std::string("FUELENERGY"), masses, moistures, 18.7});
    EXPECT_EQ(energies.numbers[1], number(ask("FUELENERGY", {430.0, 0.12, 18.7})));
}

TEST(EachRow, KeepsTheErrorOfARowInThatRow) {
    Block const result =
        rows_of({dry_mass, column({520.0, std::string("a log"), 395.0, -1.0}), column({0.14, 0.1, 14.0, 0.1})});
    EXPECT_EQ(result.numbers[0], 447.2);
    EXPECT_EQ(failure_of(result.numbers[1]).reason, Reason::text_for_number);
    EXPECT_EQ(failure_of(result.numbers[2]).reason, Reason::out_of_range);
    EXPECT_EQ(failure_of(result.numbers[3]).reason, Reason::out_of_range);
}

TEST(EachRow, LeavesEmptyRowsEmptyAndEndsWithTheLastThatHoldsAnything) {
    Block const result = rows_of(
        {dry_mass, column({520.0, empty, empty, 395.0, empty, empty}), column({0.14, empty, 0.2, 0.2, empty, empty})});
    ASSERT_EQ(result.rows, 4U);
    EXPECT_TRUE(is_absent(result.numbers[1]));
    EXPECT_EQ(failure_of(result.numbers[2]).reason, Reason::out_of_range) << "an empty cell is 0, as it is to DRYMASS";
    EXPECT_EQ(result.numbers[3], 316.0);
    EXPECT_TRUE(is_absent(rows_of({std::string("FUELENERGY"), column({520.0, empty, 430.0}), 0.14, 18.7}).numbers[1]))
        << "also where a function takes columns itself";
    Block const nothing = rows_of({dry_mass, column({empty, empty}), 0.2});
    ASSERT_EQ(nothing.rows, 1U);
    EXPECT_TRUE(is_absent(nothing.numbers[0]));
}

TEST(EachRow, GoesAlongARowAsWell) {
    Block const result = rows_of({boiling_point, row({0.0, 1240.0, empty})});
    EXPECT_EQ(result.rows, 1U);
    ASSERT_EQ(result.columns, 2U);
    EXPECT_EQ(result.numbers[1], number(ask(boiling_point, {1240.0})));
}

TEST(EachRow, TakesABlockOfOneCellForASingleValue) {
    Block const result = rows_of({dry_mass, column({520.0, 430.0}), column({0.5})});
    ASSERT_EQ(result.rows, 2U);
    EXPECT_EQ(result.numbers[1], 215.0);
    EXPECT_EQ(rows_of({boiling_point, column({empty})}).numbers[0], number(ask(boiling_point, {0.0})));
}

TEST(EachRow, GivesSentencesOfExplain) {
    Block const result = rows_of({explain_name, dry_mass, column({520.0, 430.0}), column({0.14, 12.0})});
    ASSERT_EQ(result.texts.size(), 2U);
    EXPECT_EQ(result.texts[0].text, explained(dry_mass, {520.0, 0.14}));
    EXPECT_EQ(result.texts[1].text, explained(dry_mass, {430.0, 12.0}));
}

TEST(EachRow, TakesAnEmptyCellBehindAFilledOneForZero) {
    Block const dry = rows_of({dry_mass, column({520.0, 430.0}), column({empty, 0.1})});
    EXPECT_EQ(dry.numbers, (std::vector<double>{520, 387}));
}

TEST(EachRow, RefusesAllPartsOfAResultInItsRow) {
    std::string const tiers = "TIERPROBABILITY", measure = "efficiency", four = "tier 4";
    Value const values = column({0.401, 0.35});
    EXPECT_EQ(failure_of(rows_of({tiers, measure, values, 0.02}).numbers[1]).reason, Reason::several_values);
    EXPECT_NEAR(rows_of({tiers, measure, values, 0.02, four}).numbers[0], 0.519938, 5e-7);
}

TEST(EachRow, RefusesWhatIsNoRowOfSingleValues) {
    Value const two = column({520.0, 430.0});
    EXPECT_EQ(failure_in(ask("EACHROW", {dry_mass, two, column({0.1, 0.1, 0.1})})).reason, Reason::columns_differ);
    EXPECT_EQ(failure_in(ask("EACHROW", {dry_mass, two, row({0.1, 0.1})})).reason, Reason::columns_differ);
    EXPECT_EQ(failure_in(ask("EACHROW", {dry_mass, row({520.0, 430.0}), row({0.1, 0.1, 0.1})})).reason,
              Reason::columns_differ);
    EXPECT_EQ(failure_in(ask("EACHROW", {dry_mass, Block(), 0.1})).reason, Reason::block_for_column);
    EXPECT_EQ(failure_in(ask("EACHROW", {dry_mass, square({1.0, 2.0, 3.0, 4.0}), 0.1})).reason,
              Reason::block_for_column);
    for (char const* name : {"OUTLIER", "LOGCHECK", "EACHROW", "BUDGET"})
        EXPECT_EQ(failure_in(ask("EACHROW", {std::string(name), two})).reason, Reason::several_values) << name;
    EXPECT_EQ(failure_in(ask("EACHROW", {std::string("no such"), two})).reason, Reason::unknown_name);
    for (Value const& explained_name : {Value(explain_name), Value(std::string("EACHROW")), two})
        EXPECT_EQ(failure_in(ask("EACHROW", {explain_name, explained_name, two})).reason, Reason::several_values)
            << "it would ask itself";
    EXPECT_EQ(failure_of(rows_of({dry_mass, two, 0.1, 0.1}).numbers[0]).reason, Reason::too_many_arguments);
    EXPECT_EQ(failure_of(rows_of({dry_mass, two}).numbers[1]).reason, Reason::argument_missing);
}

TEST(EachRow, IsExplainedByItsFirstRowThatIsRefused) {
    EXPECT_EQ(explained("EACHROW", {dry_mass, column({520.0, empty, 430.0, 395.0}), column({0.14, empty, 12.0, 20.0})}),
              "2 of 3 could not be computed; the first: row 3, moisture is 12, outside 0 to 0.75: 12 is 1200 %; type "
              "12% or 0.12.");
    EXPECT_EQ(explained("EACHROW", {dry_mass, column({520.0, 430.0}), 0.14}), "Fine.");
    EXPECT_EQ(explained("EACHROW", {explain_name, dry_mass, column({520.0, 430.0}), 0.14}), "Fine.");
    EXPECT_EQ(explained("EACHROW", {dry_mass, column({520.0, 430.0}), column({1.0, 2.0, 3.0})}),
              "The columns differ in length; a single value may serve all rows.");
}

TEST(EachRow, IsNotFineWhereARowIsOdd) {
    std::vector<Value> moistures(1005, 0.14);
    moistures[1] = moistures[2] = moistures[4] = moistures[700] = 0.0; // oven-dry, or an empty cell?
    moistures[3] = empty;
    std::string const text = explained("EACHROW", {dry_mass, 520.0, column(moistures)});
    EXPECT_TRUE(text.starts_with("Odd: row 2: ")) << text;
    EXPECT_NE(text.find(" row 5: "), std::string::npos) << text;
    EXPECT_NE(text.find("Something is odd in 1 more."), std::string::npos) << text;
    EXPECT_NE(text.find("Only the first 1000 rows were looked at"), std::string::npos) << text;
    EXPECT_EQ(text.find("Fine"), std::string::npos) << text;
}

} // namespace
} // namespace hearthcell::tests
