// What an example puts onto other sheets: where, over what, how far; and what is refused, with its reason.

#include "typed.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests::archive {
namespace {

/// A form: a run in a column.
Cells form() {
    return {{"A1", "Water boiling test"},
            {"A2", "Tester"},
            {"B2", "Amina"},
            {"A3", "Altitude"},
            {"B3", "1640"},
            {"C3", "m"},
            {"A4", "Start"},
            {"B4", "20"},
            {"C4", "°C"},
            {"A5", "End"},
            {"B5", "94"},
            {"C5", "°C"},
            {"A6", "Water"},
            {"B6", "5"},
            {"C6", "kg"},
            {"A7", "Boiling point"},
            {"B7", "=100-B3/300"},
            {"C7", "°C"},
            {"A8", "Heat"},
            {"B8", "=4.186*B6*(B5-B4)"},
            {"C8", "kJ"}};
}

Typed run(Cells const& cells, std::string const& name = "Run") {
    return {{name, cells, {}, {"Amina", "Petro", "windy", "Jonas"}}};
}

Cells with(Cells cells, Cells const& others) {
    for (auto const& [cell, content] : others)
        cells[cell] = content;
    std::erase_if(cells, [](auto const& cell) { return cell.second.empty(); });
    return cells;
}

/// With an empty row put in before one of them.
Cells with_row_before(Cells const& cells, int row) {
    Cells moved;
    auto const later = [&](std::string const& name) {
        int const at = std::stoi(name.substr(1));
        return name.substr(0, 1) + std::to_string(at + (at >= row ? 1 : 0));
    };
    for (auto const& [name, content] : cells) {
        std::string text = content;
        if (text.starts_with('=')) {
            text.clear();
            for (std::size_t at = 0; at < content.size(); ++at)
                if (content[at] == 'B' && at + 1 < content.size() && std::isdigit(content[at + 1]) != 0)
                    text += later(content.substr(at++, 2));
                else
                    text += content[at];
        }
        moved[later(name)] = text;
    }
    return moved;
}

TEST(Example, GoesOverAnOldFormulaAndBesideIt) {
    Typed const old = run(form());
    Typed const now = run(with(form(), {{"B7", "=STOVE.BOILINGPOINT(B3)"}, {"D8", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}}));
    EXPECT_EQ(carried(old, now, run(form(), "Lundi")),
              "Lundi.B7 =STOVE.BOILINGPOINT(B3)\nLundi.D8 =STOVE.WATERHEAT(B6*1000;B4;B5)\n");
}

TEST(Example, FollowsInsertedAndChangedRows) {
    Typed const old = run(form());
    Typed const now =
        run(with(form(), {{"B7", "=STOVE.BOILINGPOINT($B$3)"}, {"D8", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}}));
    Cells const inserted = with(with_row_before(form(), 4), {{"A4", "Air"}, {"B4", "25"}, {"C4", "°C"}});
    EXPECT_EQ(carried(old, now, run(inserted)),
              "Run.B8 =STOVE.BOILINGPOINT($B$3)\nRun.D9 =STOVE.WATERHEAT(B7*1000;B5;B6)\n");
    Cells const swapped =
        with(form(), {{"A4", "End"}, {"B4", "94"}, {"A5", "Start"}, {"B5", "20"}, {"B8", "=4.186*B6*(B4-B5)"}});
    EXPECT_EQ(carried(old, now, run(swapped)),
              "Run.B7 =STOVE.BOILINGPOINT($B$3)\nRun.D8 =STOVE.WATERHEAT(B6*1000;B5;B4)\n");
}

TEST(Example, RefusesOtherLabelsAndUnitsOfAnythingThatIsRead) {
    Typed const old = run(form());
    Typed const now = run(with(form(), {{"B7", "=STOVE.BOILINGPOINT(B3)"}, {"D8", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}}));
    EXPECT_EQ(carried(old, now, run(with(form(), {{"A6", "Water and pot"}}))),
              "another layout: Run: B6: 'Water' is not on this sheet\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"C6", "g"}}))),
              "another layout: Run: B6: its unit is 'g', not 'kg'\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"C6", ""}}))),
              "another layout: Run: B6: its unit is not given, not 'kg'\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"C3", "ft"}})), true),
              "Run.D8 =STOVE.WATERHEAT(B6*1000;B4;B5)\nnot carried: Run: B3: its unit is 'ft', not 'm'\n");
}

TEST(Example, WritesOnlyOverWhatStandsThereInTheOldSheet) {
    Typed const old = run(form());
    Typed const now = run(with(form(), {{"B7", "=STOVE.BOILINGPOINT(B3)"}, {"D8", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}}));
    EXPECT_EQ(carried(old, now, run(with(form(), {{"B7", "94.6"}}))),
              "Run.D8 =STOVE.WATERHEAT(B6*1000;B4;B5)\nleft as it was: Run: B7 (typed over, 94.6)\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"B7", "=100-B3/310"}, {"D8", "windy"}}))),
              "left as it was: Run: B7 (another formula); D8 (not empty)\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"B7", ""}}))),
              "Run.D8 =STOVE.WATERHEAT(B6*1000;B4;B5)\nleft as it was: Run: B7 (empty)\n");
}

TEST(Example, CarriesWordsIntoEmptyCellsOnly) {
    Typed const old = run(form());
    Typed const now = run(
        with(form(),
             {{"B2", "Jonas"}, {"A9", "Heat of the water"}, {"C9", "kJ"}, {"B9", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}}));
    EXPECT_EQ(carried(old, now, run(with(form(), {{"B2", "Petro"}}))),
              "Run.A9 Heat of the water\nRun.C9 kJ\nRun.B9 =STOVE.WATERHEAT(B6*1000;B4;B5)\n");
    EXPECT_EQ(carried(old, now, run(with(form(), {{"A9", "Remarks"}}))),
              "another layout: Run: A9 is not empty, where the word 'Heat of the water' is to go\n");
}

TEST(Example, LeavesBlankWhatReadsOnlyEmptyCells) {
    Typed const old = run(form());
    Typed const now = run(
        with(form(), {{"D7", "=STOVE.BOILINGPOINT(B3)"}, {"D8", "=STOVE.WATERHEAT(B6*1000;B4;B5)"}, {"E8", "=D8/B6"}}));
    EXPECT_EQ(carried(old, now, run(with(form(), {{"B4", ""}, {"B5", ""}, {"B6", ""}}))),
              "Run.D7 =STOVE.BOILINGPOINT(B3)\n");
}

/// A table: a run a row, a mean below.
Cells table(int runs, bool swapped = false) {
    std::string const steam = swapped ? "C" : "D", wood = swapped ? "D" : "C";
    Cells cells{
        {"A1", "Season"},         {"A2", "Specific heat"},    {"B2", "4.186"},    {"A4", "Run"},    {"B4", "Water, kg"},
        {wood + "4", "Wood, kg"}, {steam + "4", "Steam, kg"}, {"E4", "Heat, kJ"}, {"F4", "Remarks"}};
    for (int run = 1; run <= runs; ++run) {
        std::string const row = std::to_string(4 + run);
        cells["A" + row] = std::to_string(run);
        cells["B" + row] = "5";
        cells[wood + row] = "1";
        cells[steam + row] = "0.3";
        cells["E" + row] = "=$B$2*B" + row + "*75+2260*" + steam + row;
    }
    std::string const last = std::to_string(5 + runs);
    cells["A" + last] = "Mean";
    cells["E" + last] = "=AVERAGE(E5:E" + std::to_string(4 + runs) + ")";
    return cells;
}

TEST(Example, FillsExactlyTheRowsOfTheOldResult) {
    Typed const old = run(table(3));
    Typed const now = run(with(table(3), {{"G4", "Useful heat"}, {"G5", "=STOVE.USEFULHEAT(B5*1000;20;95;;D5*1000)"}}));
    std::string const formula = " =STOVE.USEFULHEAT(B";
    auto const row = [](int number, std::string const& steam = "D") {
        std::string const at = std::to_string(number);
        return "Run.G" + at + " =STOVE.USEFULHEAT(B" + at + "*1000;20;95;;" + steam + at + "*1000)\n";
    };
    EXPECT_EQ(carried(old, now, run(table(4))), "Run.G4 Useful heat\n" + row(5) + row(6) + row(7) + row(8));
    EXPECT_EQ(carried(old, now, run(table(2, true))), "Run.G4 Useful heat\n" + row(5, "C") + row(6, "C"));
    EXPECT_EQ(carried(old, now, run(with(table(4), {{"E6", "1800"}, {"G7", "windy"}, {"B8", ""}, {"D8", ""}}))),
              "Run.G4 Useful heat\n" + row(5) + row(6) + "left as it was: Run: G7 (not empty)\n");
    EXPECT_EQ(carried(old, now, run(with(table(3), {{"G4", "Weather"}}))),
              "another layout: Run: G4 is not empty, where the word 'Useful heat' is to go\n");
}

TEST(Example, TypedIntoAllRowsIsTheSame) {
    Typed const old = run(table(3));
    Cells all = table(3);
    for (char const* const row : {"5", "6", "7"})
        all["E" + std::string(row)] = "=STOVE.USEFULHEAT(B" + std::string(row) + "*1000;20;95;;D" + row + "*1000)";
    EXPECT_EQ(carried(old, run(all), run(with(table(3), {{"E6", "1800"}}))),
              "Run.E5 =STOVE.USEFULHEAT(B5*1000;20;95;;D5*1000)\n"
              "Run.E7 =STOVE.USEFULHEAT(B7*1000;20;95;;D7*1000)\n"
              "left as it was: Run: E6 (typed over, 1800)\n");
    all["E6"] = "=STOVE.WATERHEAT(B6*1000;20;95)";
    EXPECT_THROW(carried(old, run(all), run(table(3))), std::invalid_argument);
}

TEST(Example, RangesReachAsFarAsTheReadings) {
    Typed const old = run(table(3));
    Typed const now = run(with(table(3), {{"G4", "New"}, {"G5", "=B5*2"}, {"G8", "=STOVE.SERIES(G5:G7)"}}));
    EXPECT_EQ(carried(old, now, run(table(5))), "Run.G4 New\nRun.G5 =B5*2\nRun.G6 =B6*2\nRun.G7 =B7*2\nRun.G8 =B8*2\n"
                                                "Run.G9 =B9*2\nRun.G10 =STOVE.SERIES(G5:G9)\n");
    Typed const part = run(with(table(3), {{"G8", "=STOVE.SERIES(E5:E6)"}}));
    EXPECT_EQ(carried(old, part, run(table(5))),
              "another layout: Run: E5:E6 is a part of a column that is longer or shorter here\n");
}

TEST(Example, RefusesARangeWhoseEndCannotBeTold) {
    Typed const old = run(table(3));
    Typed const now = run(with(table(3), {{"G4", "New"}, {"G8", "=STOVE.SERIES(E5:E7)"}}));
    auto const refuses = [&](Cells const& target) {
        std::string const text = carried(old, now, run(target));
        return text.starts_with("another layout: ") ? "" : text;
    };
    EXPECT_EQ(carried(old, now, run(table(5))), "Run.G4 New\nRun.G10 =STOVE.SERIES(E5:E9)\n");
    EXPECT_EQ(refuses(with(table(4), {{"E14", "9999"}})), "");       // typed somewhere below
    EXPECT_EQ(refuses(with(table(4), {{"A9", "Mittelwert"}})), "");  // a mean in other words
    EXPECT_EQ(refuses(with(table(4), {{"E7", "=$B$2*B7*75"}})), ""); // another formula between
    EXPECT_EQ(carried(old, now, {{"Run", with(table(4), {{"F6", "Std jiko"}}), {}, {"Std jiko"}}}),
              "Run.G4 New\nRun.G9 =STOVE.SERIES(E5:E8)\n"); // a name is no word of totals
    Cells const named{{"A1", "Test 1"}, {"B1", "1"},   {"A2", "Test 2"},
                      {"B2", "2"},      {"A5", "All"}, {"B5", "=SUM(B1:B2)"}};
    Typed const series = run(with(named, {{"B5", "=STOVE.SERIES(B1:B2)"}}));
    EXPECT_EQ(carried(run(named), series, run(named)), "Run.B5 =STOVE.SERIES(B1:B2)\n");
    std::string const more =
        carried(run(named), series, run(with(named, {{"A3", "Test 3"}, {"B3", "3"}, {"B5", "=SUM(B1:B3)"}})));
    EXPECT_NE(more.find("may be longer or shorter here"), std::string::npos) << more;
}

TEST(Example, ComparesUnitsWhereverTheyStand) {
    auto const form_with = [](std::string const& unit, std::string const& other) {
        return run({{"A1", "Water"},
                    {"B1", unit},
                    {"C1", "5"},
                    {"A2", "Wood"},
                    {"B2", other},
                    {"C2", "1"},
                    {"A3", "Heat"},
                    {"C3", "=4.18*C1*75"}});
    };
    auto const now = [&](std::string const& unit) {
        Typed typed = form_with(unit, unit);
        typed[0].cells["C3"] = "=STOVE.WATERHEAT(C1*1000;20;95)";
        return typed;
    };
    for (std::string const unit : {"kg", "(kg)", "in kg"}) {
        EXPECT_EQ(carried(form_with(unit, unit), now(unit), form_with(unit, unit)),
                  "Run.C3 =STOVE.WATERHEAT(C1*1000;20;95)\n");
        EXPECT_EQ(carried(form_with(unit, unit), now(unit), form_with("lb", unit)),
                  "another layout: Run: C1: the unit between it and 'Water' is another one\n");
        Typed swapped = form_with(unit, unit);
        std::swap(swapped[0].cells["A1"], swapped[0].cells["A2"]);
        swapped[0].cells["C3"] = "=4.18*C2*75";
        EXPECT_EQ(carried(form_with(unit, unit), now(unit), swapped), "Run.C3 =STOVE.WATERHEAT(C2*1000;20;95)\n");
    }
    Cells const rows{{"A1", "Water"}, {"B1", "Heat"},        {"A2", "kg"}, {"B2", "kJ"},
                     {"A3", "5"},     {"B3", "=4.18*A3*75"}, {"A4", "6"},  {"B4", "=4.18*A4*75"}};
    Typed const over = run(with(rows, {{"B3", "=STOVE.WATERHEAT(A3*1000;20;95)"}}));
    EXPECT_EQ(carried(run(rows), over, run(rows)),
              "Run.B3 =STOVE.WATERHEAT(A3*1000;20;95)\nRun.B4 =STOVE.WATERHEAT(A4*1000;20;95)\n");
    EXPECT_TRUE(carried(run(rows), over, run(with(rows, {{"A2", "g"}}))).starts_with("another layout: Run: A3"));
}

TEST(Example, TellsSectionsThatUseTheSameWords) {
    Cells const sections{{"A1", "Cold start"}, {"A2", "Water"}, {"B2", "5"}, {"A3", "Heat"}, {"B3", "=4.18*B2*75"},
                         {"A5", "Hot start"},  {"A6", "Water"}, {"B6", "5"}, {"A7", "Heat"}, {"B7", "=4.18*B6*75"}};
    Typed const now = run(with(sections, {{"B3", "=STOVE.WATERHEAT(B2*1000;20;95)"}}));
    EXPECT_EQ(carried(run(sections), now, run(sections)), "Run.B3 =STOVE.WATERHEAT(B2*1000;20;95)\n");
    std::string const swapped =
        carried(run(sections), now, run(with(sections, {{"A1", "Hot start"}, {"A5", "Cold start"}})));
    EXPECT_TRUE(swapped.starts_with("another layout: ")) << swapped;
}

TEST(Example, RefusesASheetThatTwoExamplesFit) {
    TypedSheet const charcoal{"Charcoal", form(), {}, {"Amina"}}, wood{"Wood", form(), {}, {"Amina"}};
    Typed now{charcoal, wood};
    now[0].cells["B7"] = "=STOVE.BOILINGPOINT(1000)";
    now[1].cells["B7"] = "=STOVE.BOILINGPOINT(2000)";
    std::string const two = carried({charcoal, wood}, now, {charcoal, wood});
    EXPECT_EQ(two.find("=STOVE"), std::string::npos) << two;
    EXPECT_NE(two.find("two examples fit it that differ"), std::string::npos) << two;
}

TEST(Example, MovesNoReferenceAlongToWhatIsNamedOtherwise) {
    Typed const old = run(table(3));
    Typed const now = run(with(table(3), {{"E5", "=B2*B5*74+2260*D5"}})); // without its $
    std::string const text = carried(old, now, run(table(3)));
    EXPECT_TRUE(text.starts_with("another layout: ")) << text;
    // With --partly neither it goes anywhere, nor what reads it.
    Typed const more = run(with(table(3), {{"E5", "=B2*B5*74+2260*D5"}, {"G5", "=E5*2"}, {"H5", "=B5*2"}}));
    std::string const part = carried(old, more, run(table(2)), true);
    EXPECT_TRUE(part.starts_with("Run.H5 =B5*2\nRun.H6 =B6*2\nnot carried: Run: E6: it would read B3")) << part;
    EXPECT_NE(part.find("not carried: Run: G5: it reads what is not carried"), std::string::npos) << part;
}

TEST(Example, NothingGoesFromOneResultToAnotherThatReadsAlike) {
    Cells const form{{"A1", "Pot"}, {"B1", "1"},     {"A2", "Full"},   {"B2", "6"},    {"A3", "End"},
                     {"B3", "5"},   {"A4", "Water"}, {"B4", "=B2-B1"}, {"A5", "Left"}, {"B5", "=B3-B2"}};
    EXPECT_EQ(carried(run(form), run(with(form, {{"B4", "=(B2-B1)*1000"}})), run(form)), "Run.B4 =(B2-B1)*1000\n");
    Cells const row{{"A1", "Run"}, {"B1", "Pot"}, {"C1", "Full"}, {"D1", "Left"}, {"E1", "Water"},  {"F1", "Steam"},
                    {"A2", "1"},   {"B2", "1"},   {"C2", "6"},    {"D2", "5"},    {"E2", "=C2-B2"}, {"F2", "=D2-C2"}};
    EXPECT_EQ(carried(run(row), run(with(row, {{"E2", "=(C2-B2)*1000"}})), run(row)), "Run.E2 =(C2-B2)*1000\n");
}

TEST(Example, GoesRightAlongTestsSideBySide) {
    Cells const three{{"B1", "Cold start"},  {"D1", "Hot start"},  {"F1", "Simmer"}, {"A2", "Water"},
                      {"B2", "5"},           {"C2", "kg"},         {"D2", "5"},      {"E2", "kg"},
                      {"F2", "5"},           {"G2", "kg"},         {"A3", "Heat"},   {"B3", "=4.18*B2*75"},
                      {"D3", "=4.18*D2*75"}, {"F3", "=4.18*F2*75"}};
    auto const sheet = [](Cells const& cells) { return Typed{{"Tests", cells, {"B1:C1", "D1:E1", "F1:G1"}, {}}}; };
    Typed const now = sheet(with(three, {{"B3", "=STOVE.WATERHEAT(B2*1000;20;95)"}}));
    EXPECT_EQ(carried(sheet(three), now, sheet(three)),
              "Tests.B3 =STOVE.WATERHEAT(B2*1000;20;95)\nTests.D3 =STOVE.WATERHEAT(D2*1000;20;95)\n"
              "Tests.F3 =STOVE.WATERHEAT(F2*1000;20;95)\n");
    EXPECT_EQ(carried(sheet(three), now, sheet(with(three, {{"E2", "g"}}))),
              "another layout: Tests: D2: its unit is another one than that of B2\n");
}

TEST(Example, FollowsOtherSheetsByTheirLabels) {
    TypedSheet const site{"Site", {{"A1", "Altitude"}, {"B1", "1640"}, {"C1", "m"}}, {}, {}};
    Typed const old{run(form())[0], site};
    Typed const now{run(with(form(), {{"B7", "=STOVE.BOILINGPOINT(Site.B1)"}}))[0], site};
    TypedSheet const there{"Our site's", {{"A4", "Altitude"}, {"B4", "900"}, {"C4", "m"}}, {}, {}};
    EXPECT_EQ(carried(old, now, {run(form())[0], there}), "Run.B7 =STOVE.BOILINGPOINT('Our site''s'.B4)\n");
    std::string const two = carried(old, now, {run(form())[0], there, {"Site", there.cells, {}, {}}});
    EXPECT_NE(two.find("'Site' could be 'Our site's' or 'Site'"), std::string::npos) << two;
    EXPECT_EQ(two.find("=STOVE"), std::string::npos) << two;
}

TEST(Example, CarriesNoNumbersAndNothingThatReadsThem) {
    Typed const old = run(form());
    Typed const now =
        run(with(form(), {{"D3", "1900"}, {"B7", "=STOVE.BOILINGPOINT(D3)"}, {"D7", "=STOVE.BOILINGPOINT(B3)"}}));
    EXPECT_EQ(carried(old, now, run(form())), "Run.D7 =STOVE.BOILINGPOINT(B3)\n");
}

TEST(Example, CarriesNothingThatReadsCellsWithoutNamingThem) {
    Typed const old = run(form());
    for (char const* const formula : {"=INDIRECT(\"B3\")", "=OFFSET(B3;1;0)", "=SUM(B:B)", "=ROW()*B3"}) {
        std::string const text = carried(old, run(with(form(), {{"B7", formula}})), run(form()));
        EXPECT_TRUE(text.starts_with("another layout: ")) << formula << ": " << text;
    }
}

} // namespace
} // namespace hearthcell::tests::archive
