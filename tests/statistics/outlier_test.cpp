#include "calls.hpp"

#include "functions/kernels/statistics/outlier.hpp"

#include <random>

namespace hearthcell::tests {

TEST(Outlier, HasTheCriticalDistancesOfGrubbs) {
    struct Row {
        std::size_t runs;
        double distance, exactness;
    };
    // 3 to 5 recomputed with scipy. The others from memory of Grubbs' table (Technometrics 11 (1969), 2.5 % on either
    // side): three decimals, and the last is not always right.
    for (Row const& row : {Row{3, 1.15430, 5e-6},
                           {4, 1.48125, 5e-6},
                           {5, 1.71504, 5e-6},
                           {6, 1.887, 1e-3},
                           {7, 2.020, 1e-3},
                           {8, 2.126, 1e-3},
                           {10, 2.290, 1e-3},
                           {20, 2.709, 1e-3}})
        EXPECT_NEAR(kernels::critical_distance(row.runs, 0.05), row.distance, row.exactness) << row.runs << " runs";
}

TEST(Outlier, CouldNotTellAmongThreeOrFourRuns) {
    for (std::size_t const runs : {3U, 4U, 5U}) {
        double const largest = double(runs - 1) / std::sqrt(double(runs)); // that so many runs can have
        double const share = kernels::critical_distance(runs, 0.05) / largest;
        EXPECT_EQ(share > 0.98, runs < 5) << runs << " runs";
    }
    EXPECT_EQ(refusal("OUTLIER", {column({1, 1, 1, 50})}).reason, Reason::too_few_for_outlier);
    EXPECT_EQ(refusal("OUTLIER", {column({1, 1, 1, 50})}).argument, 0U);
    EXPECT_EQ(refusal("OUTLIER", {column({1, 1, 2, 50, absent, absent})}).reason, Reason::too_few_for_outlier);
    EXPECT_EQ(parts("OUTLIER", {column({1, 1, 2, 1, 50})}), (std::vector<double>{5}));
}

TEST(Outlier, FindsTheLastOfTheEightMassesOfTheHandbook) {
    // NIST/SEMATECH e-Handbook 1.3.5.17, from memory: 199.31 … 245.57, G = 2.4687 (cut off) against 2.126
    std::vector<double> const masses{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    kernels::Series const series = kernels::describe(std::get<Block>(column(masses)));
    EXPECT_NEAR((245.57 - series.mean) / series.deviation(), 2.4687, 1e-4);
    EXPECT_EQ(parts("OUTLIER", {column(masses)}), (std::vector<double>{8}));
}

TEST(Outlier, CountsBlankCellsInThePlaceThatItNames) {
    EXPECT_EQ(parts("OUTLIER", {column({absent, 31.0, 26.1, 25.8, absent, 26.4, 25.9, 26.2})}),
              (std::vector<double>{2}));
}

TEST(Outlier, LooksOnBothSides) {
    EXPECT_EQ(parts("OUTLIER", {column({26.1, 25.8, 26.4, 20.0, 25.9, 26.2})}), (std::vector<double>{4}));
    EXPECT_EQ(parts("OUTLIER", {column({26.1, 25.8, 26.4, 31.0, 25.9, 26.2})}), (std::vector<double>{4}));
}

TEST(Outlier, SaysNoneWhereAllAreAlike) {
    EXPECT_EQ(number("OUTLIER", {column({0.1, 0.1, 0.1, 0.1, 0.1, 0.1})}), 0);
    EXPECT_EQ(number("OUTLIER", {column({1, 2, 3, 4, 5})}), 0);
}

TEST(Outlier, IsHarderToBeWithMoreConfidence) {
    Value const runs = column({26.1, 25.8, 26.4, 25.9, 27.6, 26.2});
    EXPECT_EQ(parts("OUTLIER", {runs, 0.9}), (std::vector<double>{5}));
    EXPECT_EQ(number("OUTLIER", {runs, 0.999}), 0);
}

TEST(Outlier, NamesBothOfTwoRunsEquallyFarOutAndTheFirstWhereOnlyOneMayBe) {
    std::vector<double> runs(50, 10.0);
    runs[20] = 12;
    runs[30] = 8;
    EXPECT_EQ(parts("OUTLIER", {column(runs)}), (std::vector<double>{21, 31}));
    EXPECT_EQ(parts("OUTLIER", {column(runs), 0.99, 1.0}), (std::vector<double>{21}));
}

TEST(Outlier, FindsTheThreeOfRosnersFiftyFour) {
    // Rosner 1983, as NIST/SEMATECH e-Handbook 1.3.5.17.3 prints it: with 10 at the most and 95 %, 6.01, 5.42 and 5.34
    std::vector<double> const measured{
        -0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70,
        1.76,  1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40,
        2.47,  2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01};
    std::vector<double> const three{52, 53, 54};
    EXPECT_EQ(parts("OUTLIER", {column(measured), 0.95, 10.0}), three);
}

TEST(Outlier, DoesNotLetTwoHideEachOther) {
    std::vector<double> const both{5, 6};
    EXPECT_EQ(parts("OUTLIER", {column({10, 10.1, 9.9, 10.05, 30, 30.2, 9.95})}), both);
}

TEST(Outlier, LooksForNoMoreThanItIsTold) {
    std::vector<double> const last{6};
    Value const runs = column({10, 10.1, 9.9, 10.05, 9.9, 30.2, 9.95, 10.0, 10.1});
    EXPECT_EQ(parts("OUTLIER", {runs, 0.99, 1.0}), last);
    EXPECT_EQ(parts("OUTLIER", {runs, 0.99, 0.0}), last); // an empty cell: as if left out
    EXPECT_EQ(refusal("OUTLIER", {runs, 0.99, 0.5}).reason, Reason::out_of_range);
}

TEST(Outlier, IsFoundAmongAHundredThousandRuns) {
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    std::vector<double> runs(100000);
    for (double& run : runs)
        run = 1e6 + scatter(chance);
    runs[70000] += 1e9;
    runs[80000] -= 50;
    EXPECT_EQ(parts("OUTLIER", {column(runs), 0.9999}), (std::vector<double>{70001, 80001}));
}

TEST(Outlier, SeldomAccusesCleanRuns) {
    // For few runs in 1.1 to 1.8 % of clean series at 99 %
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    int accused = 0;
    constexpr int series = 10000;
    for (int i = 0; i < series; ++i) {
        std::vector<double> runs(5 + std::size_t(i) % 6);
        for (double& run : runs)
            run = 20 + scatter(chance);
        Outcome const result = outcome("OUTLIER", {column(runs)});
        accused += std::holds_alternative<Block>(result) ? 1 : 0;
    }
    EXPECT_LE(accused, series * 0.02);
}

} // namespace hearthcell::tests
