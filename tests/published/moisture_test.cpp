// Moisture of wood and what it does to its calorific value. Bare arithmetic; the values are worked by hand from the
// definitions, to the digits shown.

#include "functions/kernels/fuel.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

constexpr std::string_view by_hand = "Definition, by hand";

PublishedTable const weighings{
    {"MOISTURE", {120, 100}, {0.166667, half(1e-6)}, by_hand},
    {"MOISTURE", {120, 100, "dry"}, {0.2, 1e-15}, by_hand},
    {"MOISTURE", {170, 150, "WET", 50}, {0.166667, half(1e-6)}, "The same sample in a box of 50 g, by hand"},
    {"MOISTURE", {170, 150, "Dry", 50}, {0.2, 1e-15}, "The same sample in a box of 50 g, by hand"},
    {"MOISTURE", {100, 50, "dry"}, {1, 1e-15}, by_hand},
    {"MOISTURE", {100, 100}, {0, 0}, "Dry already"},
    {"MOISTURE", {100, 120}, {Error::number}, "Wood does not gain mass in an oven"},
    {"MOISTURE", {120, 100, "wet", 100}, {Error::number}, "A box as heavy as box and sample"},
    {"MOISTURE", {120, 100, "damp"}, {Error::not_available}, "No such basis"},
};

TEST(Moisture, NeedsASampleInTheContainer) {
    EXPECT_EQ(reason("MOISTURE", {120, 100, "wet", 100}), Reason::container_above_dry);
    EXPECT_EQ(reason("MOISTURE", {100, 100, "wet", 100}), Reason::container_above_dry);
}

TEST(Moisture, IsTheShareOfWaterOnEitherBasis) {
    weighings.check();
}

PublishedTable const bases{
    {"WETBASIS", {0.10}, {0.090909, half(1e-6)}, by_hand},
    {"WETBASIS", {0.15}, {0.130435, half(1e-6)}, by_hand},
    {"WETBASIS", {0.20}, {0.166667, half(1e-6)}, by_hand},
    {"WETBASIS", {0.25}, {0.2, 1e-15}, by_hand},
    {"WETBASIS", {0.50}, {0.333333, half(1e-6)}, by_hand},
    {"WETBASIS", {1.00}, {0.5, 1e-15}, by_hand},
    {"DRYBASIS", {0.10}, {0.111111, half(1e-6)}, by_hand},
    {"DRYBASIS", {0.20}, {0.25, 1e-15}, by_hand},
    {"DRYBASIS", {0.50}, {1, 1e-15}, by_hand},
};

TEST(MoistureBases, ConvertIntoEachOther) {
    bases.check();
}

PublishedTable const dry_masses{
    {"DRYMASS", {600, 0.12}, {528, 1e-9}, by_hand},
    {"DRYMASS", {1000, 0.25}, {750, 1e-9}, by_hand},
    {"DRYMASS", {450, 0}, {450, 0}, "Dry already"},
};

TEST(DryMass, IsWhatTheWaterLeaves) {
    dry_masses.check();
}

// ISO 18125:2017 in MJ/kg (from memory, re-derived): q (1 - M) - 2.443 M, by hand to 0.0001 MJ/kg.
constexpr std::string_view iso_18125 = "ISO 18125 form, by hand";
PublishedTable const as_fired{
    {"NETASFIRED", {19.1, 0.10}, {16.9457, half(1e-4)}, iso_18125},
    // 16.51484, and 15.86855 that is exactly between two last digits
    {"NETASFIRED", {19.1, 0.12}, {16.5148, half(1e-4)}, iso_18125},
    {"NETASFIRED", {19.1, 0.15}, {15.86855, 1e-9}, iso_18125},
    {"NETASFIRED", {19.1, 0.20}, {14.7914, half(1e-4)}, iso_18125},
    {"NETASFIRED", {19.1, 0.25}, {13.71425, 1e-9}, iso_18125},
    {"NETASFIRED", {19.1, 0.30}, {12.6371, half(1e-4)}, iso_18125},
    {"NETASFIRED", {19.1, 0.50}, {8.3285, half(1e-4)}, iso_18125},
    {"NETASFIRED", {18.5, 0.12}, {15.98684, half(1e-5)}, iso_18125},
    {"NETASFIRED", {18.5, 0.20}, {14.3114, half(1e-4)}, iso_18125},
    {"NETASFIRED", {18.5, 12}, {Error::number}, "12 is 1200 %"},
};

