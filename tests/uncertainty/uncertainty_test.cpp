#include "support/asking.hpp"

#include "functions/about/uncertain_call.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

std::string const water_mass = "WATERMASS"; // volume, temperature
Value const water = column({3.6, 14.5});
Value const water_doubt = column({0.02, 2.0});

/// One run with 40 g of char; method left out.
std::vector<Value> const run{760.0, 4360.0, 14.5, 950.0, 95.85, 4170.0, 430.0, 0.14, 18.7, empty, 40.0};
std::vector<Value> const run_doubt{2.0, 2.0, 0.5, 2.0, 0.5, 2.0, 2.0, 0.015, 0.35, empty, 3.0};

Reason reason_of(std::vector<Value> const& arguments) {
    return failure_in(ask("UNCERTAINTY", arguments)).reason;
}

TEST(Uncertainty, TakesRowsAndColumnsAlike) {
    double const u = number(ask("UNCERTAINTY", {water_mass, water, water_doubt}));
    EXPECT_NEAR(u, 20.01069, 2e-5); // IAPWS SR6-08 by differences, computed apart
    EXPECT_EQ(number(ask("UNCERTAINTY", {water_mass, row({3.6, 14.5}), row({0.02, 2.0})})), u);
    EXPECT_EQ(number(ask("UNCERTAINTY", {water_mass, row({3.6, 14.5}), water_doubt})), u);
    EXPECT_EQ(number(ask("UNCERTAINTY", {std::string("stove.watermass"), water, water_doubt})), u);
}

TEST(Uncertainty, TakesASingleValueOfAFunctionOfOneArgument) {
    // Slope of 1/(1 + u)²: 0.01/1.15². By hand.
    EXPECT_NEAR(number(ask("UNCERTAINTY", {std::string("WETBASIS"), 0.15, 0.01})), 0.01 / (1.15 * 1.15), 1e-15);
}

TEST(Uncertainty, MultipliesByTheCoverageFactor) {
    double const u = number(ask("UNCERTAINTY", {water_mass, water, water_doubt}));
    EXPECT_EQ(number(ask("UNCERTAINTY", {water_mass, water, water_doubt, 2.0})), 2 * u);
    EXPECT_EQ(reason_of({water_mass, water, water_doubt, 0.95}), Reason::out_of_range);
}

TEST(Uncertainty, CountsZeroAndEmptyAsExact) {
    double const only_volume = 0.02 * 999.1759; // 1000 × density of SR6-08
    EXPECT_NEAR(number(ask("UNCERTAINTY", {water_mass, water, column({0.02, 0.0})})), only_volume, 1e-4);
    EXPECT_NEAR(number(ask("UNCERTAINTY", {water_mass, water, column({0.02, empty})})), only_volume, 1e-4);
    EXPECT_EQ(number(ask("UNCERTAINTY", {water_mass, water, column({0.0, empty})})), 0);
}

TEST(Uncertainty, GivesThatOfARunWithDefaultsLeftOut) {
    double const u = number(ask("UNCERTAINTY", {std::string("BENCHEFFICIENCY"), column(run), column(run_doubt)}));
    EXPECT_NEAR(u, 0.00856816, 2e-8); // by differences, computed apart
}

TEST(Uncertainty, FollowsTheMethodGivenAsAText) {
    std::vector<Value> by_wbt3 = run;
    by_wbt3[9] = std::string("WBT 3");
    double const u = number(ask("UNCERTAINTY", {std::string("BENCHEFFICIENCY"), column(by_wbt3), column(run_doubt)}));
    // The method's own equation, c_i u_i by hand: η = 0.233891 = Q/E with E = 7077.28 kJ, Q = 1655.3 kJ.
    double const heat = 4.186 * 3.6 * 81.35 + 429.4, energy = 520 * 0.8432 * 18.7 - 1.5 * 40 * 18.7;
    double const eta = heat / energy;
    double const by_pot = -4.186 * 81.35 / 1000, by_start = 4.186 * 81.35 / 1000 + 2.26, by_end = -2.26; // kJ/g
    double const by_temperature = 4.186 * 3.6, by_wood = 0.8432 * 18.7;
    double variance = 0;
    for (double const part : {by_pot * 2, by_start * 2, by_end * 2, by_temperature * 0.5, by_temperature * 0.5})
        variance += part * part / (energy * energy);
    for (double const part :
         {by_wood * 2, by_wood * 2, 520 * 1.12 * 18.7 * 0.015, energy / 18.7 * 0.35, 1.5 * 18.7 * 3})
        variance += part * part * eta * eta / (energy * energy);
    EXPECT_NEAR(u, std::sqrt(variance), 1e-12);
}

