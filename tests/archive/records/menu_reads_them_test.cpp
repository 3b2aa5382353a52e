// The menu reads the program's reports with a reader of its own, which must not ask for the library that the program
// has.

#include "extension/archive/records/csv.hpp"
#include "extension/menu/plan.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace hearthcell::menu {

namespace {

class ReportsOfAPlan : public testing::Test {
protected:
    ReportsOfAPlan() { std::filesystem::create_directories(folder); }
    ~ReportsOfAPlan() override { std::filesystem::remove_all(folder); }

    void write(char const* name, std::vector<std::vector<std::string>> const& rows) const {
        std::ofstream file(folder / name, std::ios::binary);
        for (auto const& row : rows)
            file << archive::csv_row(row);
    }

    std::filesystem::path const folder = std::filesystem::path(READERS) / "reports of a plan";
};

} // namespace

TEST_F(ReportsOfAPlan, AreReadBackAsTheyWereMeant) {
    std::vector<std::string> const fields{"plain",
                                          "with, comma",
                                          "with \"quotes\"",
                                          "two\nlines\r\nor three",
                                          "=A1*2",
                                          "\\=A1",
                                          "\\\\",
                                          "a;=b;\\c\t=d|+e",
                                          "-3.5",
                                          "",
                                          "  =blank",
                                          "@x",
                                          "é – “…”"};
    std::vector<std::string> columns;
    for (std::size_t place = 0; place < fields.size(); ++place)
        columns.push_back("column " + std::to_string(place));
    auto const rows = csv_rows(archive::csv_row(columns) + archive::csv_row(fields) + archive::csv_row(fields));
    ASSERT_EQ(rows.size(), 2U);
    for (std::size_t place = 0; place < fields.size(); ++place)
        EXPECT_EQ(in_column(rows[1], columns[place]), fields[place]);
    EXPECT_EQ(in_column(rows[0], "no such column"), "");
}

TEST_F(ReportsOfAPlan, MayBeMissingShortOrLong) {
    EXPECT_TRUE(csv_rows("").empty());
    EXPECT_TRUE(csv_rows("a,b\r\n").empty());
    auto const ragged = csv_rows("a,b\r\n1\r\n1,2,3\n\"open");
    ASSERT_EQ(ragged.size(), 3U);
    EXPECT_EQ(in_column(ragged[0], "b"), "");
    EXPECT_EQ(in_column(ragged[1], "b"), "2");
    EXPECT_EQ(in_column(ragged[2], "a"), "open");
    Plan const none = read_plan((folder / "nowhere").string());
    EXPECT_FALSE(none.carries_anything());
    std::vector<std::vector<std::string>> many{{"new", "old"}};
    many.insert(many.end(), 400'000, {"Sheet1.C11", "Sheet1.B11"});
    write("pairs.csv", many);
    Plan const long_one = read_plan(folder.string());
    EXPECT_GT(long_one.pairs.size(), 100'000U);
    EXPECT_EQ(argument_of_pair(long_one.pairs.back()), "Sheet1.C11=Sheet1.B11") << "cut within a row";
}

TEST_F(ReportsOfAPlan, BecomeLines) {
    write("carried.csv", {{"example", "sheet", "cell", "kind", "before", "after", "note"},
                          {"1", "Day 1", "C4", "formula", "=100-B3/300", "=STOVE.BOILINGPOINT(B3)", ""},
                          {"1", "Day 1", "A1", "word", "Ann", "Ben", "a word that replaces another"}});
    write("constants.csv", {{"example", "sheet", "cell", "function", "argument", "value", "sheets"},
                            {"1", "Day 1", "C4", "DRYMASS", "moisture", "0.14", "212"}});
    write("read.csv", {{"function", "argument", "workbooks", "lowest", "median", "highest", "odd"},
                       {"DRYMASS", "mass", "84", "310", "520", "0.61", "kilograms in 84 workbooks?"}});
    Plan plan = read_plan(folder.string());
    EXPECT_TRUE(plan.carries_anything());
    EXPECT_EQ(lines_of_cells(plan, "instead of %1", "stays: %1"),
              "Day 1.C4: =STOVE.BOILINGPOINT(B3)  (instead of =100-B3/300)\n"
              "Day 1.A1: stays: a word that replaces another\n");
    EXPECT_EQ(lines_of_constants(plan), "Day 1.C4: DRYMASS, moisture = 0.14  (212)\n");
    EXPECT_EQ(lines_of_readings(folder.string()), "DRYMASS, mass: 310 … 520 … 0.61  (kilograms in 84 workbooks?)\n");
    plan.cells.erase(plan.cells.begin());
    EXPECT_FALSE(plan.carries_anything()) << "what stays is not carried";
}

} // namespace hearthcell::menu
