// The template for comparisons, filled with the runs of the demonstration, in each language. What it has to give was
// computed apart from the same runs: by R 4.2 with lm, confint, t.test, p.adjust(method = "holm"), and the limits of a
// relative change by Welch's test inverted with uniroot; the runs needed by scipy 1.10, Welch's power integrated.

#include "comparison_template.hpp"

#include <array>

namespace hearthcell::tests {

INSTANTIATE_TEST_SUITE_P(Templates, ComparisonTemplate, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(ComparisonTemplate, LeavesOutTheEffectOfTheDaysWhereEveryRunHasOne) {
    EXPECT_EQ(comparison.shown("A6"), said_here(by_day));
    expect(10, {-15.52, -19.2449402845, -11.7950597155, -0.127422003284, -0.158004435833, -0.0968395707348, "< 0.001",
                "better", 5});
    expect(11, {-2.52, -6.2449402845, 1.2049402845, -0.0206896551724, -0.0512720877217, 0.00989277737686, "0.157",
                "not shown", 5});
    expect(20, {-3.54, -4.39994683864, -2.68005316136, -0.120326308634, -0.149556316745, -0.0910963005221, "< 0.001",
                "better", 5});
    // Points: a hundred times what lm gives for the fractions. More is better.
    expect(30, {3.12, 2.49072418792, 3.74927581208, 0.140921409214, 0.112498834143, 0.169343984285, "< 0.001", "better",
                5});
    EXPECT_EQ(comparison.shown("J31"), "0.083");
    EXPECT_EQ(comparison.shown("J40"), "0.491");
    EXPECT_EQ(comparison.shown("J41"), "0.072"); // Holm's; alone 0.036
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, ComparesWithoutDaysWhereNoneAreTyped) {
    in_each_run('C', "");
    EXPECT_EQ(comparison.shown("A6"), said_here("Without days."));
    expect(10, {-15.52, -22.4221388104, -8.61786118955, -0.127422003284, -0.182894137052, -0.0713119047149, "0.002",
                "better", 6});
    expect(11, {-2.52, -9.7929056829, 4.7529056829, -0.0206896551724, -0.0798886406066, 0.0393255503661, "0.434",
                "not shown", 6});
    expect(30,
           {3.12, 1.56988316577, 4.67011683423, 0.140921409214, 0.0701067117031, 0.213794682872, "0.004", "better", 8});
    // The limits of one alone leave out 0, p with two variants compared does not reach 5 %.
    expect(40, {-1.82, -3.51578272968, -0.124217270321, -0.130747126437, -0.230483349628, -0.00994548893312, "0.078",
                "not shown", 19});
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, NamesTheSavingOfTheFirstVariant) {
    EXPECT_NEAR(number_named(workbook, "fuel_saving"), 1 - 106.28 / 121.8, 1e-12); // means by hand
    EXPECT_NEAR(number_named(workbook, "boil_time_saving"), 1 - 25.88 / 29.42, 1e-12);
}

TEST_P(ComparisonTemplate, TurnsTheVerdictWhereMoreOfAResultIsBetter) {
    runs.number("G27", 15.5); // without the outlier both are shown
    EXPECT_EQ(comparison.shown("K40"), said_here("better"));
    EXPECT_EQ(comparison.shown("K41"), said_here("worse"));
    EXPECT_NE(summary.shown("D15").find(said_here("This is a change for the worse.")), std::string::npos);
    runs.text("J10", said_here("more is better"));
    EXPECT_EQ(comparison.shown("K40"), said_here("worse"));
    EXPECT_EQ(comparison.shown("K41"), said_here("better"));
    EXPECT_LT(number(comparison.value("G40")), 0); // less is less, whichever is better
}

TEST_P(ComparisonTemplate, MarksEveryOutlierAtItsRun) {
    for (int row = first_run; row <= last_run; ++row)
        EXPECT_EQ(runs.shown(cell('I', row)), row == 27 ? said_here("other") : "") << row;
    runs.number("D27", 250);
    EXPECT_EQ(runs.shown("I27"), said_here("fuel use") + ", " + said_here("other"));
    // Two that lie together cannot hide each other; nothing is looked for in four runs.
    std::array<double, 7> const fuel{10, 10.1, 9.9, 10.05, 30, 30.2, 9.95};
    for (int row = first_run; row <= last_run; ++row)
        runs.text(cell('B', row), row < first_run + 7 ? flat : "");
    for (std::size_t run = 0; run < fuel.size(); ++run)
        runs.number(cell('D', first_run + int(run)), fuel[run]);
    EXPECT_EQ(runs.shown("I20"), said_here("fuel use"));
    EXPECT_EQ(runs.shown("I21"), said_here("fuel use"));
    EXPECT_EQ(runs.shown("I22"), "");
    for (char const* row : {"B16", "B17", "B18"})
        runs.text(row, ribbed);
    EXPECT_EQ(runs.shown("I20"), "");
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, LeavesARunThatDoesNotCountOutOfEverything) {
    auto const everything = [this] {
        workbook.recalculate();
        std::string all;
        for (int place = 1; place < workbook.sheets(); ++place)
            for (auto const& row : workbook.sheet(place).values("A5:AG60"))
                for (CellValue const& cell : row)
                    all += testing::PrintToString(cell) + "|";
        return all;
    };
    std::string const with_all = everything();
    runs.text("H27", "door blown open");
    std::string const not_counted = everything();
    EXPECT_NE(not_counted, with_all);
    EXPECT_EQ(runs.shown("J27"), said_here("This run is left out of everything."));
    EXPECT_EQ(runs.shown("I27"), ""); // no outlier of it either
    runs.text("H27", "");
    runs.text("B27", ""); // as if it were of no variant
    EXPECT_EQ(everything(), not_counted);
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, ComparesByDayOnlyWhatTheDaysJoin) {
    runs.text("C30", ""); // the ribbed grate's last run
    EXPECT_EQ(runs.shown("J30"), said_here("Missing: the day, which other runs have."));
    EXPECT_EQ(comparison.shown("A6"), said_here("Without days: not every run with this result has one."));
    EXPECT_EQ(comparison.shown("J10"), "0.002");
    for (int row = first_run; row <= last_run; ++row)
        runs.text(cell('C', row), "day " + std::to_string(row));
    EXPECT_EQ(comparison.shown("A6"), said_here("Without days: every run has a day of its own."));
    EXPECT_EQ(comparison.shown("J10"), "0.002");
    for (int row = first_run; row <= last_run; ++row) // each variant on a day of its own
        runs.text(cell('C', row), runs.shown(cell('B', row)));
    EXPECT_EQ(comparison.shown("A6"),
              said_here("No limits: by day they cannot be worked out (the days do not join the variants, too few runs "
                        "are left, or nothing scatters), and runs of one day are alike. Clear the days only if they "
                        "cannot matter."));
    EXPECT_NEAR(number(comparison.value("D10")), -15.52, 1e-9);
    for (char const column : {'E', 'F', 'H', 'I', 'J', 'K', 'L'})
        EXPECT_EQ(comparison.shown(cell(column, 10)), "") << column;
    EXPECT_EQ(summary.shown("A7"), sentence("Nothing may be said: by day {1} and {2} cannot be compared, and the runs "
                                            "of one day are alike. What a day did would look the same.",
                                            {ribbed, flat}));
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, TakesTheSameDayAsTheSameHoweverItIsTyped) {
    runs.text("C16", " 2 NOV ");
    EXPECT_EQ(comparison.shown("A6"), said_here(by_day));
    EXPECT_NEAR(number(comparison.value("E10")), -19.2449402845, 1e-9);
}

} // namespace hearthcell::tests
