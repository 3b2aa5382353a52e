// One run on the whole archive, looked at from all sides.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/office/document.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/made/special_workbooks.hpp"
#include "tests/archive/made/zip_writer.hpp"

#include <cmath>

namespace hearthcell::tests::archive {

void PrintTo(Change const& change, std::ostream* out) {
    *out << change.file << " " << change.sheet << "." << change.cell << " " << change.kind;
}

namespace {

std::filesystem::path const& output() {
    return whole_run().ended.output;
}

} // namespace

TEST(TheWholeArchive, IsDoneWithProblems) {
    EXPECT_EQ(whole_run().ended.status, 1) << whole_run().ended.complained;
}

TEST(TheWholeArchive, KeepsEveryOriginalByteForByteAndNoLockFileWasEverBesideOne) {
    ASSERT_GT(whole_run().before.size(), std::size_t(good_count));
    EXPECT_EQ(whole_run().after, whole_run().before);
}

TEST(TheWholeArchive, LeavesNoProcessAndNoTemporaryFile) {
    EXPECT_EQ(whole_run().ended.left_behind, Words{});
}

TEST(TheWholeArchive, ReportsExactlyTheChangesThatTheKernelsGive) {
    std::map<Key, Row> changes = counted_changes(output());
    std::size_t expected = 0;
    std::map<std::string, int> kinds;
    for (Workbook const& workbook : made().recalculable())
        for (Change const& change : expected_changes(workbook)) {
            ++expected;
            ++kinds[change.kind];
            auto const found = changes.find({change.file, change.sheet, change.cell});
            if (found == changes.end()) {
                ADD_FAILURE() << "not reported: " << testing::PrintToString(change);
                continue;
            }
            Row const& row = found->second;
            EXPECT_TRUE(says(row.at("before"), change.before)) << testing::PrintToString(change);
            EXPECT_TRUE(says(row.at("after"), change.after)) << testing::PrintToString(change);
            EXPECT_EQ(row.at("kind"), change.kind) << testing::PrintToString(change);
            EXPECT_TRUE(row.at("formula").starts_with(change.formula)) << row.at("formula");
            if (change.kind == "number") {
                double const before = std::get<double>(change.before), after = std::get<double>(change.after);
                EXPECT_NEAR(std::stod(row.at("relative_change")), (after - before) / std::abs(before),
                            1e-5 * std::abs((after - before) / before));
            }
            changes.erase(found);
        }
    EXPECT_GT(expected, 300U);
    for (char const* kind : {"number", "text", "new error", "error gone"})
        EXPECT_GT(kinds[kind], 5) << kind;
    for (auto const& [key, row] : changes)
        ADD_FAILURE() << "reported, but not changed: " << testing::PrintToString(row);
}

TEST(TheWholeArchive, ListsChanceAndClockButDoesNotCountThem) {
    std::size_t volatile_rows = 0, expected = 0;
    for (Row const& row : read_csv(output() / "changes.csv"))
        if (row.at("volatile") != "no") {
            ++volatile_rows;
            EXPECT_TRUE(row.at("formula") == "=RAND()" || row.at("formula") == "=NOW()") << row.at("formula");
        }
    for (Workbook const& workbook : made().recalculable())
        for (Sheet const& sheet : workbook.sheets)
            for (auto const& row : sheet.rows)
                for (Cell const& cell : row)
                    expected += cell.is_volatile ? 1 : 0;
    EXPECT_EQ(volatile_rows, expected);
}

TEST(TheWholeArchive, HasACopyOfEveryGoodWorkbookAndOfNoOther) {
    std::set<std::string> expected;
    for (Workbook const& workbook : made().recalculable())
        expected.insert(workbook.path);
    EXPECT_EQ(copies(output()), expected);
}

TEST(TheWholeArchive, HoldsTheNewResultsInItsCopies) {
    int looked_at = 0;
    for (Workbook const& workbook : made().recalculable()) {
        if (workbook.path.extension() == ".xls" || workbook.path.string().starts_with("slow/"))
            continue; // .xls is read in the next test
        for (std::size_t sheet = 0; sheet < workbook.sheets.size(); ++sheet)
            for (std::size_t row = 0; row < workbook.sheets[sheet].rows.size(); ++row)
                for (std::size_t column = 0; column < workbook.sheets[sheet].rows[row].size(); ++column) {
                    Cell const& cell = workbook.sheets[sheet].rows[row][column];
                    double const* const now = std::get_if<double>(&cell.now);
                    if (now == nullptr || cell.stored == cell.now)
                        continue;
                    Held const held = held_in_copy(output() / workbook.path, sheet, cell_name(row, column));
                    ASSERT_TRUE(std::holds_alternative<double>(held)) << workbook.path;
                    EXPECT_NEAR(std::get<double>(held), *now, 1e-14 * std::abs(*now)) << workbook.path;
                    ++looked_at;
                }
    }
    EXPECT_GT(looked_at, 200);
}

TEST(TheWholeArchive, IsFoundUnchangedWhenItsCopiesAreRecalculatedOnceMore) {
    fresh_folder("again");
    Ended const again =
        run("again", {output() / "good", "--output", output_of("again"), "--dry-run", "--workers", "2"});
    EXPECT_EQ(again.status, 0) << again.complained << text_of(again.output / "problems.csv");
    EXPECT_EQ(counted_changes(again.output).size(), 0U);
    EXPECT_EQ(copies(again.output), std::set<std::string>{}) << "a dry run writes no copies";
    EXPECT_EQ(again.left_behind, Words{});
}

TEST(TheWholeArchive, ListsEveryBadFileWithItsTrueReason) {
    auto listed = problems(output());
    for (BadFile const& bad : bad_files()) {
        std::string const file = "odd/" + bad.path.string();
        EXPECT_EQ(listed[file].size(), 1U) << file;
        for (std::string const& reason : listed[file])
            EXPECT_TRUE(bad.reasons.contains(reason)) << file << ": " << reason;
        listed.erase(file);
    }
    EXPECT_EQ(listed["slow/for ever.fods"], std::set<std::string>{"timed out"});
    listed.erase("slow/for ever.fods");
    EXPECT_EQ(listed["odd/links.fods"], std::set<std::string>{"external links kept as saved"});
    listed.erase("odd/links.fods");
    EXPECT_EQ(listed["good/2017/around"], std::set<std::string>{"symlink loop"});
    listed.erase("good/2017/around");
    for (Workbook const& workbook : made().recalculable())
        if (has_new_errors(workbook)) {
            EXPECT_EQ(listed[workbook.path], std::set<std::string>{"new errors"}) << workbook.path;
            listed.erase(workbook.path);
        }
    for (auto const& [file, reasons] : listed)
        ADD_FAILURE() << file << " is listed: " << testing::PrintToString(reasons);
}

TEST(TheWholeArchive, TriesAWorkbookThatHangsOnceMore) {
    for (Row const& row : read_csv(output() / "problems.csv"))
        if (row.at("file") == "slow/for ever.fods") {
            EXPECT_EQ(row.at("attempts"), "2");
        }
}

TEST(TheWholeArchive, KeepsWhatExternalLinksGaveAsItWasSaved) {
    for (char const* cell : {"A2", "A3"})
        EXPECT_NE(held_in_copy(output() / "odd/links.fods", 0, cell), Held(link_today)) << cell;
    EXPECT_EQ(held_in_copy(output() / "odd/links.fods", 0, "A2"), Held(link_as_saved));
    EXPECT_EQ(held_in_copy(output() / "odd/links.fods", 0, "A3"), Held(2 * link_as_saved));
}

TEST(TheWholeArchive, RanNoMacro) {
    ASSERT_TRUE(problems(output()).contains("odd/macro.fods")) << "it has to say what a macro was wanted for";
    EXPECT_FALSE(std::filesystem::exists(made().marker()));
}

TEST(TheWholeArchive, CollectsOneRowAWorkbookWithUnits) {
    std::filesystem::path const file = output() / "collected.csv";
    std::map<std::string, Row> rows;
    for (Row const& row : read_csv(file))
        EXPECT_TRUE(rows.emplace(row.at("file"), row).second) << row.at("file");
    for (int number = 0; number < good_count; ++number) {
        Workbook const workbook = good_workbook(number);
        Row const& row = rows.at("good/" + workbook.path.string());
        Results const out = results(readings(number));
        EXPECT_EQ(row.at("Results.B1 unit"), "°C") << workbook.path;
        EXPECT_EQ(row.at("calorific_value unit"), "") << "typed in, no function of ours";
        EXPECT_TRUE(says(row.at("efficiency"), out.efficiency)) << workbook.path;
        EXPECT_TRUE(says(row.at("calorific_value"), readings(number).calorific_value));
        EXPECT_TRUE(says(row.at("Results.B1"), out.boiling_point));
        EXPECT_TRUE(says(row.at("Readings.B2"), readings(number).water));
        EXPECT_TRUE(says(row.at("verdict"), workbook.sheets[1].rows[7][1].now));
    }
}

TEST(TheWholeArchive, WritesReportsThatFollowTheStandardForCommaSeparatedValues) {
    for (char const* report : {"changes.csv", "collected.csv", "problems.csv"})
        EXPECT_TRUE(has_proper_line_ends(output() / report)) << report;
    EXPECT_EQ(csv_headings(output() / "changes.csv"),
              (Words{"file", "sheet", "cell", "formula", "before", "after", "relative_change", "kind", "volatile"}));
    EXPECT_EQ(csv_headings(output() / "problems.csv"), (Words{"file", "reason", "detail", "attempts"}));
}

TEST(TheWholeArchive, PrintsTheSummaryThatItKeeps) {
    std::string const summary = text_of(output() / "summary.txt");
    EXPECT_NE(whole_run().ended.said.find(summary), std::string::npos) << whole_run().ended.said;
    for (std::string const words : {"STOVE.BOILINGPOINT", "STOVE.WOODENERGY", "password", "corrupt", "timed out"})
        EXPECT_NE(summary.find(words), std::string::npos) << words << "\n" << summary;
}

} // namespace hearthcell::tests::archive
