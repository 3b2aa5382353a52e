// Power levels and the simmer in the bench record. The expected means and limits were computed apart from the runs of
// the demonstration: IAPWS SR6-08 and, for the latent heat, IAPWS-IF97 by iapws 1.5.3;
// Student's t by scipy 1.10.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

class PowerLevels : public BenchRecord {
protected:
    PowerLevels() { fill_in(); }
    void expect(char const* cells, double mean, double lower, double upper) const {
        auto const row = levels.values(cells)[0];
        EXPECT_NEAR(number(row[0]), mean, 2e-5) << cells;
        EXPECT_NEAR(number(row[1]), lower, 2e-5) << cells;
        EXPECT_NEAR(number(row[2]), upper, 2e-5) << cells;
    }
};

INSTANTIATE_TEST_SUITE_P(Templates, PowerLevels, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(PowerLevels, HaveMeansAndLimitsOfTheirOwn) {
    expect("C9:E9", 0.2283240, 0.2221074, 0.2345406);
    expect("F9:H9", 0.1939852, 0.1796156, 0.2083548);
    expect("I9:K9", 0.1044959, 0.0938745, 0.1151174);
    expect("C10:E10", 0.1918728, 0.1854466, 0.1982989);
    expect("C11:E11", 1.0406259, 1.0242441, 1.0570078);
    expect("C12:E12", 4.5582008, 4.3722719, 4.7441297);
    expect("I12:K12", 1.4619341, 1.3741878, 1.5496804);
    EXPECT_NEAR(number(levels.value("I20")), 4.5582008 / 1.4619341, 1e-4);
    EXPECT_EQ(levels.shown("L9"), ""); // nothing simmered
}

TEST_P(PowerLevels, AreNoneOfTheBoilsAndCanBeTheOnesWhoseMeansAreShown) {
    results.text("B30", results.choices("B30").at(4)); // high
    EXPECT_EQ(results.value("G23"), CellValue(3.0));
    EXPECT_NEAR(number(results.value("G24")), 0.2283240, 1e-5);
    EXPECT_EQ(results.shown(in_row('P', 1)), "");
    EXPECT_NE(results.shown(in_row('P', 6)), "");
}

TEST_P(PowerLevels, HaveTiersByTheMethodThatTheTiersAreForOnly) {
    EXPECT_EQ(levels.shown("F26"), "");
    use("ISO 19867-1");
    EXPECT_EQ(levels.value("F26"), CellValue(2.0)); // 22.8 % lies between 20 and 30 %
    for (int row = 26; row <= 37; ++row) {          // also carbon monoxide and particles
        double sum = 0;
        auto const tiers = levels.values("G" + std::to_string(row) + ":L" + std::to_string(row))[0];
        for (CellValue const& tier : tiers)
            sum += number(tier);
        EXPECT_NEAR(sum, 1, 1e-12) << row;
    }
    EXPECT_EQ(levels.value("F32"), CellValue(1.0)); // 11.67 g of CO a MJ: above the 11.5 of tier 2
    EXPECT_EQ(levels.value("F35"), CellValue(2.0)); // 220.1 mg of particles a MJ: above the 218 of tier 3
    EXPECT_EQ(levels.value("F29"), CellValue(1.0)); // 19.2 %, no char credited
    no_errors();
}

// ../../functions' own check row: 450 g at 12 %, 30 g of earlier char burned, 45 min, 4150 g left.
TEST_P(PowerLevels, HaveTheSimmerBesideThem) {
    use("WBT 4.2.3");
    stove.number("C13", 94.983);
    stove.number("H7", 18.5);
    stove.number("H9", 0.12);
    bench.text(reading("start or level", 15), bench.choices("C9").at(2));
    for (auto const& [name, value] : std::map<std::string, double>{{"air", 20},
                                                                   {"pot empty, with lid and probe", 800},
                                                                   {"pot and water at start", 5550},
                                                                   {"water start", 94.983},
                                                                   {"wood laid out", 1000},
                                                                   {"char tray empty", 100},
                                                                   {"water end", 92.5},
                                                                   {"pot and water at end", 4950},
                                                                   {"wood left", 550},
                                                                   {"char and tray", 70}})
        bench.number(reading(name, 15), value);
    bench.text(reading("fire out", 15), "45:00");
    EXPECT_EQ(answer(15), said_here("All there; you may empty it."));
    EXPECT_NEAR(number(results.value(in_row('K', 15))), 436.3337, 1e-4);
    EXPECT_NEAR(number(results.value(in_row('L', 15))), 105.1406, 1e-4);
    EXPECT_NEAR(number(levels.value("L15")), 0.0432245, 1e-7);
    EXPECT_EQ(levels.value("L8"), CellValue(1.0));
}

} // namespace
} // namespace hearthcell::tests
