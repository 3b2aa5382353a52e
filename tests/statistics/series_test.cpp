#include "calls.hpp"

namespace hearthcell::tests {

TEST(Series, StatesTheLevelOfItsLimits) {
    EXPECT_EQ(parts("SERIES", {column({1, 2, 4})}).back(), 0.95);
    EXPECT_EQ(parts("SERIES", {column({1, 2, 4}), 0.8}).back(), 0.8);
}

TEST(Series, GivesTheMeanUnlessAnotherPartIsNamed) {
    Value const runs = column({640, 700, 655});
    std::vector<double> const all = parts("SERIES", {runs});
    EXPECT_EQ(number("SERIES", {runs}), all[0]);
    EXPECT_EQ(number("SERIES", {runs, Value(), 0.0}), all[0]) << "an empty cell";
    struct Asked {
        char const* name;
        std::size_t place;
    };
    for (Asked const& asked : {Asked{"mean", 0}, Asked{"N", 1}, Asked{"Standard Deviation", 2}, Asked{"écart-type", 2},
                               Asked{"limite superieure", 5}, Asked{"límite inferior", 4}, Asked{"kikomo cha juu", 5}})
        EXPECT_EQ(number("SERIES", {runs, 0.95, std::string(asked.name)}), all[asked.place]) << asked.name;
    for (char const* word : {"all", "Tout", "todo", "YOTE"})
        EXPECT_EQ(parts("SERIES", {runs, 0.95, std::string(word)}), all) << word;
}

TEST(Series, RefusesAPartThatItHasNot) {
    Value const runs = column({640, 700, 655});
    EXPECT_EQ(refusal("SERIES", {runs, 0.95, std::string("median")}).reason, Reason::unknown_name);
    EXPECT_EQ(refusal("SERIES", {runs, 0.95, std::string("median")}).argument, 2U);
    EXPECT_EQ(refusal("SERIES", {runs, 0.95, 3.0}).reason, Reason::number_for_text);
    EXPECT_EQ(refusal("SERIES", {runs, 0.95, runs}).reason, Reason::block_for_value);
    EXPECT_EQ(refusal("SERIES", {runs, 95.0, std::string("median")}).argument, 1U) << "the first that is wrong";
    EXPECT_EQ(refusal("SERIES", {column({5}), 0.95, std::string("median")}).argument, 2U);
}

TEST(Series, FailsWhereTheWantedPartHasNoValue) {
    Value const about_zero = column({-1, 1, -2, 2});
    EXPECT_EQ(number("SERIES", {about_zero}), 0);
    EXPECT_EQ(refusal("SERIES", {about_zero, 0.95, std::string("coefficient of variation")}).reason,
              Reason::mean_not_positive);
}

TEST(Series, TakesNoBlankForARun) {
    EXPECT_EQ(parts("SERIES", {column({absent, 640, absent, 700, 655, absent})}),
              parts("SERIES", {column({640, 700, 655})}));
}

TEST(Series, TakesARowAsWellAsAColumn) {
    EXPECT_EQ(parts("SERIES", {Block{1, 3, {640, 700, 655}, {}}}), parts("SERIES", {column({640, 700, 655})}));
}

TEST(Series, OfEqualRunsHasNoScatterAtAll) {
    // A tenth, a third and large numbers do not sum exactly in double; a rounding error must not pass for scatter.
    for (double const run : {0.1, 1.0 / 3, 82.7, 123456.789, 1e12 / 7})
        for (std::size_t const count : {2U, 3U, 7U, 10U, 1000U}) {
            auto const row = parts("SERIES", {column(std::vector<double>(count, run))});
            ASSERT_EQ(row.size(), 7U);
            EXPECT_EQ(row[0], run) << count << " runs";
            EXPECT_EQ(row[2], 0) << count << " runs of " << run;
            EXPECT_EQ(row[4], run);
            EXPECT_EQ(row[5], run);
        }
}

TEST(Series, LosesNothingToLargeRunsThatCancel) {
    auto const row = parts("SERIES", {column({1e12, 1e-5, -1e12})});
    EXPECT_DOUBLE_EQ(row.at(0), 1e-5 / 3);
    EXPECT_DOUBLE_EQ(row.at(2), 1e12);
}

TEST(Series, DoesNotDependOnTheOrderOfTheRuns) {
    std::vector<double> up;
    up.reserve(1000);
    for (int i = 0; i < 1000; ++i)
        up.push_back(1e6 + 0.1 * i * i);
    std::vector<double> const down(up.rbegin(), up.rend());
    EXPECT_EQ(parts("SERIES", {column(up)}), parts("SERIES", {column(down)}));
}

TEST(Series, NeedsTwoRuns) {
    EXPECT_EQ(refusal("SERIES", {column({5})}).reason, Reason::too_few_runs);
    EXPECT_EQ(refusal("SERIES", {5.0}).reason, Reason::too_few_runs);
    EXPECT_EQ(refusal("SERIES", {column({absent, absent, 5})}).reason, Reason::too_few_runs);
    EXPECT_EQ(refusal("SERIES", {column({absent, absent})}).reason, Reason::too_few_runs);
    EXPECT_EQ(parts("SERIES", {column({5, 6})}).at(1), 2);
}

TEST(Series, RefusesTextAndNumbersOutOfAllProportion) {
    Block with_text{3, 1, {5, text_in_block, 6}, {{1, "spilled"}}};
    Failure const text = refusal("SERIES", {with_text});
    EXPECT_EQ(text.reason, Reason::text_for_number);
    EXPECT_EQ(text.row, 2U);
    EXPECT_EQ(refusal("SERIES", {column({5, 6, 2e12})}).reason, Reason::out_of_range);
    EXPECT_EQ(refusal("SERIES", {column({5, 6}), 95.0}).reason, Reason::out_of_range);
}

TEST(Series, HasNoCoefficientOfVariationAboutAMeanOfZeroOrLess) {
    for (double const shift : {0.0, -5.0}) {
        auto const row = parts("SERIES", {column({-1 + shift, 1 + shift})});
        EXPECT_EQ(failure_of(row.at(3)).reason, Reason::mean_not_positive);
        EXPECT_FALSE(failed(row.at(2)));
        EXPECT_FALSE(failed(row.at(4)));
    }
}

} // namespace hearthcell::tests
