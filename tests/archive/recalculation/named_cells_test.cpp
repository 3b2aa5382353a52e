// What --set puts into cells and --collect takes from them: formulas, blocks, and names that are nowhere.

#include "tests/archive/runs/pages.hpp"
#include "tests/archive/runs/reports.hpp"

#include "extension/office/document.hpp"

namespace hearthcell::tests::archive {
namespace {

/// Two workbooks with a table each, of two and of four runs. All figures are invented.
std::filesystem::path seasons() {
    static std::filesystem::path const folder = [] {
        auto const input = fresh_folder("workbooks with tables") / "input";
        std::filesystem::create_directories(input);
        office::Office office({.package = PACKAGE});
        for (int const runs : {2, 4}) {
            office::Document workbook = office::Document::blank(office);
            office::Sheet sheet = workbook.sheet(0);
            sheet.text("A1", "Altitude");
            sheet.number("B1", 1240 + runs);
            sheet.text("C1", "kept");
            sheet.formula("D1", "=B1+1");
            for (int run = 1; run <= runs; ++run) {
                std::string const row = std::to_string(3 + run);
                sheet.number("A" + row, run);
                sheet.number("B" + row, 500 + run);
                sheet.formula("C" + row, "=STOVE.DRYMASS(B" + row + ";0.5)");
            }
            sheet.text("B9", "below a gap");
            workbook.save(input / ("of " + std::to_string(runs) + ".ods"));
        }
        return input;
    }();
    return folder;
}

Ended run_on_seasons(std::string const& name, Words const& further) {
    fresh_folder(name);
    Words words{seasons(), "--output", output_of(name), "--workers", "1"};
    words.insert(words.end(), further.begin(), further.end());
    return run(name, words);
}

} // namespace

TEST(Set, PutsAFormulaIntoACell) {
    Ended const ended =
        run_on_seasons("set a formula", {"--set", "Sheet1.E1==STOVE.BOILINGPOINT(B1)", "--set",
                                         "Sheet1.C1==Sheet1.B1*2", "--collect", "Sheet1.E1,Sheet1.C1", "--no-summary"});
    EXPECT_EQ(ended.status, 0) << ended.complained << text_of(ended.output / "problems.csv");
    auto const rows = read_csv(ended.output / "collected.csv");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].at("Sheet1.E1").substr(0, 5), "95.84"); // at 1242 m, as the README's 95.85 at 1240 m
    EXPECT_EQ(rows[0].at("Sheet1.E1 unit"), "°C");
    EXPECT_EQ(rows[0].at("Sheet1.C1"), "2484");
    EXPECT_EQ(rows[1].at("Sheet1.C1"), "2488");
    EXPECT_EQ(ended.said.find("saved without a result"), std::string::npos) << "a formula that is set never had one";
    office::Office package({.package = PACKAGE});
    office::Document copy = office::Document::open(package, ended.output / "of 2.ods");
    EXPECT_EQ(copy.sheet(0).formula("C1"), "=Sheet1.B1*2");
}

TEST(Set, RefusesAFormulaThatTheOfficeDoesNotKnowAndKeepsTheCell) {
    Ended const ended =
        run_on_seasons("set a wrong formula", {"--set", "Sheet1.C1==1+*2", "--set", "Sheet1.B1==NOSUCH(1)", "--set",
                                               "Sheet1.D1==STOVE.NOSUCH(B1)", "--set", "Sheet1.A4==nowhere+1", "--set",
                                               "Sheet1.E1==1/0", "--collect",
                                               "Sheet1.C1,Sheet1.B1,Sheet1.D1,Sheet1.A4,"
                                               "Sheet1.E1",
                                               "--no-summary"});
    EXPECT_EQ(ended.status, 1);
    Words details;
    for (Row const& row : read_csv(ended.output / "problems.csv"))
        if (row.at("file") == "of 2.ods")
            details.push_back(row.at("reason") + ": " + row.at("detail"));
    std::string const ending = " is no formula that LibreOffice knows (";
    EXPECT_EQ(details, (Words{"not set: Sheet1.C1 keeps what it has: =1+*2" + ending + "Err:510)",
                              "not set: Sheet1.B1 keeps what it has: =NOSUCH(1)" + ending + "#NAME?)",
                              "not set: Sheet1.D1 keeps what it has: =STOVE.NOSUCH(B1)" + ending + "#NAME?)",
                              "not set: Sheet1.A4 keeps what it has: =nowhere+1" + ending + "#NAME?)",
                              "new errors: 1 cell: Sheet1.E1 #DIV/0!, =1/0"}));
    Row const row = read_csv(ended.output / "collected.csv").at(0);
    EXPECT_EQ(row.at("Sheet1.C1"), "kept");
    EXPECT_EQ(row.at("Sheet1.B1"), "1242");
    EXPECT_EQ(row.at("Sheet1.D1"), "1243");
    EXPECT_EQ(row.at("Sheet1.A4"), "1");
    EXPECT_EQ(row.at("Sheet1.E1"), "#DIV/0!") << "an error that it computes is its result";
}