TEST(Uncertainty, TakesLeftOutArgumentsAtTheEnd) {
    std::vector<Value> longer = run, longer_doubt = run_doubt;
    longer.resize(40); // a range with room for more
    longer_doubt.resize(40);
    std::string const name = "BENCHEFFICIENCY";
    EXPECT_EQ(number(ask("UNCERTAINTY", {name, column(longer), column(longer_doubt)})),
              number(ask("UNCERTAINTY", {name, column(run), column(run_doubt)})));
}

TEST(Uncertainty, CorrelatesValuesThroughAMatrix) {
    // Pot before and after on one scale: correlated errors of the two weighings cancel in what evaporated.
    std::string const name = "MOISTURE"; // (wet - dry)/wet: slopes dry/wet² and -1/wet
    Value const values = column({120.0, 100.0}), doubts = column({0.5, 0.5});
    double const a = 100 / (120.0 * 120) * 0.5, b = 0.5 / 120;
    EXPECT_NEAR(number(ask("UNCERTAINTY", {name, values, doubts})), std::hypot(a, b), 1e-15);
    double const correlated = number(ask("UNCERTAINTY", {name, values, doubts, 1.0, square({1.0, 0.8, 0.8, 1.0})}));
    EXPECT_NEAR(correlated, std::sqrt(a * a + b * b - 1.6 * a * b), 1e-15);
    EXPECT_EQ(number(ask("UNCERTAINTY", {name, values, doubts, 1.0, square({empty, 0.8, empty, empty})})), correlated);
}

TEST(Uncertainty, LeavesTextsAndBlanksOutOfTheMatrix) {
    std::string const name = "MOISTURE"; // as fired, dry, basis, container
    Value const values = column({170.0, 150.0, std::string("dry"), 50.0}), doubts = column({0.5, 0.5, empty, 0.5});
    std::vector<Value> matrix(16);
    matrix[1] = matrix[7] = 0.5; // as fired with dry, dry with container
    // (wet - dry)/(dry - box), dry 100 net: slopes 1/100, -120/100², 20/100². By hand.
    double const a = 0.5 / 100, b = -0.5 * 120 / 1e4, c = 0.5 * 20 / 1e4;
    EXPECT_NEAR(number(ask("UNCERTAINTY", {name, values, doubts, empty, square(matrix)})),
                std::sqrt(a * a + b * b + c * c + a * b + b * c), 1e-15);
    matrix[2] = 0.1; // with the text
    EXPECT_EQ(reason_of({name, values, doubts, empty, square(matrix)}), Reason::correlation_without_value);
}

TEST(Uncertainty, NamesTheCorrelationThatHasNoValueOfItsOwn) {
    auto const expect_refused = [](std::vector<Value> const& values, std::size_t place) {
        std::vector<Value> matrix(16);
        matrix[place] = 0.1;
        Failure const why = failure_in(ask("UNCERTAINTY", {std::string("MOISTURE"), column(values),
                                                           column({0.5, 0.5, empty, empty}), empty, square(matrix)}));
        EXPECT_EQ(why.reason, Reason::correlation_without_value);
        EXPECT_EQ(why.argument, uncertainty_argument::correlations);
        EXPECT_EQ(why.row, place + 1);
    };
    std::vector<Value> const values{170.0, 150.0, std::string("dry"), 50.0};
    expect_refused(values, 2);                        // number and text
    expect_refused(values, 11);                       // text and number
    expect_refused({170.0, 150.0, empty, empty}, 3);  // number and blank
    expect_refused({170.0, 150.0, empty, empty}, 11); // two blanks at the end
}

TEST(Uncertainty, NamesTheArgumentWithoutFiniteSensitivity) {
    // No equation of the catalogue has an infinite slope within its range: √b at 0.
    Function root{.name = "ROOT", .stored = "root", .summary = {}};
    root.arguments = {{.name = "start"}, {.name = "method", .kind = ArgumentKind::choice}, {.name = "end"}};
    root.result = {.name = {}, .low = 0, .high = 10};
    root.kernel = numeric<[]<class Real>(Real const& a, Real const& b, Choice) {
        using std::sqrt;
        return Real(a + sqrt(b));
    }>;
    UncertainCall asked;
    asked.function = &root;
    asked.at.numbers = {1, 0};
    asked.number_of = {0, no_argument, 1};
    asked.uncertainties = {0, 0.1};
    EXPECT_EQ(propagate(asked).uncertainty, 0);
    EXPECT_EQ(asked.failure.reason, Reason::no_finite_slope);
    EXPECT_EQ(asked.failure.argument, uncertainty_argument::uncertainties);
    EXPECT_EQ(asked.failure.row, 3U);
    EXPECT_FALSE(asked.inside);
}

