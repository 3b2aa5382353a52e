// Liquid water: IAPWS SR6-08(2011), tables by iapws 1.5.

#include "functions/kernels/heat.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

// IAPWS SR6-08(2011) by iapws 1.5: enthalpy to 0.0001 kJ/kg, density to 0.001 kg/m³.
struct Liquid {
    double temperature, enthalpy, density;
};
constexpr Liquid liquid_table[] = {{0, 0.0598, 999.842},    {10, 42.1167, 999.702},  {20, 84.0058, 998.207},
                                   {25, 104.9194, 997.047}, {40, 167.6162, 992.216}, {60, 251.2466, 983.195},
                                   {80, 335.0541, 971.790}, {90, 377.0631, 965.309}, {95, 398.1013, 961.887},
                                   {100, 419.1652, 958.348}};

TEST(LiquidWater, ReproducesTheCheckTableOfSr608) {
    struct Check {
        double kelvin, volume, enthalpy;
    };
    // 260, 298.15 and 375 K (the release's table, from memory), nine digits by iapws 1.5. 260 K is far below a cell's
    // range, so the kernel is asked.
    for (Check const& check : {Check{260, 1.00294026e-3, -55.8622317}, Check{298.15, 1.00296173e-3, 104.919358},
                               Check{375, 1.04492148e-3, 426.966009}}) {
        EXPECT_NEAR(kernels::liquid_enthalpy(check.kelvin - 273.15), check.enthalpy, half(1e-6)) << check.kelvin;
        EXPECT_NEAR(1 / (1000 * kernels::liquid_density(check.kelvin - 273.15)), check.volume, half(1e-11))
            << check.kelvin;
    }
}

TEST(LiquidWater, FollowsTheEnthalpyTable) {
    for (Liquid const& row : liquid_table)
        EXPECT_NEAR(kernels::liquid_enthalpy(row.temperature), row.enthalpy, half(1e-4)) << row.temperature << " °C";
}

TEST(WaterDensity, FollowsTheTable) {
    for (Liquid const& row : liquid_table)
        EXPECT_NEAR(kernels::liquid_density(row.temperature) * 1000, row.density, half(1e-3)) << row.temperature;
}

constexpr std::string_view sr608 = "IAPWS SR6-08(2011), by iapws 1.5";
PublishedTable const densities{
    {"WATERDENSITY", {10}, {0.999702, half(1e-6)}, sr608},
    {"WATERDENSITY", {20}, {0.998207, half(1e-6)}, sr608},
    {"WATERDENSITY", {25}, {0.997047, half(1e-6)}, sr608},
    {"WATERDENSITY", {40}, {0.992216, half(1e-6)}, sr608},
    {"WATERDENSITY", {60}, {0.983195, half(1e-6)}, sr608},
    {"WATERDENSITY", {80}, {0.971790, half(1e-6)}, sr608},
    {"WATERDENSITY", {95}, {0.961887, half(1e-6)}, sr608},
    {"WATERDENSITY", {100}, {0.958348, half(1e-6)}, sr608},
    {"WATERDENSITY", {0}, {Error::number}, "An empty cell counts as 0"},
};

TEST(WaterDensity, GivesTheSameInACell) {
    densities.check();
}

// Five litres: half a unit of the sixth digit of the density is 0.0025 g.
PublishedTable const masses{
    {"WATERMASS", {5, 20}, {4991.035, 0.0025}, "5 L × 0.998207 kg/L (IAPWS SR6-08), by hand"},
    {"WATERMASS", {5, 25}, {4985.235, 0.0025}, "5 L × 0.997047 kg/L (IAPWS SR6-08), by hand"},
    {"WATERMASS", {5, 80}, {4858.950, 0.0025}, "5 L × 0.971790 kg/L (IAPWS SR6-08), by hand"},
    {"WATERMASS", {1, 100}, {958.348, half(1e-3)}, "The density itself"},
    {"WATERMASS", {5, 99}, {4800, 5}, "'4.80 kg at 99 °C', IAPWS SR6-08"},
};

TEST(WaterMass, IsNotFiveKilogramsForFiveLitres) {
    masses.check();
}

// 1 kg over 75 or 80 K: half a unit of the mean heat capacity's last digit, times the rise.
constexpr std::string_view mean_capacity = "Mean heat capacity of SR6-08 × the rise, by hand";
PublishedTable const heats{
    {"WATERHEAT", {1000, 20, 95}, {4.18794 * 75, half(1e-5) * 75}, mean_capacity},
    {"WATERHEAT", {1000, 25, 100}, {4.18994 * 75, half(1e-5) * 75}, mean_capacity},
    {"WATERHEAT", {1000, 15, 90}, {4.18651 * 75, half(1e-5) * 75}, mean_capacity},
    {"WATERHEAT", {1000, 20, 100}, {4.18949 * 80, half(1e-5) * 80}, mean_capacity},
    {"WATERHEAT", {5000, 20, 95}, {1570.4775, 5 * 1e-4}, "5 × (398.1013 - 84.0058), IAPWS SR6-08"},
    {"WATERHEAT", {5000, 95, 20}, {-1570.4775, 5 * 1e-4}, "The same, cooling"},
    {"WATERHEAT", {5000, 20, 95, "ISO 19867-1"}, {1567.5, 1e-9}, "5 × 4.18 × 75, by hand; 4.18 from memory"},
    {"WATERHEAT", {5000, 20, 95, "WBT 4.2.3"}, {1569.75, 1e-9}, "5 × 4.186 × 75, by hand; 4.186 from memory"},
    {"WATERHEAT", {5000, 20, 95, "wbt 3"}, {1569.75, 1e-9}, "The same, the method in small letters"},
    {"WATERHEAT", {5000, 20, 95, "WBT 9"}, {Error::not_available}, "No such method"},
};

TEST(WaterHeat, IsTheDifferenceOfTheEnthalpiesOrTheMethodsConstant) {
    heats.check();
}

TEST(WaterHeat, FollowsTheEnthalpyTableWithinTwoHundredthsOfAPercent) {
    for (Liquid const& cold : liquid_table)
        for (Liquid const& warm : liquid_table) {
            if (cold.temperature < 0.01 || warm.temperature <= cold.temperature)
                continue;
            double const expected = 5 * (warm.enthalpy - cold.enthalpy);
            EXPECT_NEAR(number("WATERHEAT", {5000, cold.temperature, warm.temperature}), expected, 2e-4 * expected);
        }
}

TEST(WaterHeat, AddsUpOverPartsOfTheRise) {
    double const whole = number("WATERHEAT", {5000, 10, 90});
    EXPECT_NEAR(number("WATERHEAT", {5000, 10, 47.3}) + number("WATERHEAT", {5000, 47.3, 90}), whole, 1e-9);
}

} // namespace
} // namespace hearthcell::tests
