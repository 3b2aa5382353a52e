#include "calls.hpp"

#include "functions/kernels/statistics/sample_size.hpp"

#include <random>

namespace hearthcell::tests {

TEST(PowerOfWelch, IsWhatIsLeftOfMillionsOfSimulatedTests) {
    struct Row {
        double runs, effect, simulated;
    };
    // 400,000 pairs of series each, simulated with numpy and tested with scipy's ttest_ind(equal_var=False)
    for (Row const& row : {Row{2, 5, 0.4106},
                           {3, 1 / 0.325, 0.697},
                           {4, 1 / 0.325, 0.928},
                           {5, 2, 0.766},
                           {6, 2, 0.866},
                           {16, 1, 0.779},
                           {17, 1, 0.806}})
        EXPECT_NEAR(kernels::power_of_welch(row.runs, row.effect, 0.95), row.simulated, 0.0025) << row.runs << " runs";
}

TEST(PowerOfWelch, IsAsGoodAsThePooledTestForManyRuns) {
    // R's number of runs of the pooled test, with a fraction, for a power of 0.8: Welch's wants a small part of a run
    // more.
    EXPECT_NEAR(kernels::power_of_welch(393.4067, 0.2, 0.95), 0.80, 1e-5);
    EXPECT_NEAR(kernels::power_of_welch(63.76561, 0.5, 0.95), 0.80, 3e-4);
    EXPECT_LT(kernels::power_of_welch(63.76561, 0.5, 0.95), 0.80);
}

TEST(PowerOfWelch, IsReachedInSimulationByWhatIsPlanned) {
    // Coefficients of 2 to 30 %, changes of 5 to 30 %, powers of 0.8 and 0.9: the power that so many runs really have.
    std::mt19937_64 chance(20261130);
    std::normal_distribution<double> scatter;
    for (auto const& [variation, change] : {std::pair{0.02, 0.05},
                                            {0.0325, 0.1},
                                            {0.05, 0.05},
                                            {0.05, 0.1},
                                            {0.1, 0.1},
                                            {0.1, 0.3},
                                            {0.2, 0.3},
                                            {0.3, 0.3}})
        for (double const power : {0.8, 0.9}) {
            auto const runs = std::size_t(number("RUNSNEEDED", {variation, change, 0.95, power}));
            constexpr int tests = 20000;
            int shown = 0;
            for (int test = 0; test < tests; ++test) {
                std::vector<double> baseline, fresh;
                for (std::size_t i = 0; i < runs; ++i) {
                    baseline.push_back(1 + variation * scatter(chance));
                    fresh.push_back(1 - change + variation * scatter(chance));
                }
                shown += parts("DIFFERENCE", {column(baseline), column(fresh)}).at(3) < 0.05 ? 1 : 0;
            }
            EXPECT_GE(double(shown) / tests, power - 0.01) << variation << " " << change << ": " << runs << " runs";
        }
}

TEST(RunsNeeded, AreLookedUpWhereTheyWouldBeFoundAnyhow) {
    for (kernels::UsualPlan const& plan : kernels::usual_plans)
        for (std::size_t i = 0; i < plan.effects.size(); ++i) {
            double const runs = double(i + 2), effect = plan.effects[i];
            EXPECT_NEAR(kernels::power_of_welch(runs, effect, plan.confidence), plan.power, 1e-9) << runs << " runs";
            for (double const beside : {0.999, 1.001})
                EXPECT_EQ(kernels::runs_needed(1, effect * beside, plan.confidence, plan.power, absent),
                          kernels::search_for_runs(effect * beside, plan.confidence, plan.power))
                    << effect * beside;
        }
}

TEST(RunsNeeded, OfAUsualPlanAreAsQuicklyKnownWhenTheyAreMany) {
    for (kernels::UsualPlan const& plan : kernels::usual_plans)
        for (int const runs : {24, 25, 26, 31, 47, 64, 101, 220, 394, 1000, 3456, 9999}) {
            double const effect = kernels::effect_shown(plan, runs);
            EXPECT_NEAR(kernels::power_of_welch(runs, effect, plan.confidence), plan.power, 1e-10) << runs << " runs";
            for (double const beside : {1 - 1e-7, 1 + 1e-7})
                EXPECT_EQ(kernels::runs_needed(1, effect * beside, plan.confidence, plan.power, absent),
                          kernels::search_for_runs(effect * beside, plan.confidence, plan.power))
                    << runs << " runs";
        }
}

TEST(RunsNeeded, AreLookedForFromTheNormalApproximation) {
    EXPECT_NEAR(normal_exceeded(0.025), 1.959963984540054, 1e-14) << "R: qnorm(0.975)";
    EXPECT_EQ(kernels::runs_to_begin_with(1, 0.95, 0.9), 22) << "2 (1.95996 + 1.28155)^2 + 1.95996^2 / 4 = 21.97";
    EXPECT_EQ(kernels::runs_to_begin_with(1e-9, 0.95, 0.9), kernels::most_runs);
}

TEST(RunsNeeded, HoldForTheUpperLimitOfACoefficientFromPilotRuns) {
    // scipy: sqrt(4 / chi2.ppf(0.2, 4)) = 1.557575
    EXPECT_NEAR(kernels::upper_limit_of_variation(0.05, 5), 0.05 * 1.557575, 1e-7);
    EXPECT_EQ(number("RUNSNEEDED", {0.05, 0.1, {}, {}, 5.0}), 11);
    EXPECT_GT(number("RUNSNEEDED", {0.05, 0.1, {}, {}, 3.0}), 11) << "fewer pilot runs tell less";
    EXPECT_EQ(refusal("RUNSNEEDED", {0.05, 0.1, {}, {}, 1.0}).reason, Reason::out_of_range);
}

TEST(RunsForMean, AreTheFewestWhereverTheSearchBegins) {
    for (double const confidence : {0.5, 0.8, 0.95, 0.9999})
        for (double half_width = 0.02; half_width < 1; half_width *= 1.1) {
            int fewest = 2;
            while (t_exceeded(1 - confidence, fewest - 1) * 0.2 / std::sqrt(double(fewest)) > half_width)
                ++fewest;
            EXPECT_EQ(number("RUNSFORMEAN", {0.2, half_width, confidence}), fewest) << half_width << " " << confidence;
        }
}

TEST(RunsForMean, AreTheFewestWithLimitsSoNear) {
    for (double const half_width : {0.02, 0.1, 0.3}) {
        double const runs = number("RUNSFORMEAN", {0.2, half_width});
        auto const half = [](double n) { return t_exceeded(0.05, n - 1) * 0.2 / std::sqrt(n); };
        EXPECT_LE(half(runs), half_width);
        EXPECT_GT(half(runs - 1), half_width);
    }
    EXPECT_EQ(number("RUNSFORMEAN", {0.001, 1.0}), 2) << "one run tells no scatter";
    EXPECT_EQ(refusal("RUNSFORMEAN", {1.0, 0.001}).reason, Reason::too_many_runs);
}

TEST(RunsNeeded, AreThePublishedOnes) {
    struct Row {
        double variation, change, confidence, power, runs;
    };
    // Cohen's table for effects 0.2, 0.5, 0.8; the power of Welch's test integrated with scipy for the rest
    for (Row const& row : {Row{0.5, 0.1, 0.95, 0.8, 394},
                           {0.1, 0.05, 0.95, 0.8, 64},
                           {0.1, 0.08, 0.95, 0.8, 26},
                           {0.1, 0.1, 0.95, 0.9, 23},
                           {0.05, 0.1, 0.95, 0.8, 6},
                           {0.05, 0.2, 0.95, 0.8, 3},
                           {0.10, 0.1, 0.95, 0.8, 17},
                           {0.15, 0.2, 0.95, 0.8, 10}})
        EXPECT_EQ(number("RUNSNEEDED", {row.variation, row.change, row.confidence, row.power}), row.runs)
            << row.variation << " " << row.change;
}

TEST(RunsNeeded, AreTheFewestThatSuffice) {
    for (double const effect : {0.05, 0.3, 0.9, 1.7, 3.0, 6.0}) {
        double const runs = number("RUNSNEEDED", {0.1, 0.1 * effect});
        EXPECT_GE(kernels::power_of_welch(runs, effect, 0.95), 0.8);
        if (runs > 2) {
            EXPECT_LT(kernels::power_of_welch(runs - 1, effect, 0.95), 0.8);
        }
    }
}

TEST(RunsNeeded, AreNeverFewerThanTwo) {
    EXPECT_EQ(number("RUNSNEEDED", {0.001, 1.0, 0.5, 0.5}), 2);
}

TEST(RunsNeeded, AreRefusedWhereNobodyWouldRunThem) {
    EXPECT_EQ(refusal("RUNSNEEDED", {1.0, 0.01}).reason, Reason::too_many_runs);
    EXPECT_EQ(refusal("RUNSNEEDED", {0.0, 0.1}).reason, Reason::out_of_range) << "an empty cell";
}

TEST(RunsNeeded, AreTenThousandAtMost) {
    double too_small = 0.01, answered = 0.1; // changes, of a coefficient of variation of 1
    while (answered - too_small > 1e-9) {
        double const change = (too_small + answered) / 2;
        bool const refused = refusal("RUNSNEEDED", {1.0, change}).reason == Reason::too_many_runs;
        (refused ? too_small : answered) = change;
    }
    EXPECT_EQ(number("RUNSNEEDED", {1.0, answered}), 10000);
}

TEST(RunsNeeded, AlwaysComeOutOfAnyArgumentsAllowed) {
    // Boost's noncentral t throws where the effect is out of proportion; nothing of that may be seen here.
    constexpr double shares[] = {0.001, 0.01, 0.1, 0.5, 1};
    for (double const variation : shares)
        for (double const change : shares)
            for (double const confidence : {0.5, 0.9, 0.95, 0.999, 0.9999})
                for (double const power : {0.5, 0.8, 0.99, 0.9999}) {
                    double runs = 0;
                    ASSERT_NO_THROW(runs = kernels::runs_needed(variation, change, confidence, power, absent));
                    EXPECT_TRUE(failure_of(runs).reason == Reason::too_many_runs || (runs >= 2 && runs <= 10000));
                }
}

} // namespace hearthcell::tests
