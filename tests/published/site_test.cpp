// Air pressure and boiling point of a place. ISO 2533:1975 and IAPWS R7-97(2012) through other people's code:
// fluids 1.0.22 for the atmosphere, iapws 1.5 for the saturation line. Numbers of tables are from memory.

#include "functions/kernels/saturation.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace hearthcell::tests {
namespace {

/// The geometric altitude that a geopotential one in m stands for, z = r H/(r - H).
double geometric(double geopotential) {
    return 6356766 * geopotential / (6356766 - geopotential);
}

// US Standard Atmosphere 1976 and ISO 2533 differ in the gas constant, 287.05307 against 287.05287 J/(kg K): by
// 7.0e-7 of the exponent, so by less than 5e-7 of the pressure up to 5000 m.
constexpr double two_gas_constants = 5e-7 * 1013.25;
constexpr std::string_view fluids = "ISO 2533 on the geometric altitude, by fluids 1.0.22 (US Standard Atmosphere)";

PublishedTable const geometric_altitudes{
    {"AIRPRESSURE", {-430}, {1065.9876, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {0}, {1013.25, half(1e-4)}, fluids},
    {"AIRPRESSURE", {500}, {954.6129, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {1000}, {898.7629, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {1500}, {845.5968, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {2000}, {795.0142, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {2500}, {746.9176, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {3000}, {701.2116, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {3500}, {657.8039, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {4000}, {616.6044, half(1e-4) + two_gas_constants}, fluids},
    {"AIRPRESSURE", {5000}, {540.4829, half(1e-4) + two_gas_constants}, fluids},
};

TEST(AirPressure, FollowsTheStandardAtmosphereOnTheGeometricAltitudesOfAMap) {
    geometric_altitudes.check();
}

TEST(AirPressure, FollowsIso2533OnGeopotentialAltitudes) {
    struct Level {
        double geopotential, pascal;
    };
    // The equation of ISO 2533 with its own constants, to 0.01 Pa.
    constexpr Level levels[] = {{-430, 106598.40}, {0, 101325.00},   {500, 95460.84},  {1000, 89874.56},
                                {1500, 84555.99},  {2000, 79495.20}, {2500, 74682.52}, {3000, 70108.53},
                                {3500, 65764.06},  {4000, 61640.21}, {5000, 54019.89}};
    for (Level const& level : levels)
        EXPECT_NEAR(number("AIRPRESSURE", {geometric(level.geopotential)}) * 100, level.pascal, half(0.01))
            << level.geopotential << " geopotential metres";
}

TEST(AirPressure, AgreesWithTheHandbookFormOfAshrae) {
    struct Level {
        double geopotential, pascal;
    };
    // p = 101325 (1 - 2.25577e-5 z)^5.2559, by psychrolib 1.1.1; its rounded constants move it by 0.3 Pa at 5000 m.
    for (Level const& level : {Level{-430, 106598.426}, Level{2000, 79495.124}, Level{5000, 54019.751}})
        EXPECT_NEAR(number("AIRPRESSURE", {geometric(level.geopotential)}) * 100, level.pascal, 0.3);
}

// The altimeter form of WMO-No. 8 (from memory), worked by hand with its own constants 0.190263 and 8.417286e-5.
// Re-derived, the latter is 8.417279e-5: 0.0002 hPa at 2000 m.
struct Altimeter {
    double sea_level, geopotential, station, printed_to;
};
constexpr Altimeter altimeter[] = {{1013.25, 1500, 845.560, 0.001},
                                   {1020, 1500, 851.390, 0.001},
                                   {1005, 2000, 788.174, 0.001},
                                   {1013.25, 3000, 701.085, 0.001},
                                   {1015, -430, 1067.81, 0.01}};

TEST(AirPressure, ShiftsToTheDaysSeaLevelPressureAsAnAltimeterDoes) {
    for (Altimeter const& row : altimeter)
        EXPECT_NEAR(number("AIRPRESSURE", {geometric(row.geopotential), row.sea_level}), row.station,
                    half(row.printed_to) + 0.0002)
            << row.sea_level << " hPa, " << row.geopotential << " geopotential metres";
}

constexpr std::string_view if97_at_altitude =
    "IAPWS-IF97 at the pressure of that geometric altitude, by fluids and iapws";
PublishedTable const boiling_points{
    {"BOILINGPOINT", {-430}, {101.402, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {0}, {99.974, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {500}, {98.313, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {1000}, {96.649, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {1500}, {94.984, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {2000}, {93.317, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {2500}, {91.648, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {3000}, {89.977, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {3500}, {88.304, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {4000}, {86.628, half(1e-3)}, if97_at_altitude},
    {"BOILINGPOINT", {5000}, {83.268, half(1e-3)}, if97_at_altitude},
};

TEST(BoilingPoint, FollowsTheSteamTableFromBelowSeaLevelTo5000Metres) {
    boiling_points.check();
}

TEST(BoilingPoint, FollowsTheDaysSeaLevelPressure) {
    struct Day {
        double sea_level, geopotential, boils_at;
    };
    // IAPWS-IF97 at the altimeter form's pressure (itself from memory), to 0.001 °C.
    for (Day const& day : {Day{1020, 1500, 95.170}, Day{1005, 2000, 93.085}, Day{1015, -430, 101.450}})
        EXPECT_NEAR(number("BOILINGPOINT", {geometric(day.geopotential), day.sea_level}), day.boils_at, half(1e-3));
}

TEST(BoilingPoint, StaysNearTheRuleOfThumbOfOneKelvinIn300Metres) {
    for (int altitude = -430; altitude <= 5000; altitude += 10)
        EXPECT_NEAR(number("BOILINGPOINT", {double(altitude)}), 100 - altitude / 300.0, 0.07) << altitude << " m";
}

constexpr std::string_view if97 = "IAPWS R7-97(2012), equation 31, by iapws 1.5";
PublishedTable const boiling_points_at{
    {"BOILINGPOINTAT", {1000}, {99.605919, half(1e-6)}, "IAPWS R7-97(2012), table 36: 372.755919 K at 0.1 MPa"},
    {"BOILINGPOINTAT", {1013.25}, {99.97430, half(1e-5)}, if97},
    {"BOILINGPOINTAT", {845.56}, {94.983, half(1e-3)}, if97},
    {"BOILINGPOINTAT", {500}, {81.316736, half(1e-6)}, if97},
    {"BOILINGPOINTAT", {1066}, {101.402452, half(1e-6)}, if97},
    {"BOILINGPOINTAT", {990}, {99.32521, half(1e-5)}, if97},
    {"BOILINGPOINTAT", {1030}, {100.43432, half(1e-5)}, if97},
    {"BOILINGPOINTAT", {845.56, 1500}, {94.983, half(1e-3)}, "The same with an altitude that goes with it"},
    {"BOILINGPOINTAT", {1013, 2000}, {Error::number}, "Reduced to sea level this were beyond any weather"},
};

TEST(BoilingPointAt, FollowsTheSteamTable) {
    boiling_points_at.check();
}

TEST(BoilingPointAt, ReproducesTheCheckTableOfEquation31) {
    // IAPWS R7-97(2012), table 36, nine digits. 10 MPa is far beyond a cell's range, so the kernel is asked.
    EXPECT_NEAR(kernels::saturation::kelvin(0.1), 372.755919, half(1e-6));
    EXPECT_NEAR(kernels::saturation::kelvin(1.0), 453.035632, half(1e-6));
    EXPECT_NEAR(kernels::saturation::kelvin(10.0), 584.149488, half(1e-6));
}

TEST(BoilingPointAt, RisesWithThePressureAsTheSteamTableDoes) {
    Numeric const& numeric = std::get<Numeric>(function_named("BOILINGPOINTAT").kernel);
    struct Slope {
        double hectopascal, kelvin_per_kilopascal;
    };
    // IAPWS-IF97, difference quotients to 0.001 K/kPa.
    for (Slope const& slope : {Slope{1013, 0.277}, Slope{850, 0.320}}) {
        double const inputs[] = {slope.hectopascal, absent};
        double partials[2];
        numeric.gradient(inputs, nullptr, partials);
        EXPECT_NEAR(partials[0] * 10, slope.kelvin_per_kilopascal, half(1e-3));
    }
}

// Computed apart; the boiling points with iapws 1.5.3, region 4.
TEST(AirPressure, IsReducedWithTheAirsOwnTemperatureWhereThatIsGiven) {
    struct Day {
        double sea_level, altitude, air, station, boils_at;
    };
    for (Day const& day : {Day{1013.25, 1660, 19, 837.458, 94.7216}, Day{1013.25, 2355, 17, 773.447, 92.5795},
                           Day{1013.25, 3640, 8, 662.954, 88.5069}, Day{1018, 1900, 22, 820.770, 94.1767},
                           Day{1008, 450, -5, 952.135, 98.2406}}) {
        EXPECT_NEAR(number("AIRPRESSURE", {day.altitude, day.sea_level, day.air}), day.station, half(1e-3));
        EXPECT_NEAR(number("BOILINGPOINT", {day.altitude, day.sea_level, day.air}), day.boils_at, half(1e-4));
    }
    // psychrolib 1.1.1: 101226.5 Pa at 105 m and 17.07 °C go with 102484.0 Pa at sea level.
    EXPECT_NEAR(number("AIRPRESSURE", {105, 1024.84, 17.07}), 1012.265, 0.02);
    // At 15 °C less the lapse to the place both are the same column, but that its mean stands for its slope.
    EXPECT_NEAR(number("AIRPRESSURE", {1000, 1013.25, 8.5}), number("AIRPRESSURE", {1000}), 0.1);
}

TEST(BoilingPointAt, RefusesWhatTheWeatherCannotGive) {
    // 870 and 1085 hPa are about the lowest and highest sea-level pressures on record (from memory).
    for (double const altitude : {0.0, 500.0, 1500.0, 3000.0, 5000.0}) {
        double const lowest = number("AIRPRESSURE", {altitude, 870}), highest = number("AIRPRESSURE", {altitude, 1085});
        number("BOILINGPOINTAT", {lowest + 0.01, altitude});
        number("BOILINGPOINTAT", {highest - 0.01, altitude});
        EXPECT_EQ(reason("BOILINGPOINTAT", {lowest - 0.01, altitude}), Reason::sea_level_pressure_at_station);
        EXPECT_EQ(reason("BOILINGPOINTAT", {highest + 0.01, altitude}), Reason::sea_level_pressure_at_station);
    }
}

} // namespace
} // namespace hearthcell::tests
