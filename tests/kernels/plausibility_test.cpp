// Common practice, no source: what people who test stoves would expect to see. Wide bands, no check of digits.

#include "support/calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

// About 5 L of water from 20 °C to the boil in about 25 minutes on about half a kilogram of air-dry twigs.
constexpr double twigs = 500, minutes = 25, moisture = 0.15;

double heat_of_the_boil() {
    double const boils_at = number("BOILINGPOINT", {500}), water = number("WATERMASS", {5, 20});
    return number("USEFULHEAT", {water, 20, boils_at, omitted, 50, boils_at});
}
double energy_of_twigs(double mass) {
    return number("WOODENERGY", {mass, moisture, number("CALORIFICVALUE", {"broad-leaf wood"})});
}

TEST(Plausibility, FiveLitresOnHalfAKilogramOfTwigsIsAboutTwentyPercentAndFiveKilowatts) {
    EXPECT_NEAR(number("EFFICIENCY", {heat_of_the_boil(), energy_of_twigs(twigs)}), 0.20, 0.03);
    EXPECT_NEAR(number("FIREPOWER", {energy_of_twigs(twigs), minutes}), 5, 0.5);
}

TEST(Plausibility, TheSameBoilOnAThirdLessFuelIsHalfAsEfficientAgain) {
    double const fuel = energy_of_twigs(twigs), saved = energy_of_twigs(twigs * 2 / 3);
    double const before = number("EFFICIENCY", {heat_of_the_boil(), fuel});
    double const after = number("EFFICIENCY", {heat_of_the_boil(), saved});
    EXPECT_NEAR(after / before, 1.5, 0.05);
    // and in two thirds of the time the fire is as strong, while the pot gets half as much power again
    EXPECT_NEAR(number("FIREPOWER", {saved, minutes * 2 / 3}) / number("FIREPOWER", {fuel, minutes}), 1, 0.05);
    EXPECT_NEAR(number("COOKINGPOWER", {heat_of_the_boil(), minutes * 2 / 3}) /
                    number("COOKINGPOWER", {heat_of_the_boil(), minutes}),
                1.5, 0.05);
}

TEST(Plausibility, ARollingBoilCalledTwoKelvinEarlyMovesNoResultMuch) {
    // What is commonly called a rolling boil is some 2 K below the true boiling point. The functions take it without a
    // word, the heat is 2 of 75 K short, and the normalised boil time hardly moves.
    double const boils_at = number("BOILINGPOINT", {500}), called_at = boils_at - 2;
    double const water = number("WATERMASS", {5, 20});
    EXPECT_NEAR(number("USEFULHEAT", {water, 20, called_at}) / number("USEFULHEAT", {water, 20, boils_at}), 1, 0.03);
    double const rate = (boils_at - 20) / minutes; // K/min, steady to the end
    EXPECT_NEAR(number("NORMALBOILTIME", {(called_at - 20) / rate, 20, called_at}),
                number("NORMALBOILTIME", {minutes, 20, boils_at}), 0.01);
    for (char const* method : {"properties", "WBT 4.2.3"})
        EXPECT_EQ(explained("USEFULHEAT", {water, 20, called_at, method, 50, boils_at}).find("Odd"), std::string::npos);
    // Above the boiling point, though, no water gets: then probe, altitude or weather is wrong.
    EXPECT_EQ(explained("USEFULHEAT", {water, 20, boils_at + 2, omitted, 50, boils_at}).find("Odd"), 0);
}

} // namespace
} // namespace hearthcell::tests
