// JCGM 101 by its own examples. Inputs are drawn as normal ones; a rectangular one is made of such a draw by its
// distribution function, within the kernel of the test.

#include "functions/uncertainty/correlations.hpp"
#include "functions/uncertainty/monte_carlo.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace hearthcell::tests {
namespace {

double distribution(double z) {
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}
/// Between -1 and 1, everywhere alike.
double rectangular(double z) {
    return 2 * distribution(z) - 1;
}

constexpr Bounds unbounded = [] {
    Bounds bounds{.lowest_result = -1e300, .highest_result = 1e300};
    bounds.low.fill(-1e300);
    bounds.high.fill(1e300);
    return bounds;
}();

constexpr std::size_t many = 400000;

/// An equation of standard deviates.
template <auto Kernel> DrawnResults drawn(double coverage = 0.95) {
    Numeric const& equation = stepwise<Kernel>;
    std::array<double, most_arguments> const zeros{};
    std::array<double, most_arguments> ones{};
    ones.fill(1);
    Inputs const inputs{std::span(zeros).first(equation.numbers), {}, std::span(ones).first(equation.numbers), {}};
    return summarise(draw(equation, inputs, unbounded, many).results, coverage);
}

TEST(Drawing, GivesTheSumOfFourNormalQuantitiesOfTheGuide) {
    // JCGM 101, 9.2.2: u 2.00, ± 3.92
    DrawnResults const sum = drawn<[](double a, double b, double c, double d) { return a + b + c + d; }>();
    EXPECT_NEAR(sum.mean, 0, 0.015);
    EXPECT_NEAR(sum.uncertainty, 2, 0.01);
    EXPECT_NEAR(sum.low, -3.92, 0.05);
    EXPECT_NEAR(sum.high, 3.92, 0.05);
}

TEST(Drawing, GivesTheSumOfFourRectangularQuantitiesOfTheGuide) {
    // JCGM 101, 9.2.3: u 2.00, ± 3.88, which first order takes for ± 3.92
    DrawnResults const sum = drawn<[](double a, double b, double c, double d) {
        return std::numbers::sqrt3 * (rectangular(a) + rectangular(b) + rectangular(c) + rectangular(d));
    }>();
    EXPECT_NEAR(sum.uncertainty, 2, 0.01);
    EXPECT_NEAR(sum.high - sum.low, 2 * 3.88, 0.03);
    EXPECT_NEAR(sum.low, -3.88, 0.05);
}

TEST(Drawing, GivesTheSumInWhichOneRectangularQuantityPrevails) {
    // JCGM 101, 9.2.4: u 10.15, ± 17.0, where first order has ± 19.9
    DrawnResults const sum = drawn<[](double a, double b, double c, double d) {
        return std::numbers::sqrt3 * (rectangular(a) + rectangular(b) + rectangular(c) + 10 * rectangular(d));
    }>();
    EXPECT_NEAR(sum.uncertainty, 10.15, 0.03);
    EXPECT_NEAR(sum.high - sum.low, 2 * 17.0, 0.1);
    EXPECT_NEAR(sum.low, -17.0, 0.2);
}

TEST(Drawing, GivesTheCalibrationOfAMassOfTheGuide) {
    // JCGM 101, 9.3: mean 1.2341 mg, u 0.0755 mg, shortest interval 1.0834 to 1.3825 mg; first order has u 0.0539
    DrawnResults const mass = drawn<[](double a, double b, double c, double d, double e) {
        double const reference = 100000 + 0.050 * a, difference = 1.234 + 0.020 * b;
        double const air = 1.2 + 0.1 * rectangular(c);
        double const weight = 8000 + 1000 * rectangular(d), standard = 8000 + 50 * rectangular(e);
        return (reference + difference) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100000;
    }>();
    EXPECT_NEAR(mass.mean, 1.2341, 0.0006);
    EXPECT_NEAR(mass.uncertainty, 0.0755, 0.0003);
    EXPECT_NEAR(mass.high - mass.low, 1.3825 - 1.0834, 0.001);
    EXPECT_NEAR(mass.low, 1.0834, 0.006); // where the shortest lies is not sharp: its ends are all but alike
}

TEST(Drawing, TakesTheShortestIntervalAndNotTheMiddleOne) {
    // An exponential distribution is densest at 0: 95 % of it lie below -ln 0.05.
    DrawnResults const decay = drawn<[](double z) { return -std::log(distribution(-z)); }>();
    EXPECT_LT(decay.low, 1e-3);
    EXPECT_NEAR(decay.high, 2.9957, 0.03);
}

TEST(Drawing, HoldsTheShareThatWasAskedFor) {
    for (double const coverage : {0.5, 0.9, 0.95, 0.99}) {
        double held = 0;
        constexpr int times = 100;
        for (int i = 0; i < times; ++i) {
            NormalDraws normal{std::uint64_t(i)};
            std::vector<double> deviates(10000);
            std::ranges::generate(deviates, [&] { return normal.next(); });
            DrawnResults const results = summarise(deviates, coverage);
            held += distribution(results.high) - distribution(results.low);
        }
        // The shortest of many intervals is a little too short.
        EXPECT_NEAR(held / times, coverage - 0.003, 0.005) << coverage;
    }
}

TEST(Drawing, TakesTheWholeRangeWhereTheCoverageLeavesNoDrawOut) {
    DrawnResults const results = summarise(std::vector<double>{3, 1, 2}, 0.9999);
    EXPECT_EQ(results.low, 1);
    EXPECT_EQ(results.high, 3);
}

TEST(Drawing, DrawsNormalDeviates) {
    NormalDraws normal(2024);
    std::vector<double> deviates(many);
    std::ranges::generate(deviates, [&] { return normal.next(); });
    std::ranges::sort(deviates);
    double farthest = 0; // Kolmogorov's distance, beyond 1.95/√n once in a thousand
    for (std::size_t i = 0; i < many; ++i)
        farthest = std::max(farthest, std::fabs(distribution(deviates[i]) - (double(i) + 0.5) / double(many)));
    EXPECT_LT(farthest, 1.95 / std::sqrt(double(many)));
    EXPECT_GT(deviates.back(), 4);
    EXPECT_LT(deviates.back(), 6);
}

TEST(Drawing, DrawsTheSameEveryTime) {
    NormalDraws one(7), other(7), another(8);
    for (int i = 0; i < 1000; ++i) {
        double const x = one.next();
        EXPECT_EQ(x, other.next());
        EXPECT_NE(x, another.next());
    }
}

/// Mean of the products of two of the numbers that are drawn with these coefficients.
double product(std::vector<double> const& coefficients) {
    std::array<double, 3> const zeros{};
    std::array<double, 3> const ones{1, 1, 1};
    Inputs const inputs{zeros, {}, ones, coefficients};
    Numeric const& of_first_and_last = stepwise<[](double a, double, double c) { return a * c; }>;
    return summarise(draw(of_first_and_last, inputs, unbounded, many).results, 0.95).mean;
}

TEST(Drawing, CorrelatesWhatBelongsTogether) {
    EXPECT_NEAR(product({1, 0.5, 0.3, 0.5, 1, -0.2, 0.3, -0.2, 1}), 0.3, 0.01);
    EXPECT_NEAR(product({1, 1, -1, 1, 1, -1, -1, -1, 1}), -1, 0.01);
    // Rounded to three digits, so that the matrix is just not possible: √½ each is.
    EXPECT_NEAR(product({1, 0.708, 0, 0.708, 1, 0.708, 0, 0.708, 1}), 0, 0.01);
    // The guide's own, rounded to two (JCGM 100, H.2).
    EXPECT_NEAR(product({1, -0.36, 0.86, -0.36, 1, -0.65, 0.86, -0.65, 1}), 0.86, 0.01);
}

TEST(Drawing, CancelsWhatIsFullyCorrelated) {
    std::array<double, 2> const zeros{}, ones{1, 1};
    std::array<double, 4> const fully{1, 1, 1, 1};
    Numeric const& difference = stepwise<[](double a, double b) { return a - b; }>;
    EXPECT_EQ(summarise(draw(difference, {zeros, {}, ones, fully}, unbounded, 1000).results, 0.95).uncertainty, 0);
}

TEST(Drawing, FindsNoFactorOfWhatCannotBe) {
    EXPECT_TRUE(factor_of(std::vector<double>{1, 0.9, 0.9, 0.9, 1, -0.9, 0.9, -0.9, 1}, 3).empty());
    // The first two are one quantity, yet only one of them goes with the third.
    EXPECT_TRUE(factor_of(std::vector<double>{1, 1, 0.1, 1, 1, 0.3, 0.1, 0.3, 1}, 3).empty());
}

TEST(Drawing, CountsDrawsWithoutAResult) {
    std::array<double, 1> const value{0}, doubt{1};
    Numeric const& same = stepwise<[](double a) { return a; }>;
    Bounds argument = unbounded, result = unbounded;
    argument.low[0] = 0;
    result.highest_result = 1;
    Draws const above = draw(same, {value, {}, doubt, {}}, argument, 100000);
    EXPECT_NEAR(double(above.without), 50000, 800);
    EXPECT_EQ(above.results.size() + above.without, 100000U);
    EXPECT_GE(std::ranges::min(above.results), 0);
    Draws const below = draw(same, {value, {}, doubt, {}}, result, 100000);
    EXPECT_NEAR(double(below.without), 15866, 600);
    Numeric const& fails = stepwise<[](double) { return failure(Reason::never_boils); }>;
    EXPECT_EQ(draw(fails, {value, {}, doubt, {}}, unbounded, 100).without, 100U);
}

TEST(Drawing, KnowsHowWellItsFiguresAreKnown) {
    // A mean to σ/√n, a standard deviation to σ/√(2n); the limits by how they scatter from set to set.
    NormalDraws normal(3);
    constexpr int sets = 60;
    constexpr std::size_t each = 10000;
    std::array<double, 4> said{}, squares{}, sums{};
    for (int i = 0; i < sets; ++i) {
        std::vector<double> deviates(each);
        std::ranges::generate(deviates, [&] { return normal.next(); });
        DrawnResults const figures = summarise(deviates, 0.95);
        StandardErrors const errors = standard_errors(deviates, 0.95);
        std::size_t part = 0;
        for (auto const member :
             {&DrawnResults::mean, &DrawnResults::uncertainty, &DrawnResults::low, &DrawnResults::high}) {
            said[part] += errors.*member / sets;
            sums[part] += figures.*member;
            squares[part] += figures.*member * figures.*member;
            ++part;
        }
    }
    EXPECT_NEAR(said[0], 0.01, 0.002);
    EXPECT_NEAR(said[1], 0.01 / std::numbers::sqrt2, 0.002);
    for (std::size_t part : {2U, 3U}) {
        double const scatter = std::sqrt((squares[part] - sums[part] * sums[part] / sets) / (sets - 1));
        EXPECT_GT(said[part], 0.5 * scatter);
        EXPECT_LT(said[part], 2 * scatter);
    }
}

} // namespace
} // namespace hearthcell::tests