TEST(Set, RefusesAFormulaWhoseBracketsDoNotMatchBeforeAnythingIsDone) {
    for (auto const& [formula, why] : std::map<std::string, std::string>{
             {"=SUM(A1", "not closed"}, {"=1)+(2", "cannot be read from ')+(2' on"}, {"=", "no formula"}}) {
        Ended const ended = run_on_seasons("set half a formula", {"--set", "Sheet1.C1=" + formula});
        EXPECT_EQ(ended.status, 2) << formula;
        EXPECT_NE(ended.complained.find(why), std::string::npos) << formula << ": " << ended.complained;
        EXPECT_FALSE(std::filesystem::exists(ended.output));
    }
}

TEST(Collect, GivesARowForEachRowOfABlock) {
    Ended const ended = run_on_seasons("collect a block", {"--collect", "Sheet1.A4:C9,Sheet1.B1", "--dry-run"});
    EXPECT_EQ(ended.status, 0) << ended.complained;
    auto const rows = read_csv(ended.output / "collected.csv");
    Words lines;
    for (Row const& row : rows)
        lines.push_back(row.at("file") + " " + row.at("Sheet1.A4:C9 row") + " " + row.at("Sheet1.A4:A9") + " " +
                        row.at("Sheet1.B4:B9") + " " + row.at("Sheet1.C4:C9") + row.at("Sheet1.C4:C9 unit") + " " +
                        row.at("Sheet1.B1"));
    EXPECT_EQ(lines,
              (Words{"of 2.ods 4 1 501 250.5g 1242", "of 2.ods 5 2 502 251g 1242", "of 2.ods 9  below a gap  1242",
                     "of 4.ods 4 1 501 250.5g 1244", "of 4.ods 5 2 502 251g 1244", "of 4.ods 6 3 503 251.5g 1244",
                     "of 4.ods 7 4 504 252g 1244", "of 4.ods 9  below a gap  1244"}));
    PageRows const page = table_below(pages_of(ended.output / "summary.ods").at("Collected"), "file");
    EXPECT_EQ(page.size(), 8U);
    EXPECT_EQ(number_in(page.at(7).at(1)), 9) << "the row of the sheet";
}

TEST(Collect, TakesOfWholeColumnsWhatIsUsed) {
    Ended const ended = run_on_seasons("collect columns", {"--collect", "Sheet1.A:B", "--dry-run", "--no-summary"});
    EXPECT_EQ(read_csv(ended.output / "collected.csv").size(), 4U + 6U);
    EXPECT_EQ(csv_headings(ended.output / "collected.csv").at(2), "Sheet1.A");
}

TEST(Collect, SaysWhatIsInNoWorkbookAndWhatIsTooLarge) {
    Ended const ended = run_on_seasons("collect what is nowhere", {"--collect",
                                                                   "efficency,Sheet1.B1,No sheet.A1:B2,"
                                                                   "Sheet1.A1:Z2000",
                                                                   "--dry-run", "--no-summary"});
    EXPECT_EQ(ended.status, 1);
    EXPECT_NE(ended.said.find("No workbook has efficency: is that what it is called?"), std::string::npos)
        << ended.said;
    std::map<std::string, std::string> reasons;
    for (Row const& row : read_csv(ended.output / "problems.csv"))
        reasons[row.at("file")] = row.at("reason");
    EXPECT_EQ(reasons, (std::map<std::string, std::string>{{"efficency", "in no workbook"},
                                                           {"No sheet.A1:B2", "in no workbook"},
                                                           {"of 2.ods", "not collected"},
                                                           {"of 4.ods", "not collected"}}));
    EXPECT_EQ(read_csv(ended.output / "collected.csv").size(), 2U) << "a workbook has a row at least";
    Ended const wide = run_on_seasons("collect rows", {"--collect", "Sheet1.1:3"});
    EXPECT_EQ(wide.status, 2);
    EXPECT_NE(wide.complained.find("16384 columns wide"), std::string::npos) << wide.complained;
}

TEST(Collect, IsJoinedWithItsBlocks) {
    Words const further{"--collect", "Sheet1.A4:C9,nowhere", "--dry-run", "--no-summary"};
    Ended const ended = run_on_seasons("collect to join", further);
    fresh_folder("joined blocks");
    Ended const joined =
        run("joined blocks", {"--merge", ended.output, "--output", output_of("joined blocks"), "--no-summary"});
    for (char const* report : {"collected.csv", "problems.csv", "summary.txt"})
        EXPECT_EQ(text_of(joined.output / report), text_of(ended.output / report)) << report;
}

} // namespace hearthcell::tests::archive
