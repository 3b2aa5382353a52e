// What the options do, each on a few workbooks.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/office/text.hpp"
#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/made/through_office.hpp"

#include <cmath>

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <nlohmann/json.hpp>

namespace hearthcell::tests::archive {
namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// Places in a group of ten where the four formats are; and three more groups, so that every flavour comes once.
std::vector<int> const few{0, 11, 23, 36, 40, 51, 63, 70, 76};

std::string list_of(std::vector<int> const& numbers) {
    std::string list;
    for (int const number : numbers)
        list += (made().good() / good_workbook(number).path).string() + '\0';
    return list;
}

/// A run on the few workbooks; paths in its reports start in the folder `good`.
Ended run_on_few(std::string const& name, Words arguments) {
    fresh_folder(name);
    Words words{"-", "--null", "--output", output_of(name), "--workers", "1"};
    words.insert(words.end(), arguments.begin(), arguments.end());
    return run(name, words, {list_of(few)});
}

/// The same workbook with another calorific value.
Results with_calorific_value(int number, double value) {
    Readings changed = readings(number);
    changed.calorific_value = value;
    return results(changed);
}

/// Files hold 15 digits of a number that is typed in, and Calc's own formulas go on from there.
void expect_the_same(office::CellValue const& value, office::CellValue const& expected, std::string const& where) {
    double const* const number = std::get_if<double>(&expected);
    if (number == nullptr || !std::holds_alternative<double>(value)) {
        EXPECT_TRUE(value == expected) << where;
    } else {
        EXPECT_NEAR(std::get<double>(value), *number, 1e-13 * std::abs(*number)) << where;
    }
}

} // namespace

TEST(Options, SetPutsAValueIntoANamedCellAndACellBeforeRecalculating) {
    constexpr double measured = 17.25, minutes = 40;
    Ended const ended = run_on_few("set", {"--set", "calorific_value=17.25", "--set", "Readings.B8=40", "--collect",
                                           "efficiency,Results.B5,calorific_value"});
    EXPECT_EQ(ended.status, 0) << ended.complained << text_of(ended.output / "problems.csv");
    std::map<std::string, Row> rows;
    for (Row const& row : read_csv(ended.output / "collected.csv"))
        rows[row.at("file")] = row;
    ASSERT_EQ(rows.size(), few.size());
    for (int const number : few) {
        std::string const file = good_workbook(number).path;
        Row const& row = rows.at(file);
        Results const expected = with_calorific_value(number, measured);
        EXPECT_TRUE(says(row.at("calorific_value"), measured)) << file;
        EXPECT_TRUE(says(row.at("efficiency"), expected.efficiency)) << file;
        EXPECT_TRUE(says(row.at("Results.B5"), today("FIREPOWER", {expected.wood_energy, minutes}))) << file;
        if (std::filesystem::path(file).extension() != ".xls") {
            EXPECT_EQ(held_in_copy(ended.output / file, 0, "B7"), Held(measured)) << "and in the copy: " << file;
        }
    }
}

TEST(Options, SetOnANameThatAWorkbookHasNotIsAProblemOfThatWorkbook) {
    Ended const ended = run_on_few("set nothing", {"--set", "no_such_name=1", "--dry-run"});
    EXPECT_EQ(ended.status, 1);
    EXPECT_EQ(problems(ended.output).size(), few.size());
}

TEST(Options, CollectLeavesEmptyWhatAWorkbookHasNot) {
    Ended const ended = run_on_few("collect nothing", {"--collect", "no_such_name,'Run 2'.B1", "--dry-run"});
    std::vector<Row> const rows = read_csv(ended.output / "collected.csv");
    ASSERT_EQ(rows.size(), few.size());
    int found = 0;
    for (Row const& row : rows) {
        EXPECT_EQ(row.at("no_such_name"), "");
        if (!row.at("'Run 2'.B1").empty())
            ++found;
    }
    EXPECT_EQ(found, 1) << "one of the few workbooks has a sheet 'Run 2'";
}

