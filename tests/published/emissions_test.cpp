// Gases and particles. Values from outside: conversion factors and molar masses of handbooks, numpy, and atoms, which
// are neither made nor lost.

#include "functions/catalogue/carbon_shares.hpp"
#include "functions/catalogue/gases.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <array>

namespace hearthcell::tests {
namespace {

// It rounds to hundredths, and takes 24.45 L for a mole: 0.063 % less.
constexpr std::string_view niosh = "NIOSH Pocket Guide, conversion factors, from memory";
constexpr double rounded_there = half(0.01) + 0.00063 * 2.62;
PublishedTable const gas_concentrations{
    {"GASCONCENTRATION", {1, "CO", 25, 1013.25}, {1.15, rounded_there}, niosh},
    {"GASCONCENTRATION", {1, "CO2", 25, 1013.25}, {1.80, rounded_there}, niosh},
    {"GASCONCENTRATION", {1, "NO", 25, 1013.25}, {1.23, rounded_there}, niosh},
    {"GASCONCENTRATION", {1, "NO2", 25, 1013.25}, {1.88, rounded_there}, niosh},
    {"GASCONCENTRATION", {1, "SO2", 25, 1013.25}, {2.62, rounded_there}, niosh},
    {"GASCONCENTRATION", {1000, 24.4654, 25, 1013.25}, {1000, 0.01}, "A mole of ideal gas has 24.4654 L there, CODATA"},
    {"GASCONCENTRATION", {1000, 22.413970, 0, 1013.25}, {1000, 1e-4}, "A mole has 22.413970 L at 0 °C, CODATA 2018"},
    {"GASCONCENTRATION", {35, "CO", 22, 820.77}, {32.78881, half(1e-5)}, "Ideal gas, computed with python"},
    {"GASCONCENTRATION", {30, "sulfur dioxide", 20, 900}, {70.95991, half(1e-5)}, "Ideal gas, computed with python"},
    {"GASCONCENTRATION", {35, "smoke", 25, 1013.25}, {Error::not_available}, "No such gas"},
};

TEST(GasConcentration, FollowsFromTheVolumeOfAMole) {
    gas_concentrations.check();
}

TEST(GasConcentration, HasTheMolarMassesOfHandbooks) {
    // NIST Chemistry WebBook, from memory; it rounds older atomic weights.
    struct Mass {
        char const* gas;
        double molar;
    };
    constexpr Mass masses[] = {{"CO", 28.0101}, {"CO2", 44.0095}, {"CH4", 16.0425},
                               {"NO", 30.0061}, {"NO2", 46.0055}, {"SO2", 64.064}};
    EXPECT_EQ(std::size(masses), std::size(gas_rows));
    for (auto const& [gas, molar] : masses)
        EXPECT_NEAR(find_name(gas_table, gas).first->value, molar, 1e-4 * molar) << gas;
}

TEST(GasConcentration, KnowsAGasInEveryLanguageAndLetterCase) {
    for (char const* name : {"carbon monoxide", "co", "Monoxyde de carbone", "MONÓXIDO DE CARBONO", "Kaboni Monoksidi"})
        EXPECT_EQ(number("GASCONCENTRATION", {35, name, 25, 1013.25}),
                  number("GASCONCENTRATION", {35, "CO", 25, 1013.25}))
            << name;
}

PublishedTable const carbons{
    {"FUELCARBON", {528, 0.5, 50, 0.85}, {221.5, 1e-9}, "0.6 kg at 12 %, 50 g of char: 264 - 42.5, by hand"},
    {"FUELCARBON", {1000}, {500, 1e-9}, "Half of it, by hand"},
    {"FUELCARBON", {1000, 0.48, -20, 0.9}, {498, 1e-9}, "480 + 18, by hand"},
    {"FUELCARBON", {1000, "cáscara de coco"}, {502, 1e-9}, "Fuel 74 (1995) 1812-1822: 50.2 % of carbon"},
    {"FUELCARBON", {50, 0.5, 30}, {Error::number}, "25 g of carbon, and 25.5 in the char"},
};

TEST(FuelCarbon, IsThatOfTheFuelLessThatOfTheChar) {
    carbons.check();
}

TEST(FuelCarbon, KnowsTheSharesOfCompoundsByTheirFormula) {
    // C2H6O; propane to butane, C3H8 to C4H10, of which bottled gas is made; C10H22 to C14H30, of which kerosene is.
    auto const share = [](double carbon, double hydrogen, double oxygen) {
        double const mass = 12.011 * carbon;
        return mass / (mass + 1.008 * hydrogen + 15.999 * oxygen);
    };
    auto const listed = [](char const* fuel) { return find_name(carbon_table, fuel).first->value; };
    EXPECT_NEAR(listed("ethanol"), share(2, 6, 1), 5e-5);
    EXPECT_NEAR(listed("LPG"), share(3, 8, 0), 0.01); // a default of inventories, within a hundredth
    EXPECT_NEAR(listed("kerosene"), share(12, 26, 0), 0.015);
}

PublishedTable const balances{
    {"CARBONBALANCE",
     {221.5, 100000, 5000, 0},
     {772.95, 0.01},
     "C/(1 + r) × 44.0095/12.011 for r 0.05; today's atomic weights give 0.0088 g less"},
    {"CARBONBALANCE", {221.5, 100000, 5000, 0, 0, "CO"}, {24.597, half(1e-3)}, "C r/(1 + r) × 28.010/12.011, by hand"},
    {"CARBONBALANCE",
     {221.5, 100000, 5000, 0, 0, "modified combustion efficiency"},
     {0.95238, half(1e-5)},
     "1/1.05, by hand"},
    {"CARBONBALANCE", {120.11, 2000, 0, 1000}, {440.09, 1e-9}, "Ten moles of carbon dioxide, by hand"},
    {"CARBONBALANCE", {120.11, 2000, 1000, 1000, 0, "CO"}, {140.05, 1e-9}, "Five moles of carbon monoxide, by hand"},
    {"CARBONBALANCE", {120.11, 1000, 100, 1000}, {Error::number}, "No more than the background"},
    {"CARBONBALANCE", {120.11, 2000, 100, 1000, 101}, {Error::number}, "Less than the background"},
};

TEST(CarbonBalance, SharesTheCarbonByWhatStandsAboveTheBackground) {
    balances.check();
}

TEST(CarbonBalance, LosesNoAtomOfCarbon) {
    for (double const carbon : {1.0, 189.6, 31415.0})
        for (double monoxide = 1; monoxide < 20000; monoxide *= 1.7) {
            double const dioxide_mass = number("CARBONBALANCE", {carbon, 41000, monoxide, 430, 0.5});
            double const monoxide_mass = number("CARBONBALANCE", {carbon, 41000, monoxide, 430, 0.5, "CO"});
            EXPECT_NEAR(dioxide_mass * 12.011 / 44.009 + monoxide_mass * 12.011 / 28.010, carbon, 1e-14 * carbon);
        }
}

TEST(CarbonBalance, TakesColumnsByTheirMeansAndOnlyWholeRows) {
    constexpr std::array dioxide{8200.0, blank, 9800.0, 12000.0, 9000.0};
    constexpr std::array monoxide{350.0, 900.0, 420.0, blank, 370.0};
    constexpr std::array background{440.0, blank, 460.0};
    constexpr std::array none{blank, blank, blank, blank, blank};
    for (char const* part : {"CO2", "CO", "modified combustion efficiency"})
        EXPECT_NEAR(number("CARBONBALANCE", {189.6, dioxide, monoxide, background, 2, part}),
                    number("CARBONBALANCE", {189.6, 9000, 380, 450, 2, part}), 1e-9);
    EXPECT_EQ(reason("CARBONBALANCE", {189.6, dioxide, background, 450}), Reason::columns_differ);
    EXPECT_EQ(reason("CARBONBALANCE", {189.6, dioxide, none, 450}), Reason::no_rows);
    EXPECT_EQ(reason("CARBONBALANCE", {189.6, dioxide, monoxide, none}), Reason::no_rows);
    EXPECT_EQ(number("CARBONBALANCE", {189.6, dioxide, monoxide, 450, none}),
              number("CARBONBALANCE", {189.6, dioxide, monoxide, 450}));
}

constexpr std::array minutes{0.0, 10.0, 20.0, 30.0}, steady{50.0, 50.0, 50.0, 50.0}, rising{0.0, 30.0, 60.0, 90.0};
constexpr std::array flows{2.0, 4.0, 2.0, 4.0};
constexpr std::array half_empty{50.0, blank, 50.0, 50.0};
constexpr std::array short_column{2.0, 4.0};
constexpr std::array gap_of_flow{4.0, blank, 4.0, 4.0};
PublishedTable const hoods{
    {"HOODEMISSION", {minutes, steady, 4}, {6, 1e-12}, "50 mg/m³ × 4 m³/min × 30 min, by hand"},
    {"HOODEMISSION", {minutes, steady, 4, 20}, {3.6, 1e-12}, "30 × 4 × 30 mg, by hand"},
    {"HOODEMISSION", {minutes, rising, 4}, {5.4, 1e-12}, "A triangle: 90 × 4 × 30/2 mg, by hand"},
    {"HOODEMISSION", {minutes, steady, flows}, {4.5, 1e-12}, "50 × 3 × 30 mg, by hand"},
    {"HOODEMISSION", {minutes, rising, 4, omitted, 5, 15}, {1.2, 1e-12}, "30 × 4 × 10 mg, by hand"},
    {"HOODEMISSION", {minutes, half_empty, 4}, {6, 1e-12}, "An empty cell is no reading"},
    {"HOODEMISSION", {minutes, steady, 4, 60}, {Error::number}, "Below the background"},
    {"HOODEMISSION", {minutes, steady, gap_of_flow}, {6, 1e-12}, "Without a flow it is no reading either"},
    {"HOODEMISSION", {minutes, steady, short_column}, {Error::value}, "Columns of two lengths"},
    {"HOODEMISSION", {minutes, short_column, 4}, {Error::value}, "Columns of two lengths"},
    {"HOODEMISSION", {minutes, steady, 4, 0, 5, 50}, {Error::not_available}, "Beyond the log"},
};

TEST(HoodEmission, IsConcentrationByFlowSummedOverTime) {
    hoods.check();
}

PublishedTable const filters{
    {"FILTEREMISSION", {2, 6, 20}, {600, 1e-12}, "2 mg × 6000/20, by hand"},
    {"FILTEREMISSION", {2, 6, 20, 0.5}, {450, 1e-12}, "1.5 mg × 6000/20, by hand"},
    {"FILTEREMISSION", {2, 6, 20, -0.5}, {750, 1e-12}, "2.5 mg × 6000/20, by hand"},
    {"FILTEREMISSION", {2, 6, 20, 2}, {Error::number}, "No more than the blank"},
    {"FILTEREMISSION", {2, 0.5, 500}, {Error::number}, "All that passes the duct"},
};

TEST(FilterEmission, IsWhatTheSampleStandsFor) {
    filters.check();
}

PublishedTable const ratios_of_emission{
    {"EMISSIONFACTOR", {30, 600}, {50, 1e-12}, "30 g of 0.6 kg, by hand"},
    {"EMISSIONFACTOR", {24.597, 528}, {46.58523, half(1e-5)}, "By hand"},
    {"EMISSIONFACTOR", {1200, 600}, {2000, 1e-12}, "By hand"},
    {"EMISSIONPERENERGY", {24.597, 2137.5}, {11.507, half(1e-3)}, "g/MJ, by hand"},
    {"EMISSIONPERENERGY", {30, 1500}, {20, 1e-12}, "By hand"},
    {"EMISSIONPERENERGY", {300, 1500}, {200, 1e-12}, "By hand"},
    {"EMISSIONRATE", {30, 45}, {0.6666667, half(1e-7)}, "By hand"},
    {"EMISSIONRATE", {300, 60}, {5, 1e-12}, "By hand"},
    {"EMISSIONRATE", {300, 0.5}, {600, 1e-12}, "By hand"},
    {"EMISSIONRATE", {300, 0.0208}, {Error::number}, "A Calc time"},
};

TEST(Emission, IsToldByFuelByEnergyAndByMinute) {
    ratios_of_emission.check();
}

} // namespace
} // namespace hearthcell::tests
