#include "calls.hpp"

#include "functions/kernels/statistics/outlier.hpp"

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
    EXPECT_EQ(number("OUTLIER", {column({1, 1, 2, 1, 50})}), 5);
}

TEST(Outlier, FindsTheLastOfTheEightMassesOfTheHandbook) {
    // NIST/SEMATECH e-Handbook 1.3.5.17, from memory: 199.31 … 245.57, G = 2.4687 (cut off) against 2.126
    std::vector<double> const masses{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    kernels::Series const series = kernels::describe(std::get<Block>(column(masses)));
    EXPECT_NEAR((245.57 - series.mean) / series.deviation(), 2.4687, 1e-4);
    EXPECT_EQ(number("OUTLIER", {column(masses)}), 8);
}

TEST(Outlier, CountsBlankCellsInThePlaceThatItNames) {
    EXPECT_EQ(number("OUTLIER", {column({absent, 31.0, 26.1, 25.8, absent, 26.4, 25.9, 26.2})}), 2);
}

TEST(Outlier, LooksOnBothSides) {
    EXPECT_EQ(number("OUTLIER", {column({26.1, 25.8, 26.4, 20.0, 25.9, 26.2})}), 4);
    EXPECT_EQ(number("OUTLIER", {column({26.1, 25.8, 26.4, 31.0, 25.9, 26.2})}), 4);
}

TEST(Outlier, SaysNoneWhereAllAreAlike) {
    EXPECT_EQ(number("OUTLIER", {column({0.1, 0.1, 0.1, 0.1, 0.1, 0.1})}), 0);
    EXPECT_EQ(number("OUTLIER", {column({1, 2, 3, 4, 5})}), 0);
}

TEST(Outlier, IsHarderToBeWithMoreConfidence) {
    Value const runs = column({26.1, 25.8, 26.4, 25.9, 27.6, 26.2});
    EXPECT_EQ(number("OUTLIER", {runs, 0.9}), 5);
    EXPECT_EQ(number("OUTLIER", {runs, 0.999}), 0);
}

TEST(Outlier, NamesTheFirstOfTwoRunsEquallyFarOut) {
    std::vector<double> runs(50, 10.0);
    runs[20] = 12;
    runs[30] = 8;
    EXPECT_EQ(number("OUTLIER", {column(runs)}), 21);
}

} // namespace hearthcell::tests
