// What a run writes is harmless to open, whatever stands in the workbooks and their names.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/office/document.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"
#include "tests/archive/made/flat_odf.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <fstream>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::tests::archive {
namespace {

/// Ways to open a CSV file: the separator (comma, semicolon, tab, bar), quoted fields as text, special numbers
/// detected, blanks trimmed, formulas evaluated.
std::vector<std::string> ways_to_open() {
    std::vector<std::string> ways;
    for (char const* separator : {"44", "59", "9", "124"})
        for (char const* quoted : {"true", "false"})
            for (char const* special : {"true", "false"})
                for (char const* trimmed : {"true", "false"})
                    for (char const* evaluated : {"true", "false"})
                        ways.push_back(std::string(separator) + std::string(",34,76,1,,1033,") + quoted + "," +
                                       special + ",false,false," + trimmed + ",0," + evaluated);
    return ways;
}

struct Opened {
    sal_Int32 formulas = 0;
    std::vector<std::string> texts; // of all cells
};

Opened opened(office::Office& office, std::filesystem::path const& file, std::string const& way) {
    auto const option = [](char const* name, css::uno::Any const& value) {
        return css::beans::PropertyValue(office::wide(name), 0, value, css::beans::PropertyState_DIRECT_VALUE);
    };
    css::beans::PropertyValue const options[] = {
        option("Hidden", css::uno::Any(true)),
        option("FilterName", css::uno::Any(office::wide("Text - txt - csv (StarCalc)"))),
        option("FilterOptions", css::uno::Any(office::wide(way)))};
    Reference<css::sheet::XSpreadsheetDocument> const document(
        office.desktop()->loadComponentFromURL(office::file_url(file), "_blank", 0,
                                               css::uno::Sequence<css::beans::PropertyValue>(options, 3)),
        UNO_QUERY_THROW);
    Reference<css::sheet::XSpreadsheet> const sheet(
        Reference<css::container::XIndexAccess>(document->getSheets(), UNO_QUERY_THROW)->getByIndex(0),
        UNO_QUERY_THROW);
    Reference<css::sheet::XSheetCellCursor> const cells = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor> const used(cells, UNO_QUERY_THROW);
    used->gotoStartOfUsedArea(false);
    used->gotoEndOfUsedArea(true);
    Opened found;
    found.formulas = Reference<css::sheet::XCellRangesQuery>(cells, UNO_QUERY_THROW)
                         ->queryContentCells(css::sheet::CellFlags::FORMULA)
                         ->getRangeAddresses()
                         .getLength();
    for (auto const& row : Reference<css::sheet::XCellRangeFormula>(cells, UNO_QUERY_THROW)->getFormulaArray())
        for (rtl::OUString const& text : row)
            found.texts.push_back(office::narrow(text));
    Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true);
    return found;
}

std::vector<std::string> const starts{"=1+1",       "+1+1",
                                      "-1+1",       "@SUM(1;2)",
                                      "\t=1+1",     " =1+1",
                                      "'=1+1",      "\"=1+1",
                                      "\u200b=1+1", "\\=1+1",
                                      "a;=1+1",     "a|=1+1;\\=1+1",
                                      "a\t=1+1",    "=HYPERLINK(\"http://127.0.0.1:9/\";\"x\")"};

/// Formulas that give such texts now, and gave others.
Workbook with_starts(std::filesystem::path const& path, std::string const& sheet) {
    std::vector<std::vector<Cell>> rows;
    for (std::string const& start : starts) {
        std::string quoted;
        for (char const letter : start)
            quoted += letter == '"' ? "\"\"" : std::string(1, letter);
        rows.push_back(
            {{.stored = start + " before", .formula = "=\"" + quoted + "\"&\" after\"", .now = start + " after"}});
    }
    rows.push_back({{.stored = -3.2, .formula = "=-3.5", .now = -3.5}});
    return {.path = path, .sheets = {{.name = sheet, .rows = rows}}, .names = {}};
}

/// The run that all these tests look at.
Ended const& done() {
    static Ended const ended = [] {
        std::filesystem::path const folder = fresh_folder("harmless") / "input";
        std::filesystem::create_directories(folder);
        int number = 0;
        for (std::string const& start : starts) {
            std::string name = start;
            std::ranges::replace(name, '/', '_');
            write_odf(with_starts({}, number % 2 == 0 ? "-cells" : "@cells"), folder / (name + ".fods"));
            std::ofstream(folder / (name + std::to_string(++number) + ".ods")) << "words\n";
        }
        for (char const* name : {"a\x1b[31mred", "a\x9b[2J", "a\xff", "a\xfe", "a\u202eb", "line\nbreak"})
            std::ofstream(folder / (std::string(name) + ".ods")) << "words\n";
        return run("harmless", {folder, "--output", output_of("harmless"), "--workers", "2", "--collect",
                                "'-cells'.A1,'@cells'.A1,'-cells'.A12", "--values"});
    }();
    return ended;
}

} // namespace

