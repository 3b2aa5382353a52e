#include "calls.hpp"

#include "functions/kernels/statistics/sample_size.hpp"

namespace hearthcell::tests {

TEST(RunsNeeded, HaveThePowerThatRAndCohenPrint) {
    // R, power.t.test: 20 runs, a change of 1 standard deviation. R leaves out the far side unless told to be strict.
    EXPECT_NEAR(kernels::power_of_test(20, 1, 0.95), 0.868953027724586, 1e-12) << "strict";
    EXPECT_NEAR(kernels::power_of_test(20, 1, 0.95), 0.8689528, 5e-7) << "as its manual prints it";
    // R's number of runs, with a fraction, for a given power: printed to seven digits, and without the far side
    EXPECT_NEAR(kernels::power_of_test(22.02110, 1, 0.95), 0.90, 5e-7);
    EXPECT_NEAR(kernels::power_of_test(393.4067, 0.2, 0.95), 0.80, 5e-6);
    EXPECT_NEAR(kernels::power_of_test(63.76561, 0.5, 0.95), 0.80, 5e-6);
    EXPECT_NEAR(kernels::power_of_test(25.52463, 0.8, 0.95), 0.80, 5e-6);
}

TEST(RunsNeeded, AreLookedForFromTheNormalApproximation) {
    EXPECT_NEAR(normal_exceeded(0.025), 1.959963984540054, 1e-14) << "R: qnorm(0.975)";
    EXPECT_EQ(kernels::runs_to_begin_with(1, 0.95, 0.9), 22) << "2 (1.95996 + 1.28155)^2 + 1.95996^2 / 4 = 21.97";
    EXPECT_EQ(kernels::runs_to_begin_with(1e-9, 0.95, 0.9), kernels::most_runs);
}

TEST(RunsNeeded, AreThePublishedOnes) {
    struct Row {
        double variation, change, confidence, power, runs;
    };
    // Cohen's table for effects 0.2, 0.5, 0.8; R's power.t.test, rounded up, for the rest
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
        EXPECT_GE(kernels::power_of_test(runs, effect, 0.95), 0.8);
        if (runs > 2) {
            EXPECT_LT(kernels::power_of_test(runs - 1, effect, 0.95), 0.8);
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

TEST(RunsNeeded, AreFoundWhereTheFirstGuessIsFarOff) {
    // Two runs of a t test of half the confidence have half the power to show anything; the normal approximation
    // guesses 92 for these, and R's power.t.test(strict = TRUE) wants 105 of 173 for those.
    EXPECT_EQ(kernels::runs_to_begin_with(0.1, 0.5, 0.5), 92);
    EXPECT_EQ(number("RUNSNEEDED", {1.0, 0.1, 0.5, 0.5}), 2);
    EXPECT_EQ(kernels::runs_to_begin_with(0.1, 0.5, 0.6), 173);
    EXPECT_EQ(number("RUNSNEEDED", {1.0, 0.1, 0.5, 0.6}), 105);
}

TEST(RunsNeeded, AlwaysComeOutOfAnyArgumentsAllowed) {
    // Boost's noncentral t throws where the effect is out of proportion; nothing of that may be seen here.
    constexpr double shares[] = {0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1};
    for (double const variation : shares)
        for (double const change : shares)
            for (double const confidence : {0.5, 0.9, 0.95, 0.999, 0.9999})
                for (double const power : {0.5, 0.8, 0.99, 0.9999}) {
                    double runs = 0;
                    ASSERT_NO_THROW(runs = kernels::runs_needed(variation, change, confidence, power));
                    EXPECT_TRUE(failure_of(runs).reason == Reason::too_many_runs || (runs >= 2 && runs <= 10000));
                }
}

} // namespace hearthcell::tests
