// Gases, particles and check points in the bench record.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

class GasesAndInstruments : public BenchRecord {
protected:
    GasesAndInstruments() { fill_in(); }
};

INSTANTIATE_TEST_SUITE_P(Templates, GasesAndInstruments, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

// By hand: 710 g at 44/318 moisture are 611.761 g dry; half of them less 0.85 × 62 g of char are 253.181 g of carbon,
// of which 393 ppm of 9153 above the air became carbon monoxide, 28.010/12.011 as heavy. The filter: 1.60 mg ×
// 5000/16.7.
TEST_P(GasesAndInstruments, ShareTheCarbonOutAndCountTheFilter) {
    EXPECT_NEAR(number(gases.value("J15")), 253.1805, 1e-3);
    EXPECT_NEAR(number(gases.value("K15")), 25.3509, 1e-3);
    EXPECT_NEAR(number(gases.value("L15")), 8760.0 / 9153, 1e-12);
    EXPECT_NEAR(number(gases.value("M15")), 25.3509 / 0.611761, 1e-2);
    EXPECT_NEAR(number(gases.value("N15")), 25350.9 / number(results.value(in_row('D', 6))), 1e-3);
    EXPECT_NEAR(number(gases.value("P15")), 1.60 * 5000 / 16.7, 1e-9);
    EXPECT_NEAR(number(gases.value("R15")), 1.60 * 5000 / 16.7 / 35, 1e-9);
    EXPECT_EQ(gases.shown("J10"), ""); // nothing was measured in the boils
    double mean = 0;
    for (char const* const cell : {"N15", "N16", "N17"})
        mean += number(gases.value(cell)) / 3;
    EXPECT_NEAR(number(levels.value("C16")), mean, 1e-12);
}

TEST_P(GasesAndInstruments, AreNotCountedWhereTheRecordSaysThatNoGasesWereMeasured) {
    stove.text("L13", stove.choices("L13").at(0));
    EXPECT_EQ(gases.shown("J15") + gases.shown("P15") + levels.shown("C16"), "");
    stove.text("L13", stove.choices("L13").at(1));
    for (char const* const name : {"char tray empty", "char and tray"})
        bench.text(reading(name, 6), ""); // what carbon is left in the char is not known then
    EXPECT_EQ(gases.shown("J15"), "");
    EXPECT_NE(gases.shown("P15"), "");
    no_errors();
}

TEST_P(GasesAndInstruments, CorrectEveryReadingByTheCheckPoints) {
    EXPECT_EQ(instruments.shown("A18"), said_here("No check point: readings are taken as they are."));
    instruments.number("B8", 0.4); // read in ice
    instruments.number("C8", 0);
    EXPECT_EQ(instruments.shown("A18"), said_here("One check point: all readings are moved by the same amount."));
    EXPECT_NEAR(number(readings.value(in_row('D', 1))), 14.1, 1e-12);
    EXPECT_NEAR(number(readings.value(in_row('F', 1))), 95.1, 1e-12);
    stove.number("C13", 96); // the same probe read the boil
    EXPECT_NEAR(number_named(workbook, "boiling_point"), 95.6, 1e-12);

    instruments.number("F8", 0); // a scale that reads one part in a hundred too little
    instruments.number("G8", 0);
    instruments.number("F9", 5000);
    instruments.number("G9", 5050);
    EXPECT_NEAR(number(readings.value(in_row('C', 1))) - number(readings.value(in_row('B', 1))), 3636, 1e-9);
    EXPECT_NEAR(number(readings.value(in_row('I', 1))), 36.36, 1e-9);
    EXPECT_NEAR(number(instruments.value("G16")), 2020, 1e-9);
    EXPECT_EQ(answer(1), said_here("All there; you may empty it."));
    no_errors();
}

TEST_P(GasesAndInstruments, SayThatACheckPointIsShortOfAValue) {
    instruments.number("B8", 0.4);
    EXPECT_EQ(instruments.shown("A18"), said_here("Missing: one of the two values of a check point."));
    EXPECT_EQ(answer(1), said_here("A reading cannot be corrected: see the check points on the sheet Instruments."));
    EXPECT_EQ(results.shown(in_row('G', 1)), "");
}

} // namespace
} // namespace hearthcell::tests
