// Common practice, no source: what people who test stoves would expect to see. Wide bands, no check of digits.

#include "support/calls.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

// About 3.6 L of water from 14.5 °C to the boil in about 30 minutes on about 450 g of air-dry split wood.
constexpr double wood = 450, minutes = 30, moisture = 0.15, start = 14.5, litres = 3.6;

double heat_of_the_boil() {
    double const boils_at = number("BOILINGPOINT", {500}), water = number("WATERMASS", {litres, start});
    return number("USEFULHEAT", {water, start, boils_at, omitted, 50, boils_at});
}
double energy_of_wood(double mass) {
    return number("WOODENERGY", {mass, moisture, number("CALORIFICVALUE", {"broad-leaf wood"})});
}

TEST(Plausibility, ABoilOnHalfAKilogramOfWoodIsAboutTwentyPercentAndFourKilowatts) {
    EXPECT_NEAR(number("EFFICIENCY", {heat_of_the_boil(), energy_of_wood(wood)}), 0.20, 0.03);
    EXPECT_NEAR(number("FIREPOWER", {energy_of_wood(wood), minutes}), 4, 0.5);
}

TEST(Plausibility, TheSameBoilOnAnEighthLessFuelIsASeventhMoreEfficient) {
    double const fuel = energy_of_wood(wood), saved = energy_of_wood(wood * 7 / 8);
    double const before = number("EFFICIENCY", {heat_of_the_boil(), fuel});
    double const after = number("EFFICIENCY", {heat_of_the_boil(), saved});
    EXPECT_NEAR(after / before, 8 / 7.0, 0.01);
    // and in seven eighths of the time the fire is as strong, while the pot gets a seventh more power
    EXPECT_NEAR(number("FIREPOWER", {saved, minutes * 7 / 8}) / number("FIREPOWER", {fuel, minutes}), 1, 0.01);
    EXPECT_NEAR(number("COOKINGPOWER", {heat_of_the_boil(), minutes * 7 / 8}) /
                    number("COOKINGPOWER", {heat_of_the_boil(), minutes}),
                8 / 7.0, 0.01);
}

TEST(Plausibility, ARollingBoilCalledTwoKelvinEarlyMovesNoResultMuch) {
    // What is commonly called a rolling boil is some 2 K below the true boiling point. The functions take it without a
    // word, the heat is 2 of 84 K short, and the normalised boil time hardly moves.
    double const boils_at = number("BOILINGPOINT", {500}), called_at = boils_at - 2;
    double const water = number("WATERMASS", {litres, start});
    EXPECT_NEAR(number("USEFULHEAT", {water, start, called_at}) / number("USEFULHEAT", {water, start, boils_at}), 1,
                0.03);
    double const rate = (boils_at - start) / minutes; // K/min, steady to the end
    EXPECT_NEAR(number("NORMALBOILTIME", {(called_at - start) / rate, start, called_at}),
                number("NORMALBOILTIME", {minutes, start, boils_at}), 0.01);
    for (char const* method : {"properties", "WBT 4.2.3"})
        EXPECT_EQ(explained("USEFULHEAT", {water, start, called_at, method, 50, boils_at}).find("Odd"),
                  std::string::npos);
    // Above the boiling point, though, no water gets: then probe, altitude or weather is wrong.
    EXPECT_EQ(explained("USEFULHEAT", {water, start, boils_at + 2, omitted, 50, boils_at}).find("Odd"), 0);
}

} // namespace
} // namespace hearthcell::tests
