#include "calls.hpp"

#include "functions/explain/explain.hpp"

#include <random>

namespace hearthcell::tests {
namespace {

std::string explained(std::string_view name, std::vector<Value> const& arguments) {
    return explain(*find_function(name), arguments);
}

std::string const independence =
    "The limits take the runs as independent. Runs of one day seldom are: of three runs on each of two days, days "
    "twice "
    "as far apart as the runs of one day, limits for 95 % hold the true mean in 69 of 100 cases.";

std::string const others = " The cell shows the first; another by its name as the last argument, part, or \"all\".";

void expect_says(std::string const& text, std::string_view words) {
    EXPECT_NE(text.find(words), std::string::npos) << "'" << words << "' is not in: " << text;
}

} // namespace

TEST(ExplainRepeatedRuns, SaysHowOftenLimitsOfTwoDaysHold) {
    // What it says, drawn: days scatter by 2, runs of a day by 1; the true mean is 0.
    std::mt19937_64 generator(5);
    std::normal_distribution<double> normal;
    int held = 0;
    constexpr int times = 20000;
    for (int i = 0; i < times; ++i) {
        std::vector<double> runs;
        for (int day = 0; day < 2; ++day) {
            double const of_day = 2 * normal(generator);
            for (int run = 0; run < 3; ++run)
                runs.push_back(of_day + normal(generator));
        }
        std::vector<double> const series = parts("SERIES", {column(runs)});
        held += series[4] <= 0 && series[5] >= 0 ? 1 : 0;
    }
    EXPECT_NEAR(double(held) / times, 0.69, 0.01);
}

TEST(ExplainRepeatedRuns, SaysHowLittleTwoOrThreeRunsTell) {
    expect_says(
        explained("SERIES", {column({22.4, 23.1})}),
        "Two runs tell little: the limits lie 12.7 standard errors from the mean; with five runs it would be 2.8.");
    expect_says(
        explained("SERIES", {column({22.4, 23.1, absent, 22.8}), 0.9}),
        "Three runs tell little: the limits lie 2.9 standard errors from the mean; with five runs it would be 2.1.");
    EXPECT_EQ(explained("SERIES", {column({22.4, 23.1, 22.8, 23})}).find("tell little"), std::string::npos);
}

TEST(ExplainRepeatedRuns, AsksWhetherARunIsInAnotherUnit) {
    expect_says(explained("SERIES", {column({0.231, 22.4})}), "Odd: row ");
    expect_says(explained("SERIES", {column({0.231, absent, 0.228, 22.4, 0.235})}),
                "Odd: row 4 of values is 22.4, the middle of the others 0.231: per cent beside a fraction, or another "
                "unit?");
    expect_says(explained("SERIES", {column({640, 0.655, 690, 700})}),
                "Odd: row 2 of values is 0.655, the middle of the others 690: ");
    for (std::vector<double> const& usual : {std::vector<double>{640, 655, 690}, {5, 40, 60}, {-1, 100, 100}})
        EXPECT_EQ(explained("SERIES", {column(usual)}).find("Odd"), std::string::npos);
}

TEST(ExplainRepeatedRuns, NamesEveryPartOfABlock) {
    EXPECT_EQ(
        explained("SERIES", {column({640, 700, 655, 610, 690, 665})}),
        "Fine: mean 660; n 6; standard deviation 33.0151; coefficient of variation 0.050023; lower limit 625.353; "
        "upper limit 694.647; level 0.95." +
            others + " " + independence);
    EXPECT_EQ(
        explained("DIFFERENCE", {column({1, 2, 3}), column({11, 12, 13})}),
        "Fine: difference 10; lower limit 7.73304; upper limit 12.267; p 0.000255217; degrees of freedom 4; level "
        "0.95." +
            others);
}

TEST(ExplainRepeatedRuns, SaysNothingOfOtherPartsWhereOneIsNamed) {
    Value const runs = column({640, 700, 655, 610, 690, 665});
    EXPECT_EQ(explained("SERIES", {runs, 0.95, std::string("upper limit")}).find(others), std::string::npos);
    EXPECT_EQ(explained("SERIES", {runs, 0.95, std::string("median")}),
              "part is \"median\", which is none of: \"mean\", \"n\", \"standard deviation\", \"coefficient of "
              "variation\", \"lower limit\", \"upper limit\", \"level\", \"all\".");
}

TEST(ExplainRepeatedRuns, SaysWhereAPartBelongs) {
    EXPECT_EQ(explained("SERIES", {column({5, 6}), std::string("upper limit")}),
              "confidence is the text \"upper limit\"; a number is needed. \"upper limit\" is a part: it comes last, "
              "as in SERIES(values; [confidence]; part).");
}

TEST(ExplainRepeatedRuns, SaysWhyAPartHasNoValue) {
    EXPECT_EQ(explained("SERIES", {column({-1, 1, -1, 1, -1, 1}), 0.9}),
              "In part: mean 0; n 6; standard deviation 1.09545; coefficient of variation none; lower limit -0.901157; "
              "upper limit 0.901157; level 0.9. The mean of values is not above 0, so that no share of it exists." +
                  others + " " + independence);
    EXPECT_EQ(explained("SAVING", {column({20, 900}), column({400, 420})}),
              "In part: saving 0.108696; lower limit none; upper limit none; p 0.92797; degrees of freedom 1.00103; "
              "level 0.95. The limits are unbounded: the baseline scatters so much, or has so few runs, that at this "
              "confidence its mean could be 0." +
                  others);
}

TEST(ExplainRepeatedRuns, SaysWhatIsWrong) {
    EXPECT_EQ(explained("SERIES", {column({5, absent})}),
              "values hold fewer than two runs; scatter shows from two on. Empty cells are no runs.");
    EXPECT_EQ(explained("SERIES", {Block{3, 1, {5, text_in_block, 6}, {{1, "spilled"}}}}),
              "row 2 of values is the text \"spilled\"; a number is needed.");
    EXPECT_EQ(explained("SERIES", {column({5, 6, -3e12})}),
              "row 3 of values is -3000000000000, outside -1000000000000 to 1000000000000.");
    EXPECT_EQ(explained("SERIES", {Block{2, 2, {5, 6, 7, 8}, {}}}),
              "values must be one row or one column, not a block of both.");
    EXPECT_EQ(explained("DIFFERENCE", {column({5, 6}), column({5})}),
              "new values hold fewer than two runs; scatter shows from two on. Empty cells are no runs.");
    EXPECT_EQ(
        explained("DIFFERENCE", {column({5, 5}), column({6, 6})}),
        "The runs of each series are all the same: without any scatter there is nothing to judge a difference by.");
    EXPECT_EQ(explained("SAVING", {column({-5, -6}), column({5, 6})}),
              "The mean of baseline values is not above 0, so that no share of it exists.");
    EXPECT_EQ(explained("SAVING", {column({5, 6}), column({5, 7}), 0.95, 0.05}),
              "pooled variance is 0.05; TRUE or FALSE is needed.");
    EXPECT_EQ(explained("SAVING", {column({5, 6}), column({5, 7}), 0.95, std::string("yes")}),
              "pooled variance is the text \"yes\"; a number is needed.");
    EXPECT_EQ(explained("OUTLIER", {column({5, 6, 7, 8})}),
              "values hold fewer than five runs; below that no outlier can be told.");
    EXPECT_EQ(explained("RUNSNEEDED", {0.4, 0.001}),
              "More than 10000 runs of each variant would be needed: the change is too small against the scatter.");
}

TEST(ExplainRepeatedRuns, GuessesWhatWasMeant) {
    EXPECT_EQ(explained("SERIES", {column({5, 6}), 95.0}),
              "confidence is 95, outside 0.5 to 0.9999: 95 is 9500 %; type 95% or 0.95.");
    EXPECT_EQ(explained("SERIES", {column({5, 6}), 0.05}),
              "confidence is 0.05, outside 0.5 to 0.9999: 0.05 looks like the risk of being wrong; its counterpart is "
              "0.95.");
    EXPECT_EQ(explained("RUNSNEEDED", {5.0, 0.1}),
              "coefficient of variation is 5, outside 0.001 to 1: 5 is 500 %; type 5% or 0.05.");
    EXPECT_EQ(
        explained("RUNSNEEDED", {0.05, 1.0}),
        "Odd: a coefficient of variation above 0.5 or a smallest change of 1 is 50 % or 100 %; type 5% or 0.05 for "
        "5 %.");
    EXPECT_EQ(explained("RUNSNEEDED", {0.05, 0.1}), "Fine: runs of each variant 6.");
}

TEST(ExplainRepeatedRuns, SaysOfATierWhatItHoldsFor) {
    std::string const caution = " A tier holds for a result of the laboratory test of ISO 19867-1 only, and for each "
                                "measure by itself; results of other protocols have none.";
    EXPECT_EQ(explained("PERFORMANCETIER", {std::string("PM2.5"), 40.0}),
              "Fine: tier 4. By \"PM2.5\": tiers 1 to 5 at 1031, 481, 218, 62, 5 mg/MJ or less." + caution);
    EXPECT_EQ(explained("PERFORMANCETIER", {std::string("durability"), 0.0}),
              "Odd: value is 0: none at all, or an empty cell? By \"durability\": tiers 1 to 5 below 35, 25, 20, 15, "
              "10." +
                  caution);
    EXPECT_EQ(explained("PERFORMANCETIER", {std::string("efficiency"), 35.0}),
              "value is 35, which this measure cannot be: an efficiency is above 0 and at most 1 (type 35% or 0.35), a "
              "safety score above 0 and at most 100, an emission above 0. An empty cell counts as 0.");
    EXPECT_EQ(explained("PERFORMANCETIER", {std::string("soot"), 35.0}),
              "measure is \"soot\", which is none of: \"efficiency\", \"CO\", \"PM2.5\", \"safety\", \"durability\".");
}

} // namespace hearthcell::tests