TEST(Uncertainty, RefusesWhatCannotBeAsked) {
    EXPECT_EQ(reason_of({std::string("NOSUCHTHING"), water, water_doubt}), Reason::unknown_name);
    for (char const* name : {"FUELENERGY", "RUNSNEEDED", "EXPLAIN", "VERSION", "UNCERTAINTY", "MINUTES"})
        EXPECT_EQ(reason_of({std::string(name), water, water_doubt}), Reason::not_differentiable) << name;
    EXPECT_EQ(reason_of({water_mass, column({3.6, 14.5, 1.0}), column({0.0, 0.0, 0.0})}), Reason::too_many_values);
    EXPECT_EQ(reason_of({water_mass, water, column({0.02})}), Reason::uncertainties_differ);
    EXPECT_EQ(reason_of({water_mass, water, column({0.02, -1.0})}), Reason::out_of_range);
    EXPECT_EQ(reason_of({water_mass, water, column({0.02, std::string("little")})}), Reason::text_for_number);
    EXPECT_EQ(reason_of({water_mass, water, column({0.02, 60.0})}), Reason::uncertainty_too_large);
    EXPECT_EQ(reason_of({water_mass, water, water_doubt, 1.0, square({1.0})}), Reason::correlations_not_square);
    EXPECT_EQ(reason_of({water_mass, water, water_doubt, 1.0, square({1.0, 2.0, 2.0, 1.0})}), Reason::out_of_range);
    EXPECT_EQ(reason_of({water_mass, square({1.0, 2.0, 3.0, 4.0}), water_doubt}), Reason::block_for_column);
}

TEST(Uncertainty, RefusesAnUncertaintyBesideATextOrABlank) {
    std::string const pot = "POTHEAT";
    Value const by_name = column({500.0, std::string("aluminium"), 20.0, 95.0});
    EXPECT_NEAR(number(ask("UNCERTAINTY", {pot, by_name, column({1.0, 0.0, 0.0, 0.0})})), 0.897 * 75 / 1000, 1e-12);
    EXPECT_EQ(reason_of({pot, by_name, column({1.0, 0.01, 0.0, 0.0})}), Reason::uncertainty_without_value);
    EXPECT_EQ(reason_of({std::string("CALORIFICVALUE"), std::string("poplar"), 0.5}),
              Reason::uncertainty_without_value);
    std::vector<Value> doubts = run_doubt;
    doubts[9] = 0.1; // beside the method
    EXPECT_EQ(reason_of({std::string("BENCHEFFICIENCY"), column(run), column(doubts)}),
              Reason::uncertainty_without_value);
    doubts = run_doubt;
    std::vector<Value> values = run;
    doubts.emplace_back(0.5); // beside the char's value, left out
    values.emplace_back(empty);
    EXPECT_EQ(reason_of({std::string("BENCHEFFICIENCY"), column(values), column(doubts)}),
              Reason::uncertainty_without_value);
}

TEST(Uncertainty, FailsAsTheFunctionItselfDoes) {
    std::vector<Value> values = run;
    values[7] = 12.0; // 1200 % moisture
    EXPECT_EQ(reason_of({std::string("BENCHEFFICIENCY"), column(values), column(run_doubt)}), Reason::out_of_range);
    values[7] = std::string("damp");
    std::vector<Value> doubts = run_doubt;
    doubts[7] = empty;
    EXPECT_EQ(reason_of({std::string("BENCHEFFICIENCY"), column(values), column(doubts)}), Reason::text_for_number);
    EXPECT_EQ(reason_of({std::string("MOISTURE"), column({100.0, 120.0}), column({1.0, 1.0})}), Reason::dry_above_wet);
    EXPECT_EQ(reason_of({std::string("FIREPOWER"), column({9592.0, 1.25}), column({1.0, 0.1})}),
              Reason::result_out_of_range);
    EXPECT_EQ(reason_of({water_mass, column({3.6}), column({0.02})}), Reason::argument_missing);
    EXPECT_EQ(reason_of({water_mass, column({empty, empty}), column({empty, empty})}), Reason::argument_missing);
    // No argument of UNCERTAINTY is to blame.
    EXPECT_EQ(failure_in(ask("UNCERTAINTY", {water_mass, column({3.6}), column({0.02})})).argument, no_argument);
}