TEST(NetAsFired, FollowsIso18125) {
    as_fired.check();
}

TEST(NetAsFired, IsNothingAtEightyNinePercentOfWater) {
    // Zero at 88.66 % for 19.1 MJ/kg, by hand; such wood is beyond a cell's range, so the kernel is asked.
    EXPECT_GT(kernels::net_as_fired(19.1, 0.88655), 0);
    EXPECT_LT(kernels::net_as_fired(19.1, 0.88665), 0);
}

TEST(NetAsFired, AgreesWithAHeatingValueTableOfTheTrade) {
    struct Wood {
        double kilowatt_hours_at_15, kilowatt_hours_at_30;
    };
    // A wood-boiler maker's table in kWh/kg to 0.01: spruce, oak, beech. Both columns are rounded, and half a unit of
    // the first becomes 0.7/0.85 of it in the second.
    for (Wood const& wood : {Wood{4.49, 3.58}, Wood{4.10, 3.25}, Wood{4.13, 3.28}}) {
        double const dry = (wood.kilowatt_hours_at_15 * 3.6 + 2.443 * 0.15) / 0.85;
        EXPECT_NEAR(number("NETASFIRED", {dry, 0.30}) / 3.6, wood.kilowatt_hours_at_30, half(0.01) * (1 + 0.7 / 0.85));
    }
}

TEST(NetAsFired, FallsByMoreThanOnePercentForEachPointOfMoisture) {
    // Rule of thumb: a point of moisture costs about 0.215 MJ/kg, 1.1 to 1.3 % in air-dry wood.
    double const lost = number("NETASFIRED", {19.1, 0.10}) - number("NETASFIRED", {19.1, 0.11});
    EXPECT_NEAR(lost, 0.215, half(1e-3));
    EXPECT_GT(lost / number("NETASFIRED", {19.1, 0.10}), 0.011);
    EXPECT_LT(lost / number("NETASFIRED", {19.1, 0.10}), 0.013);
}

PublishedTable const net_values{
    {"NETFROMGROSS", {20.5, 0.063, 0.421}, {19.12946, half(1e-5)}, "ISO 18125 form, by hand"},
    {"NETFROMGROSS", {20, 0.062, 0.441}, {18.64908, half(1e-5)}, "20 - 1.31564 - 0.03528, by hand"},
    {"NETFROMGROSS", {20}, {18.64908, half(1e-5)}, "Broad-leaf wood is the default: the same"},
    {"NETFROMGROSS", {34.3, 0.03, 0.05}, {33.6594, half(1e-5)}, "Char: 34.3 - 0.6366 - 0.004, by hand"},
    {"NETFROMGROSS", {20, 6.2}, {Error::number}, "6.2 is 620 %"},
};

TEST(NetFromGross, FollowsIso18125) {
    net_values.check();
}

TEST(NetFromGross, HasACoefficientOfHydrogenThatFollowsFromTheLatentHeat) {
    // 9 g of water for each g of hydrogen at 2.443 MJ/kg, less 0.6149 MJ/kg from constant volume to constant pressure.
    double const each = (number("NETFROMGROSS", {20, 0, 0}) - number("NETFROMGROSS", {20, 0.1, 0})) / 0.1;
    EXPECT_NEAR(each, 2.443 * 18.0153 / 2.01588 - 0.6149, 0.01);
}

} // namespace
} // namespace hearthcell::tests
