// Boil times carried to other conditions.

#include "functions/kernels/boil_time.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace hearthcell::tests {
namespace {

PublishedTable const linear{
    {"NORMALBOILTIME", {32, 14.5, 95.85}, {29.502151, half(1e-6)}, "32 × 75/81.35, by hand"},
    {"NORMALBOILTIME", {22.5, 24, 89.5}, {25.763359, half(1e-6)}, "22.5 × 75/65.5, by hand"},
    {"NORMALBOILTIME", {22.5, 24, 89.5, 75, 3000, 3600}, {30.916031, half(1e-6)}, "× 6/5, by hand"},
    {"NORMALBOILTIME", {22.5, 24, 89.5, omitted, 3000, 3600}, {30.916031, half(1e-6)}, "75 K is the default"},
    {"NORMALBOILTIME", {30, 20, 80, 60}, {30, 1e-14}, "Nothing to correct, by hand"},
    {"NORMALBOILTIME", {22.5, 95, 20}, {Error::number}, "The water cooled"},
    {"NORMALBOILTIME", {22.5, 24, 89.5, 75, 3000}, {Error::number}, "A mass without its standard"},
    {"NORMALBOILTIME", {22.5, 24, 89.5, 75, omitted, 3600}, {Error::number}, "A standard without its mass"},
};

TEST(NormalBoilTime, NeedsARise) {
    EXPECT_EQ(reason("NORMALBOILTIME", {22.5, 80, 80}), Reason::end_not_above_start);
    EXPECT_EQ(reason("MODELBOILTIME", {28, 80, 80, 20, 5000, 5}), Reason::end_not_above_start);
    EXPECT_EQ(reason("MODELBOILTIME", {28, 20, 95, 20, 5000, 5, 0, 90, 90}), Reason::end_not_above_start);
}

TEST(NormalBoilTime, IsInProportionToRiseAndMass) {
    linear.check();
}

constexpr std::string_view apart = "The closed form with SR6-08, computed apart; inputs invented";
PublishedTable const model{
    {"MODELBOILTIME", {32, 14.5, 95.85, 16, 3600, 0, 380}, {29.515003, half(1e-6)}, apart},
    {"MODELBOILTIME", {32, 14.5, 95.85, 16, 3600, 4, 380}, {29.121158, half(1e-6)}, apart},
    {"MODELBOILTIME", {32, 14.5, 95.85, 16, 3600, 8, 380}, {28.525308, half(1e-6)}, apart},
    {"MODELBOILTIME", {22.5, 24, 89.5, 23, 3000, 0, 380, 25, 100, 3600}, {30.788620, half(1e-6)}, apart},
    {"MODELBOILTIME", {22.5, 24, 89.5, 23, 3000, 4, 380, 25, 100, 3600}, {31.706119, half(1e-6)}, apart},
    {"MODELBOILTIME", {22.5, 24, 89.5, 23, 3000, 8, 380, 25, 100, 3600}, {33.138370, half(1e-6)}, apart},
    {"MODELBOILTIME", {22.5, 24, 89.5, 23, 3000, 8, 380, omitted, omitted, 3600}, {33.138370, half(1e-6)}, "Defaults"},
    {"MODELBOILTIME", {90, 14.5, 78, 16, 3600, 14, 380}, {Error::number}, "874.7 W against 1050 W: never boils"},
    {"MODELBOILTIME", {28, 95, 20, 20, 5000, 5}, {Error::number}, "The water cooled"},
    {"MODELBOILTIME", {28, 20, 95, 20, 5000, 5, 0, 95, 90}, {Error::number}, "Standard end below standard start"},
};

TEST(ModelBoilTime, FollowsTheClosedFormOfHeatingWithLoss) {
    model.check();
}

/// Seconds from one temperature to another in °C at a power in W, capacity in J/K, loss in W/K: the textbook's form.
double textbook(double from, double to, double air, double power, double capacity, double loss) {
    return -capacity / loss * std::log((power - loss * (to - air)) / (power - loss * (from - air)));
}

TEST(ModelBoilTime, AgreesWithTheTextbookFormForAKnownPower) {
    // C dT/dt = P - UA (T - air) with C = 21380 J/K, 1500 W, 5 W/K, from 20 °C in air of 20 °C: seconds, worked apart.
    EXPECT_NEAR(textbook(20, 60, 20, 1500, 21380, 5), 611.899, half(1e-3));
    EXPECT_NEAR(textbook(20, 80, 20, 1500, 21380, 5), 954.162, half(1e-3));
    EXPECT_NEAR(textbook(20, 95, 20, 1500, 21380, 5), 1230.129, half(1e-3));
    EXPECT_NEAR(textbook(20, 100, 20, 1500, 21380, 5), 1326.222, half(1e-3));

    // A test that took that long must give the power back, and with it the time under other conditions.
    for (double const power : {900.0, 1500.0, 4000.0})
        for (double const loss : {0.5, 5.0, 10.0})
            for (double const end : {60.0, 80.0, 95.0}) {
                double const capacity = kernels::water_capacity(5000.0, 20.0, end) + 450;
                double const standard_capacity = kernels::water_capacity(4000.0, 25.0, 100.0) + 450;
                double const minutes = textbook(20, end, 18, power, capacity, loss) / 60;
                double const expected = textbook(25, 100, 22, power, standard_capacity, loss) / 60;
                EXPECT_NEAR(number("MODELBOILTIME", {minutes, 20, end, 18, 5000, loss, 450, 25, 100, 4000, 22}),
                            expected, 1e-10 * expected)
                    << power << " W, " << loss << " W/K, to " << end << " °C";
            }
}

TEST(ModelBoilTime, ComesToTheBoilWithHalfAWattToSpare) {
    double const power = 12 * 80 + 0.5, capacity = kernels::water_capacity(5000.0, 20.0, 60.0) + 450;
    double const standard_capacity = kernels::water_capacity(5000.0, 25.0, 100.0) + 450;
    double const minutes = textbook(20, 60, 20, power, capacity, 12) / 60;
    double const expected = textbook(25, 100, 20, power, standard_capacity, 12) / 60;
    EXPECT_NEAR(number("MODELBOILTIME", {minutes, 20, 60, 20, 5000, 12, 450, 25, 100, 5000, 20}), expected,
                1e-9 * expected);
}

TEST(ModelBoilTime, ShowsWhereTheProportionMisleads) {
    // 25 → 95 °C scaled to 75 K by proportion is 0.9 % above 20 → 95 °C, 20 → 87 °C at 4000 m 1.7 % below: constants as
    // above, seconds.
    EXPECT_NEAR(textbook(25, 95, 20, 1500, 21380, 5) * 75 / 70, 1240.99, half(0.01));
    EXPECT_NEAR(textbook(20, 87, 20, 1500, 21380, 5) * 75 / 67, 1209.78, half(0.01));
    auto const model_less_proportion = [](double start, double end) {
        double const seconds = textbook(start, end, 20, 1500, kernels::water_capacity(5000.0, start, end) + 450, 5);
        double const modelled = number("MODELBOILTIME", {seconds / 60, start, end, 20, 5000, 5, 450, 20, 95});
        return number("NORMALBOILTIME", {seconds / 60, start, end}) / modelled - 1;
    };
    EXPECT_NEAR(model_less_proportion(25, 95), 0.009, half(2e-3));
    EXPECT_NEAR(model_less_proportion(20, 87), -0.017, half(2e-3));
}

TEST(ModelBoilTime, ReturnsTheTestsOwnTimeUnderTheTestsOwnConditions) {
    for (double const loss : {0.0, 1e-12, 1e-6, 0.01, 1.0, 8.0})
        EXPECT_NEAR(number("MODELBOILTIME", {28, 20, 95, 15, 5000, loss, 450, 20, 95, 5000, 15}), 28, 28e-14)
            << loss << " W/K";
}

TEST(ModelBoilTime, RestsOnQuotientsThatKeepEveryDigitThroughZero) {
    // (e^x - 1)/x and ln(1 + x)/x, against the C library with 64 bits of mantissa, on both sides of where series take
    // over and at zero itself.
    EXPECT_EQ(kernels::growth_quotient(0.0), 1);
    EXPECT_EQ(kernels::logarithm_quotient(0.0), 1);
    for (double size = 1e-12; size < 0.5; size *= 1.3)
        for (double const x : {size, -size}) {
            long double const exact = x;
            EXPECT_NEAR(kernels::growth_quotient(x), double(expm1l(exact) / exact), 5e-16) << x;
            EXPECT_NEAR(kernels::logarithm_quotient(x), double(log1pl(exact) / exact), 5e-16) << x;
        }
}

TEST(ModelBoilTime, JoinsTheFormWithoutLossSmoothly) {
    auto const minutes = [](double loss) {
        return number("MODELBOILTIME", {17, 28, 86.6, 26, 4000, loss, 450, 25, 100, 5000});
    };
    // Without loss the time is in proportion to the heat, C ΔT.
    double const capacity = kernels::water_capacity(4000.0, 28.0, 86.6) + 450;
    double const standard_capacity = kernels::water_capacity(5000.0, 25.0, 100.0) + 450;
    double const without = 17 * (standard_capacity * 75) / (capacity * 58.6);
    EXPECT_NEAR(minutes(0), without, 1e-14 * without);
    double const slope = (minutes(1e-2) - minutes(0)) / 1e-2;
    EXPECT_GT(slope, 0);
    // Down to losses where a quotient written carelessly has no digit left.
    for (double loss = 1e-2; loss > 1e-15; loss /= 10)
        EXPECT_NEAR(minutes(loss), without + slope * loss, 1e-3 * slope * loss + 1e-13 * without) << loss << " W/K";
    // Both sides of the point where the series takes over from the closed form.
    for (double loss = 1e-4; loss < 1; loss *= 1.01)
        EXPECT_GT(minutes(loss * 1.01), minutes(loss)) << loss << " W/K";
}

} // namespace
} // namespace hearthcell::tests
