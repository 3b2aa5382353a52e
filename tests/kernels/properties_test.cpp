// What must hold whatever the numbers are: inverse pairs, monotonicity, limits.

#include "functions/kernels/saturation.hpp"
#include "support/calls.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace hearthcell::tests {
namespace {

/// IAPWS R7-97(2012), equation 30: saturation pressure in MPa from a temperature in K. Written here a second time, as
/// the inverse of equation 31, which is what the functions use.
double saturation_pressure(double kelvin) {
    constexpr double n[] = {0.11670521452767e4,  -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,
                            -0.32325550322333e7, 0.14915108613530e2,  -0.48232657361591e4, 0.40511340542057e6,
                            -0.23855557567849,   0.65017534844798e3};
    double const theta = kelvin + n[8] / (kelvin - n[9]);
    double const a = theta * theta + n[0] * theta + n[1];
    double const b = n[2] * theta * theta + n[3] * theta + n[4];
    double const c = n[5] * theta * theta + n[6] * theta + n[7];
    return std::pow(2 * c / (-b + std::sqrt(b * b - 4 * a * c)), 4);
}

TEST(SaturationLine, ReproducesTheCheckTableOfEquation30) {
    // IAPWS R7-97(2012), table 35 (number from memory), nine digits.
    EXPECT_NEAR(saturation_pressure(300), 0.353658941e-2, 0.5e-11);
    EXPECT_NEAR(saturation_pressure(500), 2.63889776, 0.5e-8);
    EXPECT_NEAR(saturation_pressure(600), 12.3443146, 0.5e-7);
}

TEST(InversePairs, PressureAndBoilingPoint) {
    for (int pressure = 300; pressure <= 1100; ++pressure) {
        double const boils_at = number("BOILINGPOINTAT", {double(pressure)});
        EXPECT_NEAR(saturation_pressure(boils_at + 273.15) * 1e4, pressure, 1e-9 * pressure);
    }
}

TEST(InversePairs, AirPressureAndSeaLevelPressure) {
    for (int altitude = -400; altitude <= 8800; altitude += 100)
        for (double const sea_level : {880.0, 950.0, 1013.25, 1050.0, 1080.0}) {
            double const station = kernels::air_pressure(double(altitude), sea_level, absent);
            EXPECT_NEAR(kernels::sea_level_pressure(station, double(altitude)), sea_level, 1e-12 * sea_level)
                << altitude << " m";
        }
}

TEST(InversePairs, BoilingPointByAltitudeAndByThePressureThere) {
    for (int altitude = -400; altitude <= 8800; altitude += 100)
        for (double const sea_level : {950.0, 1013.25, 1050.0}) {
            double const station = kernels::air_pressure(double(altitude), sea_level, absent);
            if (station < 300 || station > 1100) { // beyond what a barometer in a cell may read
                EXPECT_EQ(reason("AIRPRESSURE", {double(altitude), sea_level}), Reason::result_out_of_range);
                continue;
            }
            EXPECT_EQ(number("AIRPRESSURE", {double(altitude), sea_level}), station);
            EXPECT_EQ(number("BOILINGPOINT", {double(altitude), sea_level}), number("BOILINGPOINTAT", {station}));
        }
}

TEST(InversePairs, WetAndDryBasis) {
    for (int percent = 0; percent <= 75; ++percent) {
        double const moisture = percent / 100.0;
        EXPECT_NEAR(number("WETBASIS", {number("DRYBASIS", {moisture})}), moisture, 1e-15);
    }
    // and as two ways of reading one pair of weighings
    double const wet = number("MOISTURE", {137, 101, "wet", 13}), dry = number("MOISTURE", {137, 101, "dry", 13});
    EXPECT_NEAR(number("WETBASIS", {dry}), wet, 1e-15);
    EXPECT_NEAR(number("DRYBASIS", {wet}), dry, 1e-15);
}

TEST(InversePairs, GrossAndNet) {
    // Gross is net plus the same correction, whatever the value.
    for (double const hydrogen : {0.0, 0.03, 0.062, 0.14}) {
        double const correction = 40 - number("NETFROMGROSS", {40, hydrogen, 0.4});
        for (double net = 15; net < 35; net += 0.5)
            EXPECT_NEAR(number("NETFROMGROSS", {net + correction, hydrogen, 0.4}), net, 1e-13);
    }
}

TEST(InversePairs, NetDryAndNetAsFired) {
    for (int percent = 0; percent <= 60; percent += 5) {
        double const moisture = percent / 100.0;
        double const as_fired = number("NETASFIRED", {19, moisture});
        EXPECT_NEAR((as_fired + 2.443 * moisture) / (1 - moisture), 19, 1e-13);
    }
}

TEST(InversePairs, MassAndVolumeOfWater) {
    for (double temperature = 0.5; temperature <= 105; temperature += 0.5)
        EXPECT_NEAR(number("WATERMASS", {5, temperature}) / number("WATERDENSITY", {temperature}), 5000, 1e-11);
}

/// Whether a function rises (or falls) from each step of a sweep to the next.
void expect_rising(double from, double to, int steps, std::function<double(double)> const& f) {
    double before = f(from);
    for (int i = 1; i <= steps; ++i) {
        double const x = from + (to - from) * i / steps;
        double const now = f(x);
        ASSERT_GT(now, before) << "at " << x;
        before = now;
    }
}
void expect_falling(double from, double to, int steps, std::function<double(double)> const& f) {
    expect_rising(from, to, steps, [&f](double x) { return -f(x); });
}

TEST(Monotonicity, OfSiteAndWater) {
    expect_falling(-450, 9000, 20000, [](double x) { return number("AIRPRESSURE", {x}); });
    expect_falling(-450, 9000, 20000, [](double x) { return number("BOILINGPOINT", {x}); });
    expect_rising(870, 1085, 20000, [](double x) { return number("BOILINGPOINT", {1500, x}); });
    expect_rising(300, 1100, 20000, [](double x) { return number("BOILINGPOINTAT", {x}); });
    expect_falling(60, 105, 20000, [](double x) { return number("EVAPORATIONHEAT", {1000, x}); });
    expect_rising(0.01, 105, 20000, [](double x) { return number("WATERHEAT", {1000, 0.01, x}); });
    // Water is heaviest at 3.98 °C.
    expect_rising(0.01, 3.97, 500, [](double x) { return number("WATERDENSITY", {x}); });
    expect_falling(3.99, 105, 20000, [](double x) { return number("WATERDENSITY", {x}); });
}

TEST(Monotonicity, OfFuelAndResult) {
    expect_rising(0, 3, 3000, [](double x) { return number("WETBASIS", {x}); });
    expect_rising(0, 0.75, 3000, [](double x) { return number("DRYBASIS", {x}); });
    expect_falling(0, 0.75, 3000, [](double x) { return number("NETASFIRED", {19, x}); });
    for (char const* method : {"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"})
        expect_falling(0, 0.75, 3000, [=](double x) { return number("WOODENERGY", {600, x, 19, method, 95, 20}); });
    expect_falling(-50, 100, 1500, [](double x) { return number("EQUIVALENTDRYFUEL", {600, 0.12, 18.5, x}); });
    // Wetter wood carries less energy, and char that is credited less was spent: both raise the efficiency.
    expect_rising(0, 0.6, 1000, [](double x) {
        return number("BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, x, 18.5});
    });
    expect_rising(0, 150, 1000, [](double x) {
        return number("BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 400, 0.12, 18.5, omitted, x});
    });
    // A test from colder water took longer than the standard one would.
    expect_rising(30, 94, 1000, [](double x) { return number("MODELBOILTIME", {28, x, 95, 20, 5000, 5, 450}); });
    expect_rising(0, 10, 1000, [](double x) {
        return number("MODELBOILTIME", {17, 28, 86.6, 26, 4000, x, 450, 25, 100, 5000});
    });
}

TEST(Limits, OfEachRangeAreAllowedAndJustBeyondIsNot) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            if (!std::holds_alternative<Numeric>(function.kernel))
                continue;
            for (unsigned i = 0; i < function.arguments.size(); ++i) {
                Argument const& argument = function.arguments[i];
                if (argument.kind != ArgumentKind::number)
                    continue;
                std::vector<Value> values =
                    values_of({function.examples[0].arguments.begin(), function.examples[0].arguments.size()});
                values.resize(function.arguments.size());
                auto const refused = [&](double x) {
                    values[i] = x;
                    Outcome const outcome = call(function, values);
                    Failure const* why = std::get_if<Failure>(&outcome);
                    return why != nullptr && why->reason == Reason::out_of_range && why->argument == i;
                };
                double const infinity = std::numeric_limits<double>::infinity();
                EXPECT_FALSE(refused(argument.low)) << function.name << ", " << argument.name.english;
                EXPECT_FALSE(refused(argument.high)) << function.name << ", " << argument.name.english;
                EXPECT_TRUE(refused(std::nextafter(argument.low, -infinity)))
                    << function.name << ", " << argument.name.english;
                EXPECT_TRUE(refused(std::nextafter(argument.high, infinity)))
                    << function.name << ", " << argument.name.english;
                EXPECT_TRUE(refused(infinity)) << function.name << ", " << argument.name.english;
                EXPECT_TRUE(refused(-infinity)) << function.name << ", " << argument.name.english;
                EXPECT_TRUE(refused(blank)) << function.name << ", " << argument.name.english; // a plain NaN
            }
        }
}

TEST(Limits, OfEachResultKeepAnyNumberThatIsGivenInsideThem) {
    EXPECT_EQ(reason("EFFICIENCY", {1001, 1000}), Reason::result_out_of_range);
    EXPECT_EQ(number("EFFICIENCY", {1000, 1000}), 1);
    EXPECT_EQ(reason("FIREPOWER", {3601, 1}), Reason::result_out_of_range);
    EXPECT_EQ(number("FIREPOWER", {3600, 1}), 60);
    EXPECT_EQ(reason("BURNRATE", {300.1, 1}), Reason::result_out_of_range);
}

} // namespace
} // namespace hearthcell::tests
