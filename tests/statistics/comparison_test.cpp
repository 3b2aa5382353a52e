#include "calls.hpp"

#include "functions/kernels/statistics/saving.hpp"

#include <random>

namespace hearthcell::tests {
namespace {

// Invented figures, not measurements.
std::vector<double> const base{1020, 980, 1055, 1010, 945, 990}, improved{640, 700, 655, 610, 690, 665};

} // namespace

TEST(Difference, AgreesWithTheCarsOfTheHandbook) {
    // NIST/SEMATECH e-Handbook 1.3.5.3: t -12.94627, 136.8750 degrees of freedom; from these moments recomputed
    // t -12.9462676, 136.87499. The moments are printed to five decimals, so t is good to seven digits.
    auto const row =
        parts("DIFFERENCE", {column(runs_with(79, 30.48101, 6.10771)), column(runs_with(249, 20.14458, 6.41470))});
    ASSERT_EQ(row.size(), 6U);
    EXPECT_NEAR(row[4], 136.87499, 5e-6);
    double const uncertainty = (row[2] - row[1]) / 2 / t_exceeded(0.05, row[4]);
    EXPECT_NEAR(row[0] / uncertainty, -12.9462676, 5e-7);
}

TEST(Difference, ChangesItsSignWithTheOrderOfTheSeries) {
    auto const one = parts("DIFFERENCE", {column(base), column(improved)});
    auto const other = parts("DIFFERENCE", {column(improved), column(base)});
    EXPECT_LT(one.at(0), 0);
    EXPECT_EQ(other.at(0), -one.at(0));
    EXPECT_EQ(other.at(1), -one.at(2));
    EXPECT_EQ(other.at(3), one.at(3));
}

TEST(Difference, StandsOnOneSeriesWhereOnlyThatScatters) {
    auto const row = parts("DIFFERENCE", {column({5, 5, 5}), column({6, 7, 9, 10})});
    EXPECT_NEAR(row.at(4), 3, 1e-14); // n - 1 of the series that scatters
    EXPECT_NEAR(parts("DIFFERENCE", {column({6, 7, 9, 10}), column({5, 5, 5})}).at(4), 3, 1e-14);
    EXPECT_EQ(refusal("DIFFERENCE", {column({5, 5, 5}), column({6, 6})}).reason, Reason::no_scatter);
}

TEST(Difference, NeedsTwoRunsOfEachSeries) {
    EXPECT_EQ(refusal("DIFFERENCE", {column({5}), column({6, 7})}).argument, 0U);
    EXPECT_EQ(refusal("DIFFERENCE", {column({5, 6}), column({6, absent})}).argument, 1U);
    EXPECT_EQ(refusal("DIFFERENCE", {column({5, 6}), column({6, absent})}).reason, Reason::too_few_runs);
}

TEST(FiellersLimits, FollowPublishedExamples) {
    // A 14, SD 3, n 6 and B 7, SD 2, n 6, 10 degrees of freedom. Published to two decimals: 1.54 to 2.64 at 90 %, 1.46
    // to 2.83 at 95 %, 1.27 to 3.36 at 99 %; recomputed to four.
    struct Row {
        double beyond, low, high;
    };
    kernels::Compared const compared{4.0 / 6, 9.0 / 6, 10};
    for (Row const& row : {Row{0.10, 1.5448, 2.6424}, {0.05, 1.4566, 2.8332}, {0.01, 1.2728, 3.3604}}) {
        kernels::Limits const limits = kernels::limits_of_ratio(7, 14, compared, t_exceeded(row.beyond, 10));
        EXPECT_NEAR(limits.low, row.low, 5e-5) << row.beyond;
        EXPECT_NEAR(limits.high, row.high, 5e-5) << row.beyond;
    }
    // a 14 with standard error 3, b 7 with standard error 2, t(10) 1.812461: published 1.051413 to 4.414296
    kernels::Limits const wide = kernels::limits_of_ratio(7, 14, {4, 9, 10}, 1.812461);
    EXPECT_NEAR(wide.low, 1.051413, 5e-7);
    EXPECT_NEAR(wide.high, 4.414296, 5e-6); // t is printed to seven digits, and 1 - g = 0.73 divides
}

TEST(Saving, PoolsVariancesOnlyWhenAsked) {
    auto const pooled = parts("SAVING", {column(base), column(improved), 0.95, 1.0});
    EXPECT_NEAR(pooled.at(1), 1 - 0.699242829, 5e-10) << "R, by formula and by inverting the t test";
    EXPECT_NEAR(pooled.at(2), 1 - 0.622123850, 5e-10);
    EXPECT_EQ(pooled.at(4), 10);
    auto const own = parts("SAVING", {column(base), column(improved)});
    EXPECT_NEAR(own.at(1), 0.30137489, 5e-9) << "scipy, the Welch test inverted";
    EXPECT_NEAR(own.at(2), 0.37735685, 5e-9);
    EXPECT_NEAR(own.at(4), 9.8388, 5e-5) << "of DIFFERENCE";
    Failure const why = refusal("SAVING", {column(base), column(improved), 0.95, 0.05});
    EXPECT_EQ(why.reason, Reason::neither_true_nor_false);
    EXPECT_EQ(why.argument, 3U);
}

TEST(Saving, HasLimitsThatLeaveOutNothingSavedJustWhenPIsSmall) {
    int small = 0, large = 0;
    for (int halves = 0; halves < 400; ++halves)
        for (double const pooled : {0.0, 1.0}) {
            double const shift = halves / 2.0;
            std::vector<double> shifted = base;
            for (double& run : shifted)
                run -= shift;
            auto const row = parts("SAVING", {column({1030, 980, 1060, 890}), column(shifted), 0.9, pooled});
            ASSERT_EQ(row.size(), 6U);
            bool const leaves_out_none = row[1] > 0 || row[2] < 0;
            EXPECT_EQ(leaves_out_none, row[3] < 0.1) << shift;
            ++(leaves_out_none ? small : large);
        }
    EXPECT_GT(small, 50);
    EXPECT_GT(large, 50);
}

TEST(Saving, AnswersAsDifferenceDoesInTenThousandRandomCases) {
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    std::uniform_real_distribution<double> share(0, 1);
    int small = 0, large = 0, open = 0;
    for (int i = 0; i < 10000; ++i) {
        double const variation = 0.02 + 0.3 * share(chance), ratio = 0.5 + share(chance);
        std::vector<double> baseline(3 + std::size_t(i) % 6), fresh(3 + std::size_t(i) / 6 % 6);
        for (double& run : baseline)
            run = 1000 * (1 + variation * scatter(chance));
        for (double& run : fresh)
            run = 1000 * ratio * (1 + variation * scatter(chance));
        auto const saving = parts("SAVING", {column(baseline), column(fresh)});
        auto const difference = parts("DIFFERENCE", {column(baseline), column(fresh)});
        EXPECT_EQ(saving.at(3), difference.at(3));
        EXPECT_EQ(saving.at(4), difference.at(4));
        if (failed(saving.at(1))) {
            ++open;
            continue;
        }
        EXPECT_LT(saving.at(1), saving.at(0));
        EXPECT_GT(saving.at(2), saving.at(0));
        bool const leaves_out_none = saving.at(1) > 0 || saving.at(2) < 0;
        EXPECT_EQ(leaves_out_none, saving.at(3) < 0.05) << i;
        ++(leaves_out_none ? small : large);
    }
    EXPECT_GT(small, 1000);
    EXPECT_GT(large, 1000);
    EXPECT_GT(open, 10);
}

TEST(Saving, StandsOnOneSeriesWhereOnlyThatScatters) {
    // 1 - (4.1 ± t(2) 0.1/√3)/5, t(2) = 4.302653: by hand
    auto const row = parts("SAVING", {column({5, 5, 5}), column({4, 4.1, 4.2})});
    double const half = 4.30265272975 * 0.1 / std::sqrt(3.0) / 5;
    EXPECT_NEAR(row.at(1), 0.18 - half, 1e-11);
    EXPECT_NEAR(row.at(2), 0.18 + half, 1e-11);
    auto const other = parts("SAVING", {column({4, 4.1, 4.2}), column({5, 5, 5})});
    EXPECT_NEAR(other.at(0), 1 - 5 / 4.1, 1e-12);
    EXPECT_LT(other.at(1), other.at(0));
}

TEST(Saving, HasNoLimitsWhereTwoRunsLeaveMoreThanOneInterval) {
    // Of two runs t is 12.7: it falls faster, as the other series gains weight, than the statistic grows.
    auto const limits = [](double scatter_of_two) {
        auto const row =
            parts("SAVING", {column(runs_with(8, 1000, 222.25)), column(runs_with(2, 686.6, scatter_of_two))});
        EXPECT_EQ(failure_of(row.at(1)).reason, failure_of(row.at(2)).reason);
        return failure_of(row.at(1)).reason;
    };
    EXPECT_EQ(limits(75.3), Reason::unbounded_limits) << "found by a search among random cases";
    EXPECT_EQ(limits(20), Reason::none);
}

TEST(Saving, LeavesLimitsOpenExactlyWhereTheBaselineCouldBeZero) {
    // Two runs of mean 10: with the pooled 2 degrees of freedom they are bounded below a mean of t standard errors.
    double const t = t_exceeded(0.05, 2);
    for (double const factor : {0.999, 1.001}) {
        // new runs that scatter as much, so that the pooled variance is that of either
        double const distance = factor * 10 / t; // of two runs from their mean: the standard error of the mean
        auto const row =
            parts("SAVING", {column({10 - distance, 10 + distance}), column({5 - distance, 5 + distance}), 0.95, 1.0});
        ASSERT_EQ(row.size(), 6U);
        bool const open = factor > 1;
        for (std::size_t const limit : {1U, 2U})
            EXPECT_EQ(failure_of(row[limit]).reason, open ? Reason::unbounded_limits : Reason::none) << factor;
        for (std::size_t const other : {0U, 3U, 4U, 5U})
            EXPECT_FALSE(failed(row[other]));
    }
}

TEST(Saving, NeedsMeansAboveZero) {
    EXPECT_EQ(refusal("SAVING", {column({-1, 1}), column({5, 6})}).reason, Reason::mean_not_positive);
    EXPECT_EQ(refusal("SAVING", {column({-1, 1}), column({5, 6})}).argument, 0U);
    EXPECT_EQ(refusal("SAVING", {column({5, 6}), column({-5, -6})}).argument, 1U);
}

TEST(Saving, NeedsTwoRunsOfEachSeriesAndSomeScatter) {
    EXPECT_EQ(refusal("SAVING", {column({5}), column({6, 7})}).reason, Reason::too_few_runs);
    EXPECT_EQ(refusal("SAVING", {column({5, 6}), column({6})}).argument, 1U);
    EXPECT_EQ(refusal("SAVING", {column({5, 5}), column({6, 6})}).reason, Reason::no_scatter);
}

TEST(Saving, IsTheSameInAnyUnit) {
    std::vector<double> small_base = base, small_improved = improved;
    for (double& run : small_base)
        run /= 1e5;
    for (double& run : small_improved)
        run /= 1e5;
    for (double const pooled : {0.0, 1.0}) {
        auto const large = parts("SAVING", {column(base), column(improved), 0.95, pooled});
        auto const small = parts("SAVING", {column(small_base), column(small_improved), 0.95, pooled});
        ASSERT_EQ(small.size(), large.size());
        for (std::size_t i = 0; i < large.size(); ++i)
            EXPECT_NEAR(small[i], large[i], 1e-12 * std::abs(large[i])) << i;
    }
}

TEST(Saving, IsNegativeWhereMoreIsUsed) {
    auto const row = parts("SAVING", {column({100, 101, 99}), column({120, 121, 119})});
    EXPECT_NEAR(row.at(0), -0.2, 1e-15);
    EXPECT_LT(row.at(1), row.at(0));
    EXPECT_GT(row.at(2), row.at(0));
}

} // namespace hearthcell::tests
