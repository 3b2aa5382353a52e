// New results beside old ones: each row, the methods, what the summary says of them, and its page.

#include "tests/archive/runs/pages.hpp"
#include "tests/archive/runs/reports.hpp"

#include "extension/office/document.hpp"

#include <cmath>

namespace hearthcell::tests::archive {
namespace {

/// Runs as old sheets have them: readings in B, results by hand in E, as WBT 3 has them in 2014 and with the efficiency
/// in per cent; by another rule, that no method has, in 2019. All figures are invented.
void make_run(office::Office& office, std::filesystem::path const& file, int number, bool late) {
    office::Document workbook = office::Document::blank(office);
    office::Sheet sheet = workbook.sheet(0);
    double const heated = 4800 + 30 * number, steam = 150 + 10 * number, wood = 700 + 20 * number;
    int row = 1;
    for (double const reading : {heated, 18.5 + number, 95.0, steam, wood, 0.12, 40.0, 18.5})
        sheet.number("B" + std::to_string(row++), reading);
    sheet.formula("E1", late ? "=4.4*B1*(B3-B2)/1000+2260*B4/1000" : "=4.186*B1*(B3-B2)/1000+2260*B4/1000");
    sheet.formula("E2", "=(B5*(1-1.12*B6)-1.5*B7)*B8");
    sheet.formula("E3", late ? "=E1/E2" : "=100*E1/E2");
    workbook.save(file);
}

std::filesystem::path old_runs() {
    static std::filesystem::path const folder = [] {
        auto const input = fresh_folder("old runs") / "input";
        std::filesystem::create_directories(input / "2014");
        std::filesystem::create_directories(input / "2019");
        office::Office office({.package = PACKAGE});
        for (int number = 1; number <= 3; ++number) {
            make_run(office, input / "2014" / ("run " + std::to_string(number) + ".xls"), number, false);
            make_run(office, input / "2019" / ("run " + std::to_string(number) + ".ods"), number, true);
        }
        return input;
    }();
    return folder;
}

/// The functions are typed beside the old formulas; efficiency knows its method through the cells that it reads alone.
Words const with_functions{"--set",     "Sheet1.F1==STOVE.USEFULHEAT(B1;B2;B3;;B4)",
                           "--set",     "Sheet1.F2==STOVE.EQUIVALENTDRYFUEL(B5;B6;B8;B7)*B8",
                           "--set",     "Sheet1.F3==STOVE.EFFICIENCY(F1;F2)",
                           "--compare", "Sheet1.F3=Sheet1.E3",
                           "--compare", "Sheet1.F1=Sheet1.E1"};

Ended compare_runs(std::string const& name, Words const& further) {
    fresh_folder(name);
    Words words{"--output", output_of(name), "--workers", "2"};
    words.insert(words.end(), with_functions.begin(), with_functions.end());
    words.insert(words.end(), further.begin(), further.end());
    return run(name, words);
}

Ended const& compared() {
    static Ended const ended = compare_runs("old beside new", {old_runs()});
    return ended;
}

double number(Row const& row, std::string const& column) {
    return std::stod(row.at(column));
}

} // namespace

TEST(OldAndNew, StandBesideEachOtherRowByRow) {
    EXPECT_EQ(compared().status, 0) << compared().complained << text_of(compared().output / "problems.csv");
    auto const rows = read_csv(compared().output / "old-and-new.csv");
    ASSERT_EQ(rows.size(), 12U);
    for (Row const& row : rows) {
        std::string const run = row.at("workbook");
        bool const heat = row.at("compared") == "Sheet1.F1=Sheet1.E1", late = run.starts_with("2019");
        double const which = run.at(9) - '0', heated = 4.800 + 0.03 * which, rise = 76.5 - which,
                     steam = 0.15 + 0.01 * which;
        double const useful = (late ? 4.4 : 4.186) * heated * rise + 2260 * steam;
        double const wood = ((700 + 20 * which) * (1 - 1.12 * 0.12) - 60) * 18.5;
        double const old = heat ? useful : useful / wood * (late ? 1 : 100), fair = heat || late ? old : old / 100;
        EXPECT_NEAR(number(row, "old"), old, 1e-12 * old) << run;
        EXPECT_EQ(row.at("factor"), heat || late ? "" : "100") << run;
        EXPECT_NEAR(number(row, "difference"), number(row, "new") - fair, 1e-12) << run;
        EXPECT_NEAR(number(row, "relative_difference"), number(row, "new") / fair - 1, 2e-6) << run;
        EXPECT_EQ(row.at("sheet") + "." + row.at("new_cell") + " " + row.at("old_cell") + " " + row.at("row"),
                  heat ? "Sheet1.F1 E1 1" : "Sheet1.F3 E3 3");
        EXPECT_EQ(row.at("properties"), row.at("new")) << run;
        double const by_wbt = 4.186 * heated * rise + 2260 * steam;
        EXPECT_NEAR(number(row, "WBT 3"), heat ? by_wbt : by_wbt / wood, 1e-12 * by_wbt) << "by hand: " << run;
        EXPECT_NE(row.at("ISO 19867-1"), row.at("WBT 3"));
    }
}

TEST(OldAndNew, SayWhichMethodTheOldNumbersFollow) {
    for (char const* said :
         {"Sheet1.F3=Sheet1.E3", "WBT 3, within 0.0001 %", "WBT 4.2.3 or WBT 3, within 0.0001 %", "none within 1 %",
          "Sheet1.F3=Sheet1.E3: 3 of 6 old results are in per cent beside fractions",
          "Found: 0 formulas with functions of Hearthcell in 0 workbooks, 18 formulas without; this run "
          "put 18 into 6 workbooks"})
        EXPECT_NE(compared().said.find(said), std::string::npos) << said << " in\n" << compared().said;
    EXPECT_EQ(compared().said.find("saved without"), std::string::npos);
}

TEST(OldAndNew, HaveAPageWithAChart) {
    auto const pages = pages_of(compared().output / "summary.ods");
    ASSERT_TRUE(pages.contains("Old and new"));
    PageRows const table = table_below(pages.at("Old and new"), "new=old");
    ASSERT_EQ(table.size(), 6U);
    EXPECT_EQ(text_in(table[1].at(1)), "2014");
    EXPECT_EQ(number_in(table[1].at(2)), 3);
    EXPECT_EQ(text_in(table[1].at(6)), "WBT 3, within 0.0001 %");
    EXPECT_EQ(text_in(table[2].at(6)), "none within 1 %");
}

TEST(OldAndNew, LeaveTheCopiesWithTheMethodTheyHad) {
    office::Office package({.package = PACKAGE});
    for (char const* name : {"2014/run 1.xls", "2019/run 2.ods"}) {
        office::Document copy = office::Document::open(package, compared().output / name);
        EXPECT_EQ(copy.sheet(0).formula("F1").find("WBT"), std::string::npos) << copy.sheet(0).formula("F1");
    }
}

TEST(OldAndNew, AreTheSameInCopiesOfValues) {
    Ended const values = compare_runs("old beside values", {old_runs(), "--values", "--no-summary"});
    EXPECT_EQ(text_of(values.output / "old-and-new.csv"), text_of(compared().output / "old-and-new.csv"));
    office::Office bare;
    office::Document copy = office::Document::open(bare, values.output / "2019/run 2.ods");
    office::CellValue const heat = copy.sheet(0).value("F1");
    ASSERT_TRUE(std::holds_alternative<double>(heat));
    for (Row const& row : read_csv(compared().output / "old-and-new.csv"))
        if (row.at("workbook") == "2019/run 2.ods" && row.at("new_cell") == "F1") {
            EXPECT_NEAR(std::get<double>(heat), number(row, "new"), 1e-9);
        }
}

TEST(OldAndNew, AreJoined) {
    Words const base{"--base", old_runs(), "--no-summary"};
    Words outputs{"--merge"};
    for (char const* year : {"2014", "2019"}) {
        Words words = base;
        words.push_back(old_runs() / year);
        outputs.push_back(compare_runs(std::string("old beside new of ") + year, words).output);
    }
    fresh_folder("old beside new joined");
    outputs.insert(outputs.end(), {"--output", output_of("old beside new joined"), "--no-summary"});
    Ended const joined = run("old beside new joined", outputs);
    for (char const* report : {"old-and-new.csv", "summary.txt", "problems.csv"})
        EXPECT_EQ(text_of(joined.output / report), text_of(compared().output / report)) << report;
    EXPECT_TRUE(has_proper_line_ends(joined.output / "old-and-new.csv"));
}

TEST(OldAndNew, OfAColumnSayWhatCannotBeCompared) {
    auto const input = fresh_folder("old columns") / "input";
    std::filesystem::create_directories(input);
    {
        office::Office office({.package = PACKAGE});
        office::Document workbook = office::Document::blank(office);
        office::Sheet sheet = workbook.sheet(0);
        sheet.text("C1", "Dry, g");
        sheet.text("D1", "Dry wood");
        for (int row = 2; row <= 9; ++row) {
            std::string const at = std::to_string(row);
            sheet.number("A" + at, 500);
            sheet.number("B" + at, row == 6 ? 12 : 0.12);
            if (row != 5)
                sheet.formula("C" + at, row == 3   ? "=1/0"
                                        : row == 4 ? "=\"none\""
                                        : row == 8 ? "=A8*(1-B8)*1000"
                                                   : "=A" + at + "*(1-B" + at + ")");
            if (row < 9)
                sheet.formula("D" + at, "=STOVE.DRYMASS(A" + at + ";B" + at + ")");
        }
        workbook.save(input / "table.ods");
    }
    fresh_folder("columns");
    Ended const ended = run("columns", {input, "--output", output_of("columns"), "--dry-run", "--no-summary",
                                        "--compare", "Sheet1.D:D=Sheet1.C:C", "--compare", "Sheet1.D1=nowhere"});
    Words lines;
    for (Row const& row : read_csv(ended.output / "old-and-new.csv"))
        lines.push_back(row.at("row") + " " + row.at("old") + " " + row.at("new") + " " + row.at("difference") + " " +
                        row.at("remark").substr(0, 58));
    EXPECT_EQ(lines, (Words{"2 440 440 0 ", "3 #DIV/0! 440  The old result is an error.",
                            "4 none 440  The old result is a text.", "5  440  There is no old result.",
                            "6 -5500 #NUM!  The new result is an error. moisture is 12, outside 0 to 0", "7 440 440 0 ",
                            "8 440000 440 -439560 The old result is about 1000 times the new one: in another",
                            "9 440   There is no new result."}));
    EXPECT_NE(ended.said.find("5 rows have a number on one side only"), std::string::npos) << ended.said;
    EXPECT_NE(ended.said.find("No workbook has nowhere"), std::string::npos) << ended.said;
    EXPECT_EQ(ended.status, 1);
}

TEST(OldAndNew, ObeyNoFolderAndCountAPairOnceThatIsGivenTwice) {
    auto const input = fresh_folder("odd folder") / "input";
    std::filesystem::create_directories(input / "x\x1b[31mred");
    std::filesystem::copy_file(old_runs() / "2014/run 1.xls", input / "x\x1b[31mred/run.xls");
    std::filesystem::create_directories(input / "other");
    std::filesystem::copy_file(old_runs() / "2014/run 2.xls", input / "other/run.xls");
    Ended const ended =
        compare_runs("name for a terminal", {input, "--no-summary", "--compare", "Sheet1.F3=Sheet1.E3"});
    EXPECT_EQ(ended.said.find('\x1b'), std::string::npos) << ended.said;
    EXPECT_NE(ended.said.find("x\\x1b[31mred"), std::string::npos) << ended.said;
    EXPECT_EQ(read_csv(ended.output / "old-and-new.csv").size(), 4U);
    EXPECT_NE(ended.said.find("Sheet1.F3=Sheet1.E3: 2 of 2 old results"), std::string::npos) << ended.said;
}

TEST(OldAndNew, AreRefusedWhereTheyCannotStandBesideEachOther) {
    for (auto const& [words, why] :
         std::map<Words, std::string>{{{"--compare", "Sheet1.F3"}, "is not NEW=OLD"},
                                      {{"--compare", "Sheet1.F3:F9=Sheet1.E3:E8"}, "blocks of different size"},
                                      {{"--compare", "Sheet1.F3=Sheet1.E3", "--inventory"}, "--inventory only reads"},
                                      {{"--compare", "Sheet1.F3=Sheet1.E3", "--merge"}, "--merge joins"}}) {
        fresh_folder("not to be compared");
        Words all{old_runs(), "--output", output_of("not to be compared")};
        all.insert(all.end(), words.begin(), words.end());
        Ended const ended = run("not to be compared", all);
        EXPECT_EQ(ended.status, 2) << why;
        EXPECT_NE(ended.complained.find(why), std::string::npos) << ended.complained;
    }
}

} // namespace hearthcell::tests::archive
