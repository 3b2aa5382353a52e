// Sweeps against independent implementations: iapws and fluids of Debian, by reference.py.

#include "reference.hpp"

#include "support/calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

TEST(Reference, SaturationLineOfIf97IsMetOverTheWholeRange) {
    for (Point const& point : reference("boiling point, IF97", 400))
        EXPECT_NEAR(number("BOILINGPOINTAT", {point.input}), point.value, 1e-9) << point.input << " hPa";
}

/// A cell gives differences of enthalpy: those from the reference's first temperature are compared.
void expect_enthalpies(std::vector<Point> const& points, double tolerance) {
    for (Point const& point : points) {
        double const expected = point.value - points.front().value;
        EXPECT_NEAR(number("WATERHEAT", {1000, points.front().input, point.input}), expected, tolerance)
            << point.input << " °C";
    }
}

TEST(Reference, EnthalpyOfSr608IsMetOverTheWholeRange) {
    expect_enthalpies(reference("enthalpy, SR6-08", 200), 1e-9);
}

TEST(Reference, DensityOfSr608IsMetOverTheWholeRange) {
    for (Point const& point : reference("density, SR6-08", 200))
        EXPECT_NEAR(number("WATERDENSITY", {point.input}) * 1000, point.value, 1e-9) << point.input << " °C";
}

TEST(Reference, LiquidWaterIsThatOfIapws95) {
    // SR6-08 states that it reproduces IAPWS-95 within its uncertainty; 0.001 kg/m³ is 1e-6 of the density.
    for (Point const& point : reference("density, IAPWS-95", 20))
        EXPECT_NEAR(number("WATERDENSITY", {point.input}) * 1000, point.value, 1e-3) << point.input << " °C";
    expect_enthalpies(reference("enthalpy, IAPWS-95", 20), 2e-3);
}

TEST(Reference, LatentHeatIsThatOfIf97WithinAQuarterOfAKilojoule) {
    // SR1-86 and IF97 are two equations for one property: 0.25 of 2300 kJ/kg is a ninth of a thousandth.
    for (Point const& point : reference("latent heat, IF97", 90))
        EXPECT_NEAR(number("EVAPORATIONHEAT", {1000, point.input}), point.value, 0.25) << point.input << " °C";
}

// ISO 2533 has R = 287.05287, the US Standard Atmosphere 8314.32/28.9644 = 287.05307 J/(kg K): 7.03e-7 of the exponent,
// so 7.03e-7 × ln(p0/p) of the pressure, which is 8.3e-7 at 8900 m.
TEST(Reference, StandardAtmosphereIsMetFromBelowSeaLevelTo8900Metres) {
    for (Point const& point : reference("air pressure, US Standard Atmosphere", 370))
        EXPECT_NEAR(number("AIRPRESSURE", {point.input}), point.value, 8.4e-7 * point.value) << point.input << " m";
}

TEST(Reference, BoilingPointIsMetFromBelowSeaLevelTo8900Metres) {
    // The same difference of the gas constants is below 2e-5 K.
    for (Point const& point : reference("boiling point at an altitude", 370))
        EXPECT_NEAR(number("BOILINGPOINT", {point.input}), point.value, 2e-5) << point.input << " m";
}

} // namespace
} // namespace hearthcell::tests