TEST(Reports, HoldNoLiveFormulaHoweverTheyAreOpened) {
    ASSERT_EQ(done().status, 1) << done().complained;
    office::Office office;
    std::filesystem::path const control = done().output.parent_path() / "control.csv";
    std::ofstream(control) << "text\r\n=1+1\r\n";
    EXPECT_EQ(opened(office, control, ways_to_open().front()).formulas, 1) << "this test would see none";
    std::ofstream(control) << "text;=1+1\r\n";
    EXPECT_EQ(opened(office, control, "59,34,76,1,,1033,true,true,false,false,true,0,true").formulas, 1);
    for (char const* report : {"changes.csv", "collected.csv", "problems.csv"})
        for (std::string const& way : ways_to_open()) {
            Opened const found = opened(office, done().output / report, way);
            EXPECT_EQ(found.formulas, 0) << report << " opened by " << way;
            for (std::string const& text : found.texts)
                EXPECT_FALSE(text.starts_with('=')) << report << ": " << text;
            EXPECT_GT(found.texts.size(), 20U) << report;
        }
}

TEST(Reports, AreReadBackAsTheWorkbooksHadIt) {
    std::set<std::string> befores, afters, formulas;
    for (auto const& [key, row] : counted_changes(done().output)) {
        befores.insert(row.at("before"));
        afters.insert(row.at("after"));
        formulas.insert(row.at("formula"));
    }
    for (std::string const& start : starts) {
        if (start.find('\t') != std::string::npos) // a blank in such a file; names of files have it
            continue;
        EXPECT_TRUE(befores.contains(start + " before")) << start;
        EXPECT_TRUE(afters.contains(start + " after")) << start;
    }
    EXPECT_TRUE(formulas.contains("=-3.5"));
    std::string const text = text_of(done().output / "changes.csv");
    EXPECT_NE(text.find(",-3.2,-3.5,-0.09375,number,"), std::string::npos) << "numbers stay numbers";
}

TEST(Reports, ShowEachNameAsAnotherOneAndNothingThatATerminalObeys) {
    std::string const problems_text = text_of(done().output / "problems.csv");
    for (char const* name :
         {"a\\x1b[31mred.ods", "a\\x9b[2J.ods", "a\\xff.ods", "a\\xfe.ods", "a\\u202eb.ods", "line\\x0abreak.ods"})
        EXPECT_NE(problems_text.find(std::string("\r\n") + name + ","), std::string::npos) << name;
    for (char const* report : {"changes.csv", "collected.csv", "problems.csv", "summary.txt"})
        for (char const byte : text_of(done().output / report))
            EXPECT_TRUE(byte < 0 || byte >= 0x20 || byte == '\r' || byte == '\n' || byte == '\t')
                << report << " " << int(byte);
    std::filesystem::path const odd = fresh_folder("refused") / "a\x1b[2J\xff";
    std::filesystem::create_directories(odd);
    Ended const refused = run("refused", {odd, "--output", odd / "b"});
    EXPECT_EQ(refused.status, 2);
    EXPECT_EQ(refused.complained.find('\x1b'), std::string::npos);
    EXPECT_NE(refused.complained.find("a\\x1b[2J\\xff"), std::string::npos) << refused.complained;
}

TEST(Reports, CutALongFormulaAndSaySo) {
    std::filesystem::path const folder = fresh_folder("nested") / "input";
    std::filesystem::create_directories(folder);
    auto const nested = [](std::string formula) {
        for (int depth = 0; depth < 400; ++depth)
            formula = "ABS(" + formula + ")";
        return "=" + formula;
    };
    write_odf({.path = {},
               .sheets = {{.name = "Data",
                           .rows = {{{.stored = 1.0, .formula = nested("1/0"), .now = CellError{532}},
                                     {.stored = 1.0, .formula = nested("3"), .now = 3.0}}}}},
               .names = {}},
              folder / "nested.fods");
    Ended const ended = run("nested", {folder, "--output", output_of("nested"), "--workers", "1"});
    Row const problem = read_csv(ended.output / "problems.csv").at(0);
    EXPECT_EQ(problem.at("reason"), "new errors");
    EXPECT_LT(problem.at("detail").size(), 300U);
    EXPECT_TRUE(problem.at("detail").ends_with("… (cut)")) << problem.at("detail");
    for (auto const& [key, row] : counted_changes(ended.output))
        EXPECT_GT(row.at("formula").size(), 2000U) << "changes.csv has all of it";
    office::Office office;
    office::Document summary = office::Document::open(office, ended.output / "summary.ods");
    for (int sheet = 0; sheet < summary.sheets(); ++sheet)
        for (int row = 1; row < 40; ++row)
            for (char const column : {'A', 'B', 'C', 'D', 'E', 'F', 'G'})
                EXPECT_LT(summary.sheet(sheet).shown(column + std::to_string(row)).size(), 300U)
                    << sheet << column << row;
}

} // namespace hearthcell::tests::archive
