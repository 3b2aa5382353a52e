// What a test says of the stove. Mostly bare arithmetic: such rows are worked by hand, and say so.

#include "functions/kernels/performance.hpp"
#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

PublishedTable const efficiencies{
    {"EFFICIENCY", {2137.5554, 9592.104}, {0.2228453, half(1e-7)}, "Check row of the methods"},
    {"EFFICIENCY", {2137.5554, 9592.104, 1475}, {0.2633397, half(1e-7)}, "Check row of the methods"},
    {"EFFICIENCY", {1000, 5000}, {0.2, 1e-15}, "By hand"},
    {"EFFICIENCY", {1000, 5000, 1000, 1000}, {0.2, 1e-15}, "Char and fan cancel, by hand"},
    {"EFFICIENCY", {1000, 5000, 5000}, {Error::number}, "The char holds all the energy"},
    {"EFFICIENCY", {5000, 1000}, {Error::number}, "An efficiency above 1"},
};

TEST(Efficiency, IsUsefulHeatByEnergySpent) {
    efficiencies.check();
}

TEST(Efficiency, WithCharFollowsFromTheTwoRatiosOfIso19867) {
    // With char credit e1/(1 - e2): e1 without the credit, e2 the char's share of the fuel's energy (from memory).
    double const without = number("EFFICIENCY", {2137.5554, 9592.104}), share = 1475 / 9592.104;
    EXPECT_NEAR(number("EFFICIENCY", {2137.5554, 9592.104, 1475}), without / (1 - share), 1e-15);
}

PublishedTable const raw_readings{
    {"BENCHEFFICIENCY",
     {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5},
     {0.2228453, half(1e-7)},
     "Check row of the methods, every default taken"},
    {"BENCHEFFICIENCY",
     {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, omitted, 50},
     {0.2633397, half(1e-7)},
     "Check row of the methods"},
    {"BENCHEFFICIENCY",
     {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, omitted, omitted, omitted, omitted, omitted, 630},
     {0.2091, half(1e-4)},
     "15 g of wax, 630 kJ, turn 22.28 % into 20.91 %: 2137.5554/10222.104"},
    {"BENCHEFFICIENCY",
     {800, 5800, 20, 1000, 94.983, 5550, 400, 0.12, 18.5, "WBT 4.2.3", 50, 29.5, 94.983, 20},
     {0.2632488, half(1e-7)},
     "Check row of the methods; boiling point and air are the defaults"},
    {"BENCHEFFICIENCY", {800, 820, 20, 1000, 95, 815, 400, 0.12, 18.5}, {Error::number}, "20 g of water"},
    {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5900, 400, 0.12, 18.5}, {Error::number}, "The pot gained mass"},
    {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 700, 400, 0.12, 18.5}, {Error::number}, "Lighter than the pot"},
    {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 1100, 0.12, 18.5}, {Error::number}, "More left than laid out"},
    {"BENCHEFFICIENCY", {800, 5800, 20, 1000, 95, 5550, 1000, 0.12, 18.5}, {Error::number}, "Nothing burned"},
};

TEST(BenchEfficiency, FollowsFromOneRunsRawReadings) {
    raw_readings.check();
}

TEST(BenchEfficiency, TakesWeighingsAtTheEdgeOfWhatCanBe) {
    auto const why = [](double start, double end, double laid, double left) {
        Outcome const outcome = called("BENCHEFFICIENCY", {800, start, 20, laid, 95, end, left, 0.12, 18.5});
        Failure const* const failure = std::get_if<Failure>(&outcome);
        return failure != nullptr ? failure->reason : Reason::none;
    };
    EXPECT_EQ(why(850, 845, 1000, 400), Reason::none); // 50 g of water
    EXPECT_EQ(why(849.9, 845, 1000, 400), Reason::pot_and_water_too_light);
    EXPECT_EQ(why(5800, 5800, 1000, 400), Reason::none); // nothing evaporated
    EXPECT_EQ(why(5800, 5800.1, 1000, 400), Reason::pot_gained_mass);
    EXPECT_EQ(why(5800, 800, 3000, 400), Reason::none); // all did
    EXPECT_EQ(why(5800, 799.9, 3000, 400), Reason::pot_lost_mass);
    EXPECT_EQ(why(5800, 5550, 1000, 1000), Reason::nothing_burned);
    EXPECT_EQ(why(5800, 5550, 1000, 1000.1), Reason::more_left_than_laid);
}

TEST(Efficiency, IsNoneWhereNothingWasSpent) {
    EXPECT_EQ(reason("EFFICIENCY", {1000, 5000, 5000}), Reason::char_exceeds_fuel);
    EXPECT_EQ(reason("EFFICIENCY", {1000, 5000, 4999.5}), Reason::result_out_of_range);
}

