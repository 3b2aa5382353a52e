#include "worked_examples.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace hearthcell {

// Needed by no kernel so far, but by H.2.
template <std::size_t N> Dual<N> cos(Dual<N> const& x) {
    return chain(std::cos(x.value), -std::sin(x.value), x);
}
template <std::size_t N> Dual<N> sin(Dual<N> const& x) {
    return chain(std::sin(x.value), std::cos(x.value), x);
}

namespace tests {
namespace {

using std::cos, std::sin;

TEST(Propagation, GivesTheEndGaugeOfTheGuide) {
    Propagated const result = end_gauge().first();
    EXPECT_NEAR(result.value, 50000838, 0.5);            // JCGM 100, H.1: 50.000838 mm
    EXPECT_NEAR(result.uncertainty, 31.71, 0.01);        // printed 32 nm; 31.71 recomputed
    EXPECT_NEAR(result.contributions[0], 25, 1e-4);      // the standard; its slope is 1 less a trifle
    EXPECT_NEAR(result.contributions[2], 2.90, 0.005);   // printed 2.9: l_s θ u(δα)
    EXPECT_NEAR(result.contributions[3], 0, 1e-12);      // δα = 0
    EXPECT_NEAR(result.contributions[5], 16.675, 0.005); // printed 16.6, from a less rounded uncertainty: l_s α u(δθ)
}

/// Voltage in V, current in A, phase in rad as read five times.
constexpr double readings[3][5] = {{5.007, 4.994, 5.005, 4.990, 4.999},
                                   {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
                                   {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}};

double mean_of(double const (&values)[5]) {
    return std::accumulate(std::begin(values), std::end(values), 0.0) / 5;
}

/// Covariance of two means of five.
double covariance(double const (&a)[5], double const (&b)[5]) {
    double sum = 0;
    for (int i = 0; i < 5; ++i)
        sum += (a[i] - mean_of(a)) * (b[i] - mean_of(b));
    return sum / 20;
}

Example with_readings(Numeric const& equation) {
    Example example{equation, {}, {}, {}};
    for (auto const& values : readings) {
        example.numbers.push_back(mean_of(values));
        example.uncertainties.push_back(std::sqrt(covariance(values, values)));
    }
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j)
            example.correlations.push_back(
                covariance(readings[i], readings[j]) /
                std::sqrt(covariance(readings[i], readings[i]) * covariance(readings[j], readings[j])));
    return example;
}

TEST(Propagation, GivesResistanceReactanceAndImpedanceOfTheGuideWithCorrelations) {
    // JCGM 100, H.2, table H.4: 127.732 (0.071), 219.847 (0.295), 254.260 (0.236) Ω; printed to the last digit
    Propagated const resistance =
        with_readings(
            numeric<[]<class Real>(Real const& v, Real const& i, Real const& phi) { return Real(v / i * cos(phi)); }>)
            .first();
    EXPECT_NEAR(resistance.value, 127.732, 5e-4);
    EXPECT_NEAR(resistance.uncertainty, 0.071, 5e-4);
    Propagated const reactance =
        with_readings(
            numeric<[]<class Real>(Real const& v, Real const& i, Real const& phi) { return Real(v / i * sin(phi)); }>)
            .first();
    EXPECT_NEAR(reactance.value, 219.847, 5e-4);
    EXPECT_NEAR(reactance.uncertainty, 0.295, 1e-3); // printed so; 0.2956 unrounded
    Propagated const impedance =
        with_readings(numeric<[]<class Real>(Real const& v, Real const& i, Real const&) { return Real(v / i); }>)
            .first();
    EXPECT_NEAR(impedance.value, 254.260, 5e-4);
    EXPECT_NEAR(impedance.uncertainty, 0.236, 5e-4);
    EXPECT_NEAR(impedance.shares[0] + impedance.shares[1] + impedance.shares[2], 1, 1e-12);
}

TEST(Propagation, GivesTheSumsAndTheMassOfTheSupplement) {
    EXPECT_NEAR(sum_of_four(1).first().uncertainty, 2.0, 1e-12);    // JCGM 101, 9.2.2 and 9.2.3: 2.0
    EXPECT_NEAR(sum_of_four(10).first().uncertainty, 10.15, 0.005); // JCGM 101, 9.2.4: 10.1; √103
    Propagated const mass = mass_calibration().first();
    EXPECT_NEAR(mass.value, 1.234, 1e-9);
    EXPECT_NEAR(mass.uncertainty, 0.0539, 5e-5); // JCGM 101, table 6
}

TEST(Propagation, GivesTheBudgetOfAnEfficiencyWithConstantProperties) {
    // Invented readings; values from the Python package uncertainties 3.1.6 to the digits given. The moisture is in %,
    // masses in kg, energies in kJ.
    Example const run{
        numeric<[]<class Real>(Real const& m, Real const& start, Real const& end, Real const& steam, Real const& wood,
                               Real const& moisture, Real const& dry, Real const& coal, Real const& coal_value) {
            Real const useful = 4.188 * m * (end - start) + 2269.64 * steam;
            Real const as_fired = dry * (1 - 0.01 * moisture) - 0.02443 * moisture;
            return Real(useful / (1000 * (wood * as_fired - coal * coal_value)));
        }>,
        {5, 20, 94.983, 0.25, 0.6, 12, 18.5, 0.05, 29.5},
        {0.005, 0.5, 0.5, 0.007, 0.003, 1.5, 0.35, 0.003, 1}};
    Propagated const result = run.first();
    EXPECT_NEAR(result.value, 0.263339, 5e-7);
    EXPECT_NEAR(result.uncertainty, 0.009687, 5e-7);
    constexpr double contributions[] = {0.00019, 0.00129, 0.00129, 0.00196, 0.00156,
                                        0.00612, 0.00600, 0.00287, 0.00162};
    for (std::size_t i = 0; i < std::size(contributions); ++i)
        EXPECT_NEAR(result.contributions[i], contributions[i], 1e-5) << i;
}

TEST(Propagation, LetsFullCorrelationCancelADifferenceAndDoubleASum) {
    constexpr auto difference = numeric<[]<class Real>(Real const& a, Real const& b) { return Real(a - b); }>;
    constexpr auto sum = numeric<[]<class Real>(Real const& a, Real const& b) { return Real(a + b); }>;
    std::vector<double> const full{1, 1, 1, 1};
    Propagated const nothing = Example{difference, {5800, 5550}, {0.3, 0.3}, full}.first();
    EXPECT_EQ(nothing.uncertainty, 0);
    EXPECT_EQ(nothing.shares[0], 0); // of nothing
    EXPECT_NEAR((Example{sum, {5800, 5550}, {0.3, 0.3}, full}.first().uncertainty), 0.6, 1e-15);
}

TEST(Propagation, SaysWhichNumberHasNoFiniteSlopeUnlessThatNumberIsExact) {
    constexpr auto root = numeric<[]<class Real>(Real const& a, Real const& b) {
        using std::sqrt;
        return value_of(a) < 1 ? a : Real(sqrt(b));
    }>;
    Propagated const result = Example{root, {1, 0}, {0, 0.1}}.first();
    EXPECT_EQ(failure_of(result.value).reason, Reason::no_finite_slope);
    EXPECT_EQ(failure_of(result.value).argument, 1U);
    Propagated const exact = Example{root, {1, 0}, {0, 0}}.first();
    EXPECT_EQ(exact.uncertainty, 0);
    EXPECT_EQ(failure_of(exact.slopes[1]).reason, Reason::no_finite_slope); // what a budget shows there
}

TEST(Propagation, HandsAFailureOfTheEquationOn) {
    constexpr auto fails = numeric<[]<class Real>(Real const& a) -> Real {
        if (0 < value_of(a))
            return failure(Reason::never_boils);
        return a;
    }>;
    EXPECT_EQ(failure_of(Example{fails, {1}, {0.1}}.first().value).reason, Reason::never_boils);
}

} // namespace
} // namespace tests
} // namespace hearthcell
