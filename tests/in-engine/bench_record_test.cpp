// The bench record, filled with the runs of the demonstration: results, remarks, what leaves a mean.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

class TheBenchRecord : public BenchRecord {
protected:
    TheBenchRecord() { fill_in(); }
};

INSTANTIATE_TEST_SUITE_P(Templates, TheBenchRecord, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

// Computed apart from the five boils: IAPWS SR6-08 and IAPWS-IF97 by iapws 1.5.3, the altimeter's column by hand.
TEST_P(TheBenchRecord, GivesTheMeansOfItsRuns) {
    EXPECT_NEAR(number_named(workbook, "boiling_point"), 95.9264, 1e-4);
    EXPECT_NEAR(number_named(workbook, "efficiency"), 0.2424457, 1e-5); // two formulations of the latent heat
    EXPECT_NEAR(number_named(workbook, "boil_time"), 28.1, 1e-6);       // (28 1/3 + 27 2/3 + 28 5/6 + 28 1/6 + 27.5)/5
    EXPECT_NEAR(number_named(workbook, "specific_fuel"), 105.56429, 1e-5);
    std::map<std::string_view, std::string> const nothing{{"en", "nothing to remark"},
                                                          {"fr", "rien à remarquer"},
                                                          {"es", "nada que observar"},
                                                          {"sw", "hakuna la kusema"}};
    EXPECT_EQ(heating.shown("F33"), nothing.at(GetParam()));
}

TEST_P(TheBenchRecord, CountsInItsEfficiencyTheFireOfItsFirepower) {
    // One definition of the fire: whatever the method counts of the char, efficiency × firepower is the cooking power,
    // once firelighter and fan are added to the fire.
    bench.number(reading("firelighter", 2), 12);
    bench.number(reading("energy of the fan", 7), 1.4);
    EXPECT_EQ(readings.value(in_row('N', 2)), CellValue(12.0 * 42));
    EXPECT_NEAR(number(readings.value(in_row('N', 7))), 3.6 * 1.4, 1e-12);
    for (char const* const method : methods) {
        use(method);
        for (int run = 1; run <= 14; ++run) {
            double const efficiency = number(results.value(in_row('G', run))),
                         fire = number(results.value(in_row('H', run))),
                         minutes = number(results.value(in_row('C', run))),
                         other = number(readings.value(in_row('N', run))) / (60 * minutes);
            EXPECT_NEAR(efficiency * (fire + other), number(results.value(in_row('I', run))), 1e-12)
                << method << ", run " << run;
            if (std::string_view(method) != "ISO 19867-1") { // which defines no equivalent dry fuel
                EXPECT_NEAR(number(results.value(in_row('J', run))), number(results.value(in_row('K', run))) / minutes,
                            1e-9);
            }
        }
    }
}

TEST_P(TheBenchRecord, PutsTheBoilingPointMeasuredThatDayBeforeTheComputedOne) {
    stove.number("C13", 95.6);
    EXPECT_EQ(number_named(workbook, "boiling_point"), 95.6);
    EXPECT_EQ(stove.shown("A15"), said_here("The boiling point measured that day is used."));
    stove.text("C9", ""); // no altitude is needed then
    EXPECT_EQ(number_named(workbook, "boiling_point"), 95.6);
    EXPECT_GT(number_named(workbook, "efficiency"), 0.2);
}

TEST_P(TheBenchRecord, ReducesAWeatherReportsPressureWithTheAirOfTheMoment) {
    stove.number("C11", 24); // 882.714 hPa: the hydrostatic column by hand, its boiling point by iapws 1.5.3
    EXPECT_NEAR(number_named(workbook, "boiling_point"), 96.1555, 1e-4);
    stove.number("C12", 868); // a reading at the place goes before both
    EXPECT_LT(number_named(workbook, "boiling_point"), 95.8);
}

TEST_P(TheBenchRecord, TakesTheTypedBoilAsTheResultAndTheLogAsItsCheck) {
    for (std::string const run : {"33", "34", "35"}) {
        double const log = number(heating.value("C" + run)), typed = number(heating.value("E" + run));
        double const doubt = number(heating.value("D" + run));
        EXPECT_GT(doubt, 0.03) << run;
        EXPECT_LT(doubt, 0.5) << run;
        EXPECT_LT(std::abs(log - typed), 2 * doubt + 0.5) << run;
    }
    bench.text(reading("boil began", 1), "26:00");
    EXPECT_EQ(heating.shown("F33"), said_here("The boil of the log and the typed one lie further apart than the log "
                                              "leaves in doubt: check both."));
    EXPECT_NEAR(number(results.value(in_row('B', 1))), 26, 1e-9);
}

TEST_P(TheBenchRecord, LeavesARunThatIsNotCompleteOutOfItsResults) {
    use("WBT 3");
    bench.text(reading("char and tray", 1), "");
    bench.text(reading("char tray empty", 1), "");
    EXPECT_EQ(answer(1), said_here("Not yet: char not weighed, and this method needs it."));
    EXPECT_EQ(results.shown(in_row('G', 1)), "");
    bench.text(reading("pot and water at start", 2), "4,3 kg");
    EXPECT_EQ(answer(2), said_here("pot and water at start") + ": " + said_here("a number is needed, not a text."));
    EXPECT_EQ(results.shown(in_row('G', 2)), "");
    stove.text("C9", ""); // the altitude
    EXPECT_EQ(stove.shown("A15"), said_here("Missing: the altitude, or the pressure read at the place."));
    stove.text("C9", "high up");
    EXPECT_EQ(stove.shown("A15"), said_here("Altitude and pressures: a number is needed, not a text."));
    no_errors();
}

TEST_P(TheBenchRecord, KeepsATimeThatCannotBeReadAsAnErrorAndExplainsIt) {
    bench.text(reading("boil began", 1), "1:75");
    EXPECT_EQ(results.value(in_row('B', 1)), CellValue(not_a_result));
    if (GetParam() == "en") {
        EXPECT_EQ(answer(1), "time is \"1:75\", but minutes and seconds that follow a larger unit end at 59.");
    }
    EXPECT_NE(answer(1).find("1:75"), std::string::npos) << answer(1);
    bench.text(reading("boil began", 1), "31:40"); // the fire was out after 30:00
    EXPECT_EQ(answer(1), said_here("The boil began after the fire was out: check both times."));
}

TEST_P(TheBenchRecord, ReadsTheClockWhereTheFireWasLitByTheClock) {
    bench.text(reading("fire lit", 1), "23:50");
    bench.text(reading("boil began", 1), "0:18");
    bench.text(reading("fire out", 1), "0:20");
    EXPECT_NEAR(number(results.value(in_row('B', 1))), 28, 1e-9); // over midnight
    EXPECT_NEAR(number(results.value(in_row('C', 1))), 30, 1e-9);
    EXPECT_EQ(answer(1), said_here("All there; you may empty it."));
    bench.text(reading("fire out", 1), "30:00"); // minutes and seconds, which no clock shows
    EXPECT_EQ(answer(1), said_here("The fire was lit by the clock: type boil and fire out by the clock, too."));
    EXPECT_EQ(results.value(in_row('C', 1)), CellValue(not_available));
}

TEST_P(TheBenchRecord, SaysWhatIsMissingInALog) {
    heating.text("A9", "");
    EXPECT_EQ(heating.shown("F33"), said_here("Missing: the time of a temperature."));
    heating.text("B10", "hot");
    EXPECT_EQ(heating.shown("F33"), said_here("A temperature is a text: a number is needed."));
    EXPECT_EQ(errors_on(workbook, 4), "");
}

TEST_P(TheBenchRecord, LeavesARunThatDoesNotCountOutOfEveryMean) {
    double before = 0;
    for (int run : {1, 2, 4, 5})
        before += number(results.value(in_row('G', run))) / 4;
    bench.text(reason(3), "door blown open");
    bench.text(reason(7), "pot knocked");
    EXPECT_EQ(results.value("G23"), CellValue(4.0));
    EXPECT_NEAR(number_named(workbook, "efficiency"), before, 1e-14);
    EXPECT_GT(number(results.value(in_row('G', 3))), 0.2); // the run's own result stays
    EXPECT_EQ(results.shown(in_row('P', 3)), "");          // not so in the chart
    EXPECT_EQ(levels.value("C8"), CellValue(2.0));
    EXPECT_NEAR(number(levels.value("C9")),
                (number(results.value(in_row('G', 6))) + number(results.value(in_row('G', 8)))) / 2, 1e-14);
    no_errors();
}

TEST_P(TheBenchRecord, MakesNoMeanOfRunsWithAndWithoutChar) {
    for (char const* const name : {"char tray empty", "char and tray"})
        bench.text(reading(name, 4), "");
    EXPECT_EQ(answer(4), said_here("All there; you may empty it. No char was weighed: none is credited."));
    EXPECT_NEAR(number(results.value(in_row('G', 4))), number(results.value(in_row('N', 4))), 1e-14);
    EXPECT_EQ(results.shown("G24") + results.shown("H24") + results.shown("L24"), "");
    EXPECT_EQ(results.value("N23"), CellValue(5.0)); // without the credit all five mean the same
    EXPECT_EQ(results.shown("O30"), said_here("Char was weighed in some runs only: what counts it has no mean."));
    no_errors();
}

TEST_P(TheBenchRecord, TakesTheMeanOfARunsOwnMoistureReadings) {
    bench.number("C10", 0.16); // dry basis, as a meter with pins reads
    bench.number("C11", 0.17);
    bench.number("C12", 0.18);
    EXPECT_NEAR(number(readings.value(in_row('M', 1))), 0.17 / 1.17, 1e-14);
    stove.text("H13", stove.choices("H13").at(1));
    EXPECT_NEAR(number(readings.value(in_row('M', 1))), 0.17, 1e-14);
    EXPECT_NEAR(number(readings.value(in_row('M', 2))), 44.0 / 318, 1e-14); // has none of its own
}

TEST_P(TheBenchRecord, CountsWaterAddedAsIfPouredInAtTheStart) {
    double const before = number(results.value(in_row('D', 1)));
    bench.number(reading("water added", 1), 100);
    bench.number(reading("pot and water at end", 1), 4250);
    double const gained = number(results.value(in_row('D', 1))) - before;
    EXPECT_NEAR(gained, 0.1 * (399.996 - 60.966), 0.1); // IAPWS: enthalpy of water at 95.5 and 14.5 °C, kJ/kg
}

TEST_P(TheBenchRecord, ShowsTheUncertaintyOfTheRunAskedFor) {
    EXPECT_EQ(uncertainty.shown("B10"), "745");
    EXPECT_NEAR(number(uncertainty.value("B25")), number(results.value(in_row('G', 1))), 1e-14);
    EXPECT_NEAR(number(uncertainty.value("C25")), 0.0077, 3e-4);
    uncertainty.number("B6", 14);
    EXPECT_NEAR(number(uncertainty.value("B25")), number(results.value(in_row('G', 14))), 1e-14);
    uncertainty.number("B6", 15);
    EXPECT_EQ(uncertainty.shown("C6"), said_here("This run is not complete."));
}

TEST_P(TheBenchRecord, SharesTheDoubtOutOverEveryReadingToTheLast) {
    uncertainty.number("B6", 1);
    bench.number(reading("energy of the fan", 1), 20);
    uncertainty.number("C24", 30); // kJ of the fan
    EXPECT_GT(number(uncertainty.value("F24")), 0.01);
    EXPECT_NEAR(number(uncertainty.value("F25")), 1, 1e-12); // shown as 100 %
    uncertainty.text("C24", "some");
    EXPECT_EQ(uncertainty.shown("C25"), "");
    EXPECT_EQ(uncertainty.shown("C6"), said_here("An uncertainty is a text: a number is needed."));
}

} // namespace
} // namespace hearthcell::tests
