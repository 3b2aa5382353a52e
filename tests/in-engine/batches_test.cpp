// Batches of wood, water and the fan in the bench record, one by one.

#include "bench_record.hpp"

namespace hearthcell::tests {
namespace {

class TheSheetOfBatches : public BenchRecord {
protected:
    TheSheetOfBatches() { fill_in(); }
    /// Types a batch into a row: run, time, wood and power of the fan; an empty text where there is none.
    void type(std::string const& row, char const* run, char const* time, char const* wood, char const* watts) {
        batches.text("A" + row, run);
        batches.text("B" + row, time);
        for (auto const& [column, value] : {std::pair("C", wood), std::pair("F", watts)})
            if (*value != '\0')
                batches.number(column + row, std::stod(value));
    }
    [[nodiscard]] double other_energy(int run) const { return number(readings.value(in_row('N', run))); }
};

INSTANTIATE_TEST_SUITE_P(Templates, TheSheetOfBatches, testing::ValuesIn(template_languages),
                         [](auto const& tested) { return std::string(tested.param); });

TEST_P(TheSheetOfBatches, AddsWhatWasPutOnToWhatWasLaidOut) {
    EXPECT_EQ(readings.value(in_row('E', 2)), CellValue(600.0 + 200 + 120 + 55));
    EXPECT_EQ(batches.value("I9"), CellValue(600.0 + 200 + 120)); // wood so far
    EXPECT_NEAR(number(batches.value("H10")), 21.5, 1e-12);
    bench.text(reading("wood laid out", 2), ""); // every stick came in a batch
    EXPECT_EQ(readings.value(in_row('E', 2)), CellValue(375.0));
    EXPECT_EQ(answer(2), said_here("Weigh the wood again: as much is left as was laid out.")); // 470 g are left
    bench.number(reading("wood left", 2), 50);
    EXPECT_EQ(answer(2).find(said_here("Not yet. ")), std::string::npos) << answer(2); // no wood is missing
    batches.number("D8", 100);
    EXPECT_EQ(readings.value(in_row('C', 2)), CellValue(4350.0 + 100)); // water added
    no_errors();
}

TEST_P(TheSheetOfBatches, LeavesTheResultsOfARunAsIfAllHadBeenLaidOutAtOnce) {
    double const before = number(results.value(in_row('G', 2)));
    bench.number(reading("wood laid out", 2), 975);
    for (char const* const cell : {"C8", "C9", "C10"})
        batches.text(cell, "");
    EXPECT_EQ(number(results.value(in_row('G', 2))), before);
}

TEST_P(TheSheetOfBatches, CorrectsEachWeighingByTheCheckPointsOfTheScale) {
    instruments.number("F8", 2); // shows 2 g too much
    instruments.number("G8", 0);
    EXPECT_NEAR(number(readings.value(in_row('E', 2))), 975 - 4 * 2, 1e-9); // laid out and three batches
}

TEST_P(TheSheetOfBatches, CountsTheFanFromWattsOrFromWattHours) {
    bench.number(reading("or its power", 1), 2);
    EXPECT_NEAR(other_energy(1), 2 * 30 * 0.06, 1e-12); // until the fire was out, after 30 min
    type("12", "R1", "10:00", "", "5");
    type("11", "R1", "20:00", "", "0"); // rows need no order
    EXPECT_NEAR(other_energy(1), (2 * 10 + 5 * 10) * 0.06, 1e-12);
    EXPECT_NEAR(number(batches.value("J12")), 5 * 10 * 0.06, 1e-12);
    type("13", "R1", "10:00", "", "4"); // the same minute again: the later row holds
    EXPECT_NEAR(other_energy(1), (2 * 10 + 4 * 10) * 0.06, 1e-12);
    bench.number(reading("energy of the fan", 1), 1.5); // a meter goes before all of it
    EXPECT_NEAR(other_energy(1), 1.5 * 3.6, 1e-12);
    no_errors();
}

TEST_P(TheSheetOfBatches, ReadsTheClockWhereTheFireWasLitByTheClock) {
    bench.text(reading("fire lit", 2), "23:50");
    bench.text(reading("boil began", 2), "0:18");
    bench.text(reading("fire out", 2), "0:20");
    EXPECT_EQ(batches.shown("K8"), said_here("The fire was out before.")); // 6:30 would be hours later
    batches.text("B8", "0:05");
    EXPECT_NEAR(number(batches.value("H8")), 15, 1e-9); // over midnight
    EXPECT_EQ(batches.shown("K8"), "");
    batches.text("B8", "30:00"); // which no clock shows
    EXPECT_EQ(batches.shown("K8"), said_here("The fire was lit by the clock: type this time by the clock, too."));
}

TEST_P(TheSheetOfBatches, SaysWhichRowIsNotRight) {
    type("11", "R99", "5:00", "100", "");
    EXPECT_EQ(batches.shown("K11"), said_here("No run of this name stands on the sheet Bench."));
    batches.text("A11", "");
    EXPECT_EQ(batches.shown("K11"), said_here("Missing: ") + said_here("run") + ".");
    batches.text("C9", "a handful");
    EXPECT_EQ(batches.shown("K9"), said_here("wood put on") + ": " + said_here("a number is needed, not a text."));
    EXPECT_EQ(answer(2), said_here("Not yet: a row of this run on the sheet Batches is not right."));
    EXPECT_EQ(results.shown(in_row('G', 2)), "");
    no_errors();
}

TEST_P(TheSheetOfBatches, ShowsNoRunWhileABatchBelongsToNone) {
    std::string const nobody = said_here("Not yet: a row on the sheet Batches belongs to no run.");
    auto const nothing_is_said_of = [&](int run) {
        EXPECT_EQ(results.shown(in_row('G', run)), "") << "run " << run;
        EXPECT_EQ(readings.value(in_row('Q', run)), CellValue(0.0)) << "run " << run; // nor counted in the means
        EXPECT_EQ(answer(run), nobody) << "run " << run;
    };
    double const before = number(results.value(in_row('G', 2)));
    for (char const* const name : {"R99", "", " "}) {
        batches.text("A8", name);
        nothing_is_said_of(1);
        nothing_is_said_of(2);
    }
    batches.text("A8", " r2 "); // as it is written in a hurry
    EXPECT_EQ(number(results.value(in_row('G', 2))), before);
    EXPECT_EQ(batches.shown("K8"), "");
    bench.text("C6", "r2"); // two runs of one name
    EXPECT_EQ(batches.shown("K8"), said_here("This name stands more than once on the sheet Bench."));
    nothing_is_said_of(1);
    nothing_is_said_of(2);
    bench.text("C6", "R1");
    batches.number("A8", 15); // of which nothing was read
    EXPECT_EQ(batches.shown("K8"), said_here("No reading of this run stands on the sheet Bench."));
    nothing_is_said_of(2);
    no_errors();
}

TEST_P(TheSheetOfBatches, ShowsNoRunOfWhichARowIsNotRight) {
    double const other = number(results.value(in_row('G', 1)));
    for (char const* const cell : {"C9", "D9", "F9"}) {
        batches.text(cell, "300 g");
        EXPECT_EQ(results.shown(in_row('G', 2)), "") << cell;
        EXPECT_EQ(answer(2), said_here("Not yet: a row of this run on the sheet Batches is not right.")) << cell;
        batches.text(cell, "");
    }
    batches.text("B9", "");
    EXPECT_EQ(results.shown(in_row('G', 2)), "");
    EXPECT_EQ(number(results.value(in_row('G', 1))), other); // which it is not
    for (char const* const name : {"water added", "firelighter", "energy of the fan", "or its power"}) {
        bench.text(reading(name, 1), "50 g");
        EXPECT_EQ(results.shown(in_row('G', 1)), "") << name;
        bench.text(reading(name, 1), "");
    }
}

TEST_P(TheSheetOfBatches, TakesNoWaterFromTwoSheets) {
    bench.number(reading("water added", 2), 50);
    EXPECT_NE(results.shown(in_row('G', 2)), ""); // its batches are of wood
    batches.number("D9", 50);
    EXPECT_EQ(results.shown(in_row('G', 2)), "");
    EXPECT_EQ(answer(2),
              said_here("Not yet: water added stands on the sheets Bench and Batches: type all of it on one of them."));
    bench.text(reading("water added", 2), "");
    EXPECT_NE(results.shown(in_row('G', 2)), "");
    EXPECT_EQ(readings.value(in_row('C', 2)), CellValue(4350.0 + 50));
}

TEST_P(TheSheetOfBatches, PointsOutWoodThatWasWeighedIntoBoth) {
    std::string const twice = said_here("Look again before you empty it. ") +
                              said_here("The batches are as much wood as was laid out and is not left: was it weighed "
                                        "into both?");
    EXPECT_EQ(answer(2), said_here("All there; you may empty it."));
    bench.number(reading("wood laid out", 2), 375 + 470); // the pile, of which 375 g went on in batches and 470 g lie
    EXPECT_EQ(answer(2), twice);
    bench.number(reading("wood laid out", 2), 375 + 470 + 10); // and some bark lost
    EXPECT_NE(answer(2), twice);
    bench.number(reading("wood laid out", 2), 375 + 470 + 7);
    EXPECT_EQ(answer(2), twice);
}

} // namespace
} // namespace hearthcell::tests