TEST(Budget, HasARowBesideEachValueWithNameSensitivityContributionAndShare) {
    Block const budget = block(ask("BUDGET", {std::string("BENCHEFFICIENCY"), column(run), column(run_doubt)}));
    ASSERT_EQ(budget.rows, 15U); // to the last default
    ASSERT_EQ(budget.columns, 4U);
    Function const& function = *find_function("BENCHEFFICIENCY");
    ASSERT_EQ(budget.texts.size(), 15U);
    for (std::size_t i = 0; i < budget.rows; ++i) {
        EXPECT_EQ(budget.texts[i].place, i * 4);
        EXPECT_EQ(budget.texts[i].text, function.arguments[i].name.english);
    }
    for (std::size_t row : {9U, 12U, 13U}) // the method, boiling point and air have no number when they are left out
        for (std::size_t part : {1U, 2U, 3U})
            EXPECT_TRUE(is_absent(budget.numbers[row * 4 + part])) << row;
    for (std::size_t row : {11U, 14U}) { // the char's value and other energy count as exact
        EXPECT_NE(budget.numbers[row * 4 + 1], 0);
        EXPECT_EQ(budget.numbers[row * 4 + 2], 0);
        EXPECT_EQ(budget.numbers[row * 4 + 3], 0);
    }
    // Central differences, computed apart; sensitivities to 7 digits.
    EXPECT_NEAR(budget.numbers[7 * 4 + 1], 0.3713571, 1e-6);
    EXPECT_NEAR(budget.numbers[7 * 4 + 2], 0.00557036, 1e-8);
    EXPECT_NEAR(budget.numbers[7 * 4 + 3], 0.422660, 1e-6);
    EXPECT_NEAR(budget.numbers[8 * 4 + 1], -0.0151051, 1e-7);
    EXPECT_NEAR(budget.numbers[8 * 4 + 3], 0.380722, 1e-6);
    EXPECT_NEAR(budget.numbers[10 * 4 + 3], 0.1217180, 1e-6);
}

TEST(Budget, AddsUpToTheUncertaintyForEveryCoverageFactor) {
    for (double const k : {1.0, 2.0, 2.58}) {
        std::vector<Value> const asked{std::string("BENCHEFFICIENCY"), column(run), column(run_doubt), k};
        Block const budget = block(ask("BUDGET", asked));
        double squares = 0, shares = 0;
        for (std::size_t i = 0; i < budget.rows; ++i) {
            if (is_absent(budget.numbers[i * 4 + 2]))
                continue;
            squares += budget.numbers[i * 4 + 2] * budget.numbers[i * 4 + 2];
            shares += budget.numbers[i * 4 + 3];
        }
        EXPECT_NEAR(std::sqrt(squares), number(ask("UNCERTAINTY", asked)), 1e-15);
        EXPECT_NEAR(shares, 1, 1e-14);
    }
}

TEST(Budget, SharesCorrelatedVarianceOutSoThatItStillAddsUp) {
    std::vector<Value> const asked{std::string("MOISTURE"), column({120.0, 100.0}), column({0.5, 0.5}), 1.0,
                                   square({1.0, 0.8, 0.8, 1.0})};
    Block const budget = block(ask("BUDGET", asked));
    double const a = 100 / (120.0 * 120) * 0.5, b = -0.5 / 120, variance = a * a + b * b + 1.6 * a * b;
    EXPECT_NEAR(budget.numbers[3], a * (a + 0.8 * b) / variance, 1e-12);
    EXPECT_NEAR(budget.numbers[7], b * (b + 0.8 * a) / variance, 1e-12);
    EXPECT_NEAR(budget.numbers[3] + budget.numbers[7], 1, 1e-14);
}

TEST(Budget, EndsWithTheLastValueWhereNoDefaultFollows) {
    // The sea-level pressure has one, the material's name is no number that was typed.
    EXPECT_EQ(block(ask("BUDGET", {std::string("AIRPRESSURE"), 1000.0, 10.0})).rows, 2U);
    Block const useful =
        block(ask("BUDGET", {std::string("USEFULHEAT"), column({3600.0, 14.5, 80.0}), column({2.0, 0.5, 0.5})}));
    EXPECT_EQ(useful.rows, 5U) << "up to the mass evaporated, which is 0 unless given; a boiling point is not assumed";
    Block const heat =
        block(ask("BUDGET", {std::string("POTHEAT"), column({500.0, std::string("aluminium"), 20.0, 95.0}),
                             column({1.0, 0.0, 0.5, 0.5})}));
    EXPECT_EQ(heat.rows, 4U);
    EXPECT_NEAR(heat.numbers[1 * 4 + 1], 500 * 75 / 1000.0, 1e-12);
    EXPECT_EQ(heat.numbers[1 * 4 + 2], 0);
    EXPECT_EQ(block(ask("BUDGET", {water_mass, column({5.0, 20.0, empty}), column({0.02, 2.0, empty})})).rows, 2U);
}

TEST(Budget, FailsWhereTheUncertaintyFails) {
    EXPECT_EQ(failure_in(ask("BUDGET", {water_mass, water, column({0.02})})).reason, Reason::uncertainties_differ);
    EXPECT_EQ(failure_in(ask("BUDGET", {water_mass, column({5.0, 200.0}), water_doubt})).reason, Reason::out_of_range);
}

} // namespace
} // namespace hearthcell::tests
