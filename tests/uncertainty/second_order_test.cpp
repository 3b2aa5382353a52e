#include "worked_examples.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

SecondOrder second_of(Example const& example) {
    return second_order(example.equation, example.inputs(), example.first());
}

/// The uncertainty with the second-order terms.
double uncertainty_with_second(Example const& example) {
    double const first = example.first().uncertainty;
    return std::sqrt(first * first + second_of(example).variance);
}

TEST(SecondOrder, RaisesTheEndGaugeOfTheGuide) {
    // JCGM 100, H.1.7: 32 nm become 34 nm; 33.9 recomputed. The terms are l_s u(δα) u(θ) and l_s u(α) u(δθ), by hand.
    EXPECT_NEAR(uncertainty_with_second(end_gauge()), 33.9, 0.05);
    double const first_term = 50.000623e6 * 0.58e-6 * 0.41, second_term = 50.000623e6 * 1.2e-6 * 0.029;
    EXPECT_NEAR(second_of(end_gauge()).variance, first_term * first_term + second_term * second_term, 1e-6);
}

TEST(SecondOrder, RaisesTheMassOfTheSupplement) {
    EXPECT_NEAR(uncertainty_with_second(mass_calibration()), 0.0750, 5e-5); // JCGM 101, table 6
}

TEST(SecondOrder, IsAllThereIsWhereEverySlopeIsZero) {
    // JCGM 101, 9.4: a loss x² + y² at 0 with u = 0.005 has u = 2 u² = 50e-6, where first order gives 0.
    Example const loss{
        numeric<[]<class Real>(Real const& x, Real const& y) { return Real(x * x + y * y); }>, {0, 0}, {0.005, 0.005}};
    EXPECT_EQ(loss.first().uncertainty, 0);
    EXPECT_NEAR(uncertainty_with_second(loss), 50e-6, 1e-12);
}

TEST(SecondOrder, CountsTheThirdDerivative) {
    // x³ at 0 with u: H = 0, f' = 0; at 1: H = 6, f' = 3, f''' = 6: ½ 36 u⁴ + 18 u⁴ = 36 u⁴. By hand.
    Example const cube{numeric<[]<class Real>(Real const& x) { return Real(x * x * x); }>, {1}, {0.1}};
    EXPECT_NEAR(second_of(cube).variance, 36e-4, 1e-12);
}

TEST(SecondOrder, IsNothingForALine) {
    EXPECT_EQ(second_of(sum_of_four(10)).variance, 0);
}

TEST(SecondOrder, SaysWhichNumberLeavesTheEquationWithinItsUncertainty) {
    Example const edge{numeric<[]<class Real>(Real const& a, Real const& b) -> Real {
                           return value_of(b) < 0 ? failure(Reason::never_boils) : a + b;
                       }>,
                       {1, 0.05},
                       {0.1, 0.1}};
    EXPECT_EQ(second_of(edge).failure.reason, Reason::never_boils);
    EXPECT_EQ(second_of(edge).number, 1U);
}

} // namespace
} // namespace hearthcell::tests