PublishedTable const powers{
    {"FIREPOWER", {9592.104, 30}, {5.328947, half(1e-6)}, "9592.104/1800, by hand"},
    {"FIREPOWER", {9592.104, 30, 1475}, {4.509502, half(1e-6)}, "8117.104/1800, by hand"},
    {"FIREPOWER", {9592.104, 30, 9592.104}, {Error::number}, "More char than fuel"},
    {"FIREPOWER", {18000, 60}, {5, 1e-15}, "By hand"},
    {"FIREPOWER", {600, 10}, {1, 1e-15}, "By hand"},
    {"FIREPOWER", {9592.104, 30.0 / 1440}, {Error::number}, "A Calc time, a part of a day"},
    {"FIREPOWER", {9592.104, 2}, {Error::number}, "80 kW"},
    {"COOKINGPOWER", {2137.5554, 30}, {1.187531, half(1e-6)}, "2137.5554/1800, by hand"},
    {"COOKINGPOWER", {1800, 30}, {1, 1e-15}, "By hand"},
    {"COOKINGPOWER", {3600, 30}, {2, 1e-15}, "By hand"},
};

TEST(Power, IsEnergyByTime) {
    powers.check();
}

PublishedTable const burn_rates{
    {"BURNRATE", {528, 30}, {17.6, 1e-14}, "By hand"},
    {"BURNRATE", {600, 40}, {15, 1e-14}, "By hand"},
    {"BURNRATE", {300, 1}, {300, 1e-12}, "By hand: the most there can be"},
    {"BURNRATE", {301, 1}, {Error::number}, "More than 300 g/min"},
};

TEST(BurnRate, IsDryMassByTime) {
    burn_rates.check();
}

PublishedTable const specific_fuels{
    {"SPECIFICFUEL", {438.7624, 4750}, {92.37103, half(1e-5)}, "438.7624/4.75, by hand"},
    {"SPECIFICFUEL", {500, 5000}, {100, 1e-12}, "By hand"},
    {"SPECIFICFUEL", {500, 5000, omitted, 20, 80, omitted, 75}, {125, 1e-12}, "100 × 75/60, by hand"},
    {"SPECIFICFUEL", {500, 5000, "WBT 4.2.3", 20, 80, 95}, {125, 1e-12}, "100/(60/75), by hand"},
    {"SPECIFICFUEL", {500, 5000, "WBT 4.2.3", 20, 80, 95, 75}, {156.25, 1e-12}, "100/(60/75) × 75/60, by hand"},
    {"SPECIFICFUEL", {500, 5000, "WBT 3", 20, 80, 95, 75}, {125, 1e-12}, "100 × 75/60, by hand"},
    {"SPECIFICFUEL",
     {436.3337, 4150, "WBT 4.2.3"},
     {105.1406, half(1e-4) + 1.3e-5},
     "A simmer, by hand from rounded dry wood"},
    {"SPECIFICFUEL", {500, 5000, "WBT 4.2.3", 20, 80}, {Error::number}, "This method needs the boiling point"},
    {"SPECIFICFUEL", {500, 5000, "WBT 4.2.3", 95, 96, 94}, {Error::number}, "Boiling below the start"},
    {"SPECIFICFUEL", {500, 5000, omitted, omitted, omitted, omitted, 75}, {Error::number}, "A rise without readings"},
    {"SPECIFICFUEL", {500, 5000, omitted, 80, 20, omitted, 75}, {Error::number}, "The water cooled"},
};

TEST(SpecificFuel, NeedsARise) {
    EXPECT_EQ(reason("SPECIFICFUEL", {500, 5000, omitted, 80, 80, omitted, 75}), Reason::end_not_above_start);
    EXPECT_EQ(reason("SPECIFICFUEL", {500, 5000, "WBT 4.2.3", 95, 96, 95}), Reason::boiling_point_not_above_start);
    EXPECT_EQ(reason("SPECIFICFUEL", {500, 5000, omitted, 20}), Reason::temperatures_missing);
    EXPECT_EQ(reason("SPECIFICFUEL", {500, 5000, omitted, omitted, 80}), Reason::temperatures_missing);
    EXPECT_EQ(reason("SPECIFICFUEL", {500, 5000, omitted, omitted, omitted, 95}), Reason::temperatures_missing);
}

TEST(SpecificFuel, IsDryWoodByWater) {
    specific_fuels.check();
}

PublishedTable const simmers{
    {"SIMMERENERGY", {436.3337, 18.5, 4150, 45}, {0.0432245, half(1e-7)}, "By hand"},
    {"SIMMERENERGY", {500, 20, 5000, 40}, {0.05, 1e-15}, "0.5 kg × 20/(5 × 40), by hand"},
    {"SIMMERENERGY", {100, 18, 2000, 45}, {0.02, 1e-15}, "0.1 kg × 18/(2 × 45), by hand"},
};

TEST(SimmerEnergy, IsFuelByLitreAndMinute) {
    simmers.check();
}

PublishedTable const ratios{
    {"TURNDOWN", {6, 2.4}, {2.5, 1e-15}, "By hand"},
    {"TURNDOWN", {5, 5}, {1, 0}, "By hand"},
    {"TURNDOWN", {4.5, 1.5}, {3, 1e-15}, "By hand"},
    {"TURNDOWN", {6000, 2400}, {Error::number}, "Watts"},
};

TEST(TurnDown, IsHighByLowPower) {
    ratios.check();
}

} // namespace
} // namespace hearthcell::tests
