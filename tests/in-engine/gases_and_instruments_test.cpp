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
    EXPECT_EQ(instruments.shown("A20"), said_here("No check point: readings are taken as they are."));
    instruments.number("B8", 0.4); // read in ice
    instruments.number("C8", 0);
    EXPECT_EQ(instruments.shown("A20"), said_here("One check point: all readings are moved by the same amount."));
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
    EXPECT_NEAR(number(instruments.value("F18")), 2020, 1e-9);
    EXPECT_EQ(answer(1), said_here("All there; you may empty it."));
    no_errors();
}

// By hand: in the middle of n points of the same doubt u it is u/√n; at an end of two, u itself. The scale's four
// points scatter about their line: its standard uncertainty at 2000 g by numpy 1.24, polyfit with the covariance.
TEST_P(GasesAndInstruments, SayHowSureTheCorrectionIs) {
    for (char const* const heading : {"C16", "G16"}) // of the line alone: the reading's own doubt comes beside it
        EXPECT_EQ(instruments.shown(heading), said_here("standard uncertainty of the correction"));
    EXPECT_EQ(instruments.shown("C17"), "");
    for (auto const& [row, shown, is] : {std::tuple{"8", 20.0, 20.1}, {"9", 100.0, 100.1}}) {
        instruments.number(std::string("B") + row, shown);
        instruments.number(std::string("C") + row, is);
    }
    instruments.number("C14", 0.2);
    EXPECT_NEAR(number(instruments.value("C17")), 0.2, 1e-12);                // read 20 °C, an end
    EXPECT_NEAR(number(instruments.value("C18")), 0.2 / std::sqrt(2), 1e-12); // 60 °C, the middle
    instruments.text("C14", "");
    EXPECT_EQ(instruments.shown("C18"), ""); // two points always lie on their line
    std::array<double, 4> const shown{0, 1000, 2000, 3000}, is{1, 999, 2001, 2999};
    for (int row = 0; row < 4; ++row) {
        instruments.number("F" + std::to_string(8 + row), shown[std::size_t(row)]);
        instruments.number("G" + std::to_string(8 + row), is[std::size_t(row)]);
    }
    instruments.text("G14", "");
    EXPECT_NEAR(number(instruments.value("G18")), 0.6928203230276, 1e-10);
    instruments.number("G14", 10); // a doubt that is larger than the scatter goes before it
    EXPECT_NEAR(number(instruments.value("G18")), 10 * std::sqrt(0.25 + 500.0 * 500 / 5e6), 1e-12);
}

TEST_P(GasesAndInstruments, SayThatACheckPointIsShortOfAValue) {
    instruments.number("B8", 0.4);
    EXPECT_EQ(instruments.shown("A20"), said_here("Missing: one of the two values of a check point."));
    EXPECT_EQ(answer(1), said_here("A reading cannot be corrected: see the check points on the sheet Instruments."));
    EXPECT_EQ(results.shown(in_row('G', 1)), "");
}

} // namespace
} // namespace hearthcell::tests
