// The template for comparisons says in words what may be said of its runs, what may not, and what is wrong.

#include "comparison_template.hpp"

#include "functions/words/sentences.hpp"

namespace hearthcell::tests {
namespace {

constexpr char may_be_said_less[] =
    "May be said: {3} with {1} is {4} ({5}) less than with {2}, between {6} and {7} less ({8} confidence, {9} runs "
    "against {10}).";
constexpr char may_be_said_more[] =
    "May be said: {3} with {1} is {4} ({5}) more than with {2}, between {6} and {7} more ({8} confidence, {9} runs "
    "against {10}).";
constexpr char may_not_be_said[] =
    "May not be said: that {3} differs between {1} and {2}, or that it is the same. Anything between {6} and {7} is "
    "possible ({8} confidence, {9} runs against {10}).";
constexpr char would_have_shown[] = "A change of {12} would have shown in 8 of 10 such series.";
constexpr char takes_more[] = "To show a change of {12} it takes about {11} runs of each.";
constexpr char alone[] = "By itself it would be shown; with several variants compared at once it is not.";
constexpr char outliers[] = "Outliers among these runs: {1}. Look into their notes before you say anything.";

} // namespace

TEST_P(ComparisonTemplate, SaysWhatMayBeSaidAndWhatMayNot) {
    std::string const unit = said_here("g/kg water");
    std::vector<std::string> values{
        ribbed, flat, said_here("specific fuel use"), "13 %", "15.5 " + unit, "9.7 %", "16 %", "95 %", "5", "5"};
    EXPECT_EQ(summary.shown("A7"), sentence(may_be_said_less, values));
    values = {ribbed, flat, said_here("efficiency"), "14 %", "3.1 " + said_here("points"), "11 %", "17 %", "95 %",
              "5",    "5"};
    EXPECT_EQ(summary.shown("A14"), sentence(may_be_said_more, values));
    values = {baffle,
              flat,
              said_here("specific fuel use"),
              "",
              "",
              sentence("{1} less", {"5.1 %"}),
              sentence("{1} more", {"1 %"}),
              "95 %",
              "5",
              "5",
              "5",
              "10 %"};
    EXPECT_EQ(summary.shown("A8"), sentence(may_not_be_said, values) + " " + sentence(would_have_shown, values));
    values = {baffle,
              flat,
              "carbon monoxide, whole test",
              "",
              "",
              sentence("{1} more", {"3.9 %"}),
              sentence("{1} more", {"87 %"}),
              "95 %",
              "5",
              "5",
              "228",
              "10 %"};
    EXPECT_EQ(summary.shown("D15"), sentence(may_not_be_said, values) + " " + said_here(alone) + " " +
                                        sentence(takes_more, values) + " " + sentence(outliers, {"12"}));
    for (char const* free : {"A9", "A10", "D9", "D10", "A16", "A17", "D16", "D17"}) // no such variant
        EXPECT_EQ(summary.shown(free), "") << free;
}

TEST_P(ComparisonTemplate, SaysInWordsWhatIsWrongWithARun) {
    runs.text("D17", "hundred"); // of the ribbed grate
    EXPECT_EQ(runs.shown("J17"), said_here("fuel use") + ": " + said_here("a number is needed, not a text."));
    EXPECT_EQ(comparison.shown("C10"), "");
    EXPECT_EQ(comparison.shown("G10"), "");
    EXPECT_EQ(summary.shown("A7"),
              sentence("Nothing may be said: a result of {1} or of {2} is a text or cannot be. See the remarks on the "
                       "sheet Runs.",
                       {ribbed, flat}));
    EXPECT_NE(comparison.shown("G11"), "");
    runs.number("F22", 22.2); // of the baffle: per cent without the sign, pasted over the rule
    EXPECT_EQ(runs.shown("J22"), said_here("efficiency") + ": " + said_here("this number cannot be."));
    EXPECT_EQ(comparison.shown("G31"), "");
    runs.text("B19", "no such stove");
    EXPECT_EQ(runs.shown("J19"), said_here("This variant is not in the list above."));
    EXPECT_EQ(number(comparison.value("B20")), 4);
    runs.text("B20", "");
    EXPECT_EQ(runs.shown("J20"), said_here("Missing: ") + said_here("variant") + ".");
    runs.text("B31", flat);
    EXPECT_EQ(runs.shown("J31"), said_here("Missing: a result."));
    for (Sheet const* const sheet : {&comparison, &summary})
        EXPECT_EQ(
            sheet->shown("A4"),
            sentence("Rows with a remark on the sheet Runs: {1}. Read them before you use these results.", {"5"}));
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, SaysInWordsWhatIsWrongWithTheListAndTheSettings) {
    runs.text("J8", "");
    EXPECT_EQ(runs.shown("A11"), said_here("Missing: the name of the result of your own."));
    runs.text("J6", "");
    EXPECT_EQ(runs.shown("A11"), said_here("Missing: the confidence, or the smallest change that matters."));
    EXPECT_EQ(summary.shown("A7"), said_here("Missing: the confidence, or the smallest change that matters."));
    runs.text("C9", ribbed);
    EXPECT_EQ(runs.shown("A11"), said_here("A name stands in the list of variants twice."));
    runs.text("C6", "");
    EXPECT_EQ(runs.shown("A11"), said_here("Missing: ") + said_here("baseline variant") + ".");
    EXPECT_EQ(summary.shown("A7"), "");
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, SaysNothingOfASingleRunAndNoShareOfAMeanBelowZero) {
    in_each_run('C', "");
    for (int row = first_run; row <= last_run; ++row) {
        runs.number(cell('G', row), -row);
        if (row > 19)
            runs.text(cell('E', row), "");
    }
    EXPECT_EQ(summary.shown("D7"),
              sentence("Nothing may be said yet: {1} and {2} need two runs each at least, better five; they have {9} "
                       "and {10}.",
                       {ribbed, flat, "", "", "", "", "", "", "2", "1"}));
    EXPECT_EQ(summary.shown("D14"), sentence("No share of a mean that is 0 or less: for {1} against {2}, see the "
                                             "difference on the sheet Comparison.",
                                             {ribbed, flat}));
    EXPECT_NEAR(number(comparison.value("D40")), 0.2, 1e-12); // -(17+19+23+26+30)/5 + (18+20+24+25+29)/5 by hand
    EXPECT_EQ(comparison.shown("G40"), "");
    EXPECT_EQ(errors(), "");
}

TEST_P(ComparisonTemplate, ExplainsAnErrorAndCountsMoreRunsThanTheChartHolds) {
    in_each_run('C', "");
    EXPECT_EQ(summary.shown("A18"), said_here("In the charts: each run as a point, less the mean of the baseline; "
                                              "across it the mean of the variant with limits of its own, which leave "
                                              "the days in."));
    for (int row = first_run; row <= last_run; ++row)
        runs.number(cell('D', row), 100);
    EXPECT_EQ(comparison.value("G10"), CellValue(not_a_result));
    EXPECT_EQ(summary.shown("A7"), sentences::of(Reason::no_scatter).in(language_of(GetParam())));
    for (int row = 31; row < 41; ++row) {
        runs.text(cell('B', row), ribbed);
        runs.number(cell('E', row), 25 + row % 3);
    }
    EXPECT_EQ(number(comparison.value("B20")), 15);
    EXPECT_NE(summary.shown("A18").find(said_here("Only the first ten runs of a variant are shown.")),
              std::string::npos);
}

TEST_P(ComparisonTemplate, SaysToAPartnerWhatItSaysToTheTester) {
    Sheet const partners = workbook.sheet(4);
    EXPECT_EQ(partners.shown("B10"), flat + ": 5; " + ribbed + ": 5; " + baffle + ": 5");
    for (int line = 0; line < 4; ++line) {
        EXPECT_EQ(partners.shown(cell('A', 14 + line)), summary.shown(cell('A', 7 + line))) << line;
        EXPECT_EQ(partners.shown(cell('A', 20 + line)), summary.shown(cell('A', 14 + line))) << line;
    }
    EXPECT_NE(partners.shown("A14"), "");
    EXPECT_EQ(partners.shown("A28"),
              said_here("This page certifies nothing: it is what the runs gave, and no programme "
                        "or authority has judged it."));
    runs.text("J6", ""); // the confidence
    EXPECT_EQ(partners.shown("B11"), "");
    EXPECT_EQ(errors(), "");
}

} // namespace hearthcell::tests