TEST(Options, ValuesGivesCopiesThatShowTheSameWithoutThePackage) {
    Ended const with = run_on_few("formulas", {});
    Ended const shared = run_on_few("values", {"--values"});
    ASSERT_EQ(shared.status, 0) << shared.complained;
    office::Office without, package({.package = PACKAGE});
    for (int const number : few) {
        Workbook const workbook = good_workbook(number);
        office::Document bare = office::Document::open(without, shared.output / workbook.path);
        office::Document full = office::Document::open(package, with.output / workbook.path);
        bare.recalculate();
        full.recalculate();
        ASSERT_EQ(bare.sheets(), full.sheets());
        for (std::size_t sheet = 0; sheet < workbook.sheets.size(); ++sheet)
            for (std::size_t row = 0; row < workbook.sheets[sheet].rows.size(); ++row) {
                std::string const cell = cell_name(row, 1);
                if (workbook.sheets[sheet].rows[row][1].is_volatile)
                    continue;
                auto const index = static_cast<int>(sheet);
                EXPECT_NE(bare.sheet(index).shown(cell), "#NAME?") << workbook.path << cell;
                expect_the_same(bare.sheet(index).value(cell), full.sheet(index).value(cell), workbook.path / cell);
                EXPECT_EQ(bare.sheet(index).formula(cell).find("STOVE"), std::string::npos) << workbook.path << cell;
            }
        EXPECT_EQ(bare.sheet(1).formula("B6").substr(0, 1), "=") << "a formula of Calc's own stays one";
    }
}

TEST(Options, ValuesListsWhatStillNeedsThePackageAndSheetsThatAreLocked) {
    std::filesystem::path const folder = fresh_folder("values left") / "archive";
    std::filesystem::create_directories(folder);
    {
        office::Office package({.package = PACKAGE});
        office::Document document = office::Document::blank(package);
        document.sheet(0).formula("A1", "=STOVE.BOILINGPOINT(1240)");
        office::asking("defining names", [&] {
            Reference<css::sheet::XNamedRanges> const names(
                Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)->getPropertyValue("NamedRanges"),
                UNO_QUERY_THROW);
            names->addNewByName("Beside", "STOVE.BOILINGPOINT($Sheet1.A1)", {0, 0, 0}, 0);
            names->addNewByName("Same", "STOVE.BOILINGPOINT($Sheet1.$C$1)", {0, 0, 0}, 0);
        });
        document.save(folder / "names.ods");
        office::asking("locking a sheet", [&] {
            Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(), UNO_QUERY_THROW);
            Reference<css::util::XProtectable>(sheets->getByIndex(0), UNO_QUERY_THROW)->protect("secret");
        });
        document.save(folder / "locked.ods");
    }
    Ended const ended =
        run("values left", {folder.string(), "--values", "--output", output_of("values left"), "--workers", "1"});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    std::map<std::string, std::string> reasons;
    for (Row const& row : read_csv(ended.output / "problems.csv"))
        reasons[row.at("file")] = row.at("reason") + ": " + row.at("detail");
    EXPECT_EQ(reasons["locked.ods"], "sheet locked by a password: Sheet1");
    EXPECT_EQ(reasons["names.ods"].find("formulas left: 1 of names"), 0U) << reasons["names.ods"];
    EXPECT_TRUE(std::filesystem::exists(ended.output / "names.ods"));
    EXPECT_FALSE(std::filesystem::exists(ended.output / "locked.ods"));
}

TEST(Options, JsonPrintsTheSummaryForPrograms) {
    Ended const ended = run_on_few("json", {"--json", "--dry-run"});
    nlohmann::json const summary = nlohmann::json::parse(ended.said);
    std::map<std::string, std::uint64_t> kinds;
    for (auto const& [key, row] : counted_changes(ended.output))
        ++kinds[row.at("kind")];
    ASSERT_GT(kinds["number"], 5U);
    EXPECT_EQ(summary.at("results").at("kinds").get<decltype(kinds)>(), kinds) << ended.said;
}

TEST(Options, QuietSaysNothingWhenAllIsWell) {
    Ended const ended = run_on_few("quiet", {"--quiet", "--dry-run"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.said + ended.complained, "");
    EXPECT_FALSE(text_of(ended.output / "summary.txt").empty());
}

TEST(Options, DryRunReportsTheSameAndMakesNoCopies) {
    Ended const real = run_on_few("real", {});
    Ended const dry = run_on_few("dry", {"--dry-run"});
    EXPECT_EQ(copies(real.output).size(), few.size());
    EXPECT_EQ(copies(dry.output).size(), 0U);
    EXPECT_EQ(counted_changes(dry.output), counted_changes(real.output));
}

TEST(Options, RecyclingAProcessAfterEveryWorkbookChangesNothing) {
    Ended const usual = run_on_few("kept", {"--dry-run"});
    Ended const recycled = run_on_few("recycled", {"--dry-run", "--recycle", "2"});
    EXPECT_EQ(recycled.status, 0) << recycled.complained;
    EXPECT_EQ(counted_changes(recycled.output), counted_changes(usual.output));
    EXPECT_EQ(recycled.left_behind, Words{});
}

} // namespace hearthcell::tests::archive
