// Which layouts there are: labels and entries, inserted rows, columns that changed places, tables that grew, two
// languages.

#include "extension/archive/inventory/same_words.hpp"
#include "extension/archive/inventory/words.hpp"

#include <gtest/gtest.h>

#include <fstream>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;
using Words = std::vector<std::string>;

/// Labels in column A from row 1 on; an empty word leaves its row out.
SheetFacts form(Words const& words, std::string const& tester = "", int first_row = 0) {
    SheetFacts sheet;
    sheet.name = "Run";
    for (std::size_t row = 0; row < words.size(); ++row)
        if (!words[row].empty())
            sheet.texts.push_back({int(row) + first_row, 0, words[row]});
    if (!tester.empty())
        sheet.texts.push_back({first_row, 1, tester, true});
    return sheet;
}

Words const usual{"Tester", "Altitude", "Water", "Start", "End", "Wood", "Moisture", "Char", "Heat", "Efficiency"};

Words with(Words words, std::size_t at, std::string const& word) {
    words.insert(words.begin() + std::ptrdiff_t(at), word);
    return words;
}
Words replaced(Words words, std::size_t at, std::string const& word) {
    words[at] = word;
    return words;
}

std::vector<Layout> layouts_of(std::vector<SheetFacts> const& sheets, SameWords const& same = {}) {
    Layouts layouts(same);
    for (SheetFacts const& sheet : sheets)
        layouts.add(sheet);
    return layouts.find();
}

/// The sheets of each layout.
std::vector<std::vector<std::size_t>> found(std::vector<SheetFacts> const& sheets, SameWords const& same = {}) {
    std::vector<std::vector<std::size_t>> all;
    for (Layout const& layout : layouts_of(sheets, same))
        all.push_back(layout.sheets);
    return all;
}

using Found = std::vector<std::vector<std::size_t>>;

TEST(Layouts, AreTheSameWhateverTheEntries) {
    EXPECT_EQ(found({form(usual, "Amina"), form(usual, "Jonas"), form(usual, "Amina"), form(usual, "Rehema")}),
              (Found{{0, 1, 2, 3}}));
    EXPECT_EQ(found({form(usual, "Amina"), form(usual, "Jonas")}), (Found{{0, 1}}));
    EXPECT_EQ(found({form(with(usual, 0, "Run of the wet spring")), form(with(usual, 0, "New grate")),
                     form(with(usual, 0, "Flat grate"))}),
              (Found{{0, 1, 2}}))
        << "a title of its own on each";
}

TEST(Layouts, DoNotMindCaseAccentsColonsAndBlanks) {
    EXPECT_EQ(found({form(usual), form(replaced(usual, 1, "ALTITUDE :")), form(replaced(usual, 1, "Áltitude"))}),
              (Found{{0, 1, 2}}));
}

TEST(Layouts, WithAnInsertedRowAreOthersAndNear) {
    Words const longer = with(usual, 2, "Air");
    auto const all = layouts_of({form(usual), form(usual), form(usual), form(longer), form(longer)});
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[1].sheets, (std::vector<std::size_t>{3, 4}));
    EXPECT_EQ(all[1].near, std::size_t{0});
    EXPECT_NE(all[1].differs.find("'Air' in A3 is new"), std::string::npos) << all[1].differs;
    EXPECT_NE(all[1].differs.find("'Water' in A4, not A3"), std::string::npos) << all[1].differs;
    EXPECT_TRUE(all[1].other_words.empty());
}

TEST(Layouts, OfASingleSheetWithAnInsertedRowIsItsOwn) {
    EXPECT_EQ(found({form(usual), form(usual), form(with(usual, 4, "Air"))}), (Found{{0, 1}, {2}}));
}

TEST(Layouts, WithAnotherWordInAPlaceProposeThatItIsTheSame) {
    auto const all = layouts_of(
        {form(usual), form(usual), form(usual), form(replaced(usual, 5, "Fuel")), form(replaced(usual, 5, "Fuel"))});
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[1].differs, "'Fuel' in A6 for 'Wood'");
    EXPECT_NE(proposed_same_words(all).find("\n# Fuel = Wood\n"), std::string::npos);
    EXPECT_EQ(found({form(usual), form(usual), form(usual), form(replaced(usual, 5, "Fuel")),
                     form(replaced(usual, 5, "Fuel"))},
                    {{"fuel", "wood"}}),
              (Found{{0, 1, 2, 3, 4}}));
}

