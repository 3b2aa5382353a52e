// Boil times carried to other conditions.

#include "functions/kernels/boil_time.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace hearthcell::tests {
namespace {

PublishedTable const linear{
    {"NORMALBOILTIME", {28, 20, 94.983}, {28.006348, half(1e-6)}, "28 × 75/74.983, by hand"},
    {"NORMALBOILTIME", {17, 28, 86.6}, {21.757679, half(1e-6)}, "17 × 75/58.6, by hand"},
    {"NORMALBOILTIME", {17, 28, 86.6, 75, 4000, 5000}, {27.197099, half(1e-6)}, "× 5/4, by hand"},
    {"NORMALBOILTIME", {17, 28, 86.6, omitted, 4000, 5000}, {27.197099, half(1e-6)}, "75 K is the default"},
    {"NORMALBOILTIME", {30, 20, 80, 60}, {30, 1e-14}, "Nothing to correct, by hand"},
    {"NORMALBOILTIME", {17, 95, 20}, {Error::number}, "The water cooled"},
    {"NORMALBOILTIME", {17, 28, 86.6, 75, 4000}, {Error::number}, "A mass without its standard"},
    {"NORMALBOILTIME", {17, 28, 86.6, 75, omitted, 5000}, {Error::number}, "A standard without its mass"},
};

TEST(NormalBoilTime, NeedsARise) {
    EXPECT_EQ(reason("NORMALBOILTIME", {17, 80, 80}), Reason::end_not_above_start);
    EXPECT_EQ(reason("MODELBOILTIME", {28, 80, 80, 20, 5000, 5}), Reason::end_not_above_start);
    EXPECT_EQ(reason("MODELBOILTIME", {28, 20, 95, 20, 5000, 5, 0, 90, 90}), Reason::end_not_above_start);
}

TEST(NormalBoilTime, IsInProportionToRiseAndMass) {
    linear.check();
}

constexpr std::string_view apart = "The closed form with SR6-08, computed apart; inputs invented";
PublishedTable const model{
    {"MODELBOILTIME", {28, 20, 94.983, 20, 5000, 0, 450}, {28.019513, half(1e-6)}, apart},
    {"MODELBOILTIME", {28, 20, 94.983, 20, 5000, 5, 450}, {28.020941, half(1e-6)}, apart},
    {"MODELBOILTIME", {28, 20, 94.983, 20, 5000, 10, 450}, {28.022813, half(1e-6)}, apart},
    {"MODELBOILTIME", {17, 28, 86.6, 26, 4000, 0, 450, 25, 100, 5000}, {27.078736, half(1e-6)}, apart},
    {"MODELBOILTIME", {17, 28, 86.6, 26, 4000, 5, 450, 25, 100, 5000}, {28.104332, half(1e-6)}, apart},
    {"MODELBOILTIME", {17, 28, 86.6, 26, 4000, 10, 450, 25, 100, 5000}, {29.611844, half(1e-6)}, apart},
    {"MODELBOILTIME", {17, 28, 86.6, 26, 4000, 10, 450, omitted, omitted, 5000}, {29.611844, half(1e-6)}, "Defaults"},
    {"MODELBOILTIME", {100, 20, 80, 20, 5000, 15, 450}, {Error::number}, "913.6 W against 1200 W: never boils"},
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