TEST(Layouts, InTwoLanguagesAreNearByTheirPlaces) {
    Words const french{"Testeur", "Altitude", "Eau",     "Debut",   "Fin",
                       "Bois",    "Humidite", "Charbon", "Chaleur", "Rendement"};
    auto const all = layouts_of({form(usual), form(usual), form(usual), form(french), form(french)});
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[1].near, std::size_t{0});
    EXPECT_EQ(all[1].other_words.size(), 9U);
    EXPECT_NE(proposed_same_words(all).find("# Humidite = Moisture\n"), std::string::npos);
}

/// Headings in row 4, a name in each row, and a mean below.
SheetFacts table(std::vector<std::string> const& headings, int runs, std::string const& of) {
    SheetFacts sheet;
    for (std::size_t column = 0; column < headings.size(); ++column)
        sheet.texts.push_back({3, int(column), headings[column]});
    for (int run = 0; run < runs; ++run)
        sheet.texts.push_back({4 + run, 0, of + " run " + std::string(std::size_t(run) + 1, 'x')});
    sheet.texts.push_back({4 + runs, 0, "Mean"});
    return sheet;
}

TEST(Layouts, OfTablesAreTheirHeadingsHoweverTheyGrew) {
    Words const headings{"Run", "Water", "Start", "End", "Wood", "Efficiency"};
    Words const swapped{"Run", "Water", "End", "Start", "Wood", "Efficiency"};
    auto const all = layouts_of({table(headings, 5, "oak"), table(headings, 30, "elm"), table(headings, 90, "ash"),
                                 table(swapped, 40, "fir"), table(swapped, 41, "yew")});
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].sheets, (std::vector<std::size_t>{0, 1, 2}));
    EXPECT_EQ(all[1].near, std::size_t{0});
    EXPECT_EQ(all[1].differs, "'End' in C4, not D4; 'Start' in D4, not C4");
}

TEST(Layouts, OfStrangersAreNotMixed) {
    Words const shopping{"Tester", "Bread", "Salt", "Rope", "Nails", "Paint"},
        rota{"Tester", "Monday", "Tuesday", "Friday", "Sunday"};
    EXPECT_EQ(found({form(usual), form(shopping), form(rota), form(usual)}), (Found{{0, 3}, {1}, {2}}));
    EXPECT_EQ(found({SheetFacts{}, form(usual), SheetFacts{}}), (Found{{1}})) << "empty sheets have none";
    EXPECT_TRUE(found({}).empty());
}

TEST(Words, ThatReadAsNumbersTimesOrDatesAreEntries) {
    for (char const* const entry : {"12", "12,5", "31:40", "12'45\"", "1 h 5 min", "2019-03-05", "5 March 2016",
                                    "12.05.17", "3:15 pm", "14 %", "12 août"})
        EXPECT_TRUE(reads_as_entry(entry)) << entry;
    for (char const* const label : {"Wood", "Run 1", "CO2", "T2 end", "Water, kg", "1st pot", "h"})
        EXPECT_FALSE(reads_as_entry(label)) << label;
    for (char const* const number : {"12", "0,42", "3.5", " 7 ", "1 200", "+5"})
        EXPECT_TRUE(reads_as_number(number)) << number;
    for (char const* const other : {"", "1.2.3", "12:30", "5 kg", ",", "March"})
        EXPECT_FALSE(reads_as_number(other)) << other;
}

TEST(SameWordsFile, IsReadLineByLine) {
    auto const file = std::filesystem::path(testing::TempDir()) / "same-words.txt";
    std::ofstream(file) << "# a = b\n\nFuel = Wood\r\nBois = Fuel\nWood = Firewood\n";
    SameWords const same = same_words_in(file);
    EXPECT_EQ(same, (SameWords{{"bois", "firewood"}, {"fuel", "firewood"}, {"wood", "firewood"}}));
    std::ofstream(file) << "Fuel is Wood\n";
    EXPECT_THROW((void)same_words_in(file), std::invalid_argument);
    EXPECT_THROW((void)same_words_in("/nowhere/at/all"), std::invalid_argument);
}

} // namespace
} // namespace hearthcell::tests::archive
