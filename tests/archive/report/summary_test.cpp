// summary.ods shows what the CSV files hold: read from both by readers that are not ours, and compared.

#include "extension/archive/files/shown.hpp"
#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/made/zip_writer.hpp"
#include "tests/archive/runs/pages.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <regex>

namespace hearthcell::tests::archive {
namespace {

std::filesystem::path const& output() {
    return whole_run().ended.output;
}

std::map<std::string, PageRows> const& pages() {
    static std::map<std::string, PageRows> const all = pages_of(output() / "summary.ods");
    return all;
}

std::vector<Row> const& changes() {
    static std::vector<Row> const rows = [] {
        std::vector<Row> counted = read_csv(output() / "changes.csv");
        std::erase_if(counted,
                      [](Row const& row) { return row.at("volatile") != "no" || row.at("kind") == "last digits"; });
        return counted;
    }();
    return rows;
}

/// STOVE.… that a formula calls.
std::set<std::string> functions_of(std::string const& formula) {
    static std::regex const call(R"(STOVE\.[A-Z0-9]+)");
    std::set<std::string> names;
    for (std::sregex_iterator found(formula.begin(), formula.end(), call), end; found != end; ++found)
        names.insert(found->str());
    return names;
}

/// By the rule that the README gives.
std::string year_or_folder(std::string const& file) {
    static std::regex const year("(^|[^0-9])((19|20)[0-9][0-9])([^0-9]|$)");
    std::filesystem::path const path(file);
    for (std::filesystem::path folder = path.parent_path(); !folder.empty(); folder = folder.parent_path()) {
        std::smatch match;
        std::string const name = folder.filename();
        if (std::regex_search(name, match, year))
            return match[2];
    }
    return path.has_parent_path() ? path.begin()->string() : "(no folder)";
}

/// A long name is shown by its end.
void expect_names(PageCell const& cell, std::string const& file) {
    std::string const seen = text_in(cell), whole = hearthcell::archive::shown(file), dots = "…";
    bool const is_end = seen.starts_with(dots) && whole.ends_with(seen.substr(dots.size()));
    EXPECT_TRUE(seen == whole || is_end) << seen << " for " << file;
}

std::filesystem::path target_of(PageCell const& cell) {
    std::string path;
    for (std::size_t at = 0; at < cell.link.size(); ++at)
        if (cell.link[at] == '%') {
            path += static_cast<char>(std::stoi(cell.link.substr(at + 1, 2), nullptr, 16));
            at += 2;
        } else {
            path += cell.link[at];
        }
    return (output() / "summary.ods" / path).lexically_normal();
}

} // namespace

TEST(TheSummary, CountsTheChangesOfEachFunctionAsTheirRowsDo) {
    struct Counted {
        double cells = 0, low = INFINITY, high = -INFINITY;
    };
    std::map<std::string, Counted> expected;
    for (Row const& row : changes()) {
        auto names = functions_of(row.at("formula"));
        if (names.empty())
            names.insert("other formulas");
        for (std::string const& name : names) {
            Counted& one = expected[name];
            ++one.cells;
            if (row.at("relative_change").empty())
                continue;
            double const change = std::stod(row.at("relative_change"));
            one.low = std::min(one.low, change);
            one.high = std::max(one.high, change);
        }
    }
    PageRows const table = table_below(pages().at("By function"), "function");
    EXPECT_EQ(table.size(), expected.size());
    EXPECT_GT(table.size(), 4U);
    for (auto const& row : table) {
        Counted const& one = expected.at(text_in(row[0]));
        EXPECT_EQ(number_in(row[1]), one.cells) << text_in(row[0]);
        if (std::isfinite(one.low)) {
            EXPECT_EQ(number_in(row[3]), one.low) << text_in(row[0]);
            EXPECT_EQ(number_in(row[4]), one.high) << text_in(row[0]);
        }
    }
}

TEST(TheSummary, CountsChangesAndProblemsOfEachFolderOrYear) {
    std::map<std::string, double> expected, expected_problems, expected_workbooks;
    for (Row const& row : changes())
        ++expected[year_or_folder(row.at("file"))];
    for (Row const& row : read_csv(output() / "problems.csv"))
        ++expected_problems[year_or_folder(row.at("file"))];
    for (Row const& row : read_csv(output() / "collected.csv"))
        ++expected_workbooks[year_or_folder(row.at("file"))];
    double all = 0;
    for (auto const& row : table_below(pages().at("By folder or year"), "folder or year")) {
        std::string const name = text_in(row[0]);
        EXPECT_EQ(number_in(row[1]), expected_workbooks[name]) << name;
        EXPECT_EQ(number_in(row[3]), expected[name]) << name;
        EXPECT_EQ(number_in(row[4]), expected_problems[name]) << name;
        all += number_in(row[3]);
    }
    EXPECT_EQ(all, double(changes().size()));
    EXPECT_TRUE(expected.contains("2019"));
}

TEST(TheSummary, ShowsTheLargestChangesWithLinksToTheirFiles) {
    std::vector<Row> expected;
    for (Row const& row : changes())
        if (!row.at("relative_change").empty())
            expected.push_back(row);
    auto const size = [](Row const& row) { return std::abs(std::stod(row.at("relative_change"))); };
    std::stable_sort(expected.begin(), expected.end(),
                     [&](Row const& one, Row const& other) { return size(one) > size(other); });
    PageRows const table = table_below(pages().at("Largest changes"), "file");
    ASSERT_EQ(table.size(), 30U);
    for (std::size_t place = 0; place < table.size(); ++place) {
        auto const& row = table[place];
        Row const& as_listed = expected[place];
        expect_names(row[0], as_listed.at("file"));
        EXPECT_EQ(target_of(row[0]), output() / as_listed.at("file"));
        EXPECT_TRUE(std::filesystem::is_regular_file(target_of(row[0]))) << row[0].link;
        EXPECT_EQ(text_in(row[1]), as_listed.at("sheet"));
        EXPECT_EQ(text_in(row[2]), as_listed.at("cell"));
        EXPECT_TRUE(says(as_listed.at("before"), row[3].value));
        EXPECT_TRUE(says(as_listed.at("after"), row[4].value));
        EXPECT_EQ(number_in(row[5]), std::stod(as_listed.at("relative_change")));
        EXPECT_EQ(text_in(row[6]), as_listed.at("formula"));
    }
    EXPECT_TRUE(says_on_page(pages().at("Largest changes"),
                             "… and " + std::to_string(expected.size() - 30) + " more changed numbers in changes.csv"));
}

TEST(TheSummary, DistributesTheChangesOverTheirSizes) {
    constexpr std::array limits{1e-4, 1e-3, 1e-2, 1e-1};
    std::array<std::array<double, 2>, 5> expected{};
    for (Row const& row : changes())
        if (!row.at("relative_change").empty()) {
            double const change = std::stod(row.at("relative_change"));
            std::size_t size = 0;
            while (size < limits.size() && std::abs(change) > limits[size])
                ++size;
            ++expected[size][change > 0 ? 1 : 0];
        }
    PageRows const table = table_below(pages().at("How far"), "change");
    ASSERT_EQ(table.size(), expected.size());
    for (std::size_t size = 0; size < expected.size(); ++size) {
        EXPECT_EQ(number_in(table[size][1]), expected[size][0]) << text_in(table[size][0]);
        EXPECT_EQ(number_in(table[size][2]), expected[size][1]) << text_in(table[size][0]);
        EXPECT_EQ(number_in(table[size][3]), expected[size][0] + expected[size][1]) << text_in(table[size][0]);
    }
}

TEST(TheSummary, CountsTheProblemsByReasonAndSaysWhatTheyMean) {
    std::map<std::string, double> expected;
    for (Row const& row : read_csv(output() / "problems.csv"))
        ++expected[row.at("reason")];
    PageRows const table = table_below(pages().at("Problems"), "reason");
    ASSERT_EQ(table.size(), expected.size());
    for (auto const& row : table) {
        EXPECT_EQ(number_in(row[1]), expected.at(text_in(row[0])));
        EXPECT_GT(text_in(row[2]).size(), 20U);
    }
    PageRows const cases = table_below(pages().at("Problems"), "file");
    EXPECT_GE(cases.size(), expected.size());
    for (auto const& row : cases)
        EXPECT_TRUE(expected.contains(text_in(row[1]))) << text_in(row[1]);
}

TEST(TheSummary, ShowsTheCollectedResultsAndDrawsThemOverTime) {
    std::vector<Row> const rows = read_csv(output() / "collected.csv");
    PageRows const& page = pages().at("Collected");
    PageRows const table = table_below(page, "file");
    ASSERT_EQ(table.size(), 25U);
    for (std::size_t place = 0; place < table.size(); ++place) {
        expect_names(table[place][0], rows[place].at("file"));
        EXPECT_TRUE(says(rows[place].at("efficiency"), table[place][1].value)) << rows[place].at("file");
        EXPECT_TRUE(says(rows[place].at("verdict"), table[place][4].value)) << rows[place].at("file");
    }
    EXPECT_TRUE(says_on_page(page, "In the order of the files"));
    EXPECT_TRUE(unzipped(output() / "summary.ods").contains("Collected 1/content.xml")) << "a chart";
}

TEST(TheSummary, TakesTheTimeFromACollectedDay) {
    auto const folder = fresh_folder("days") / "input";
    std::filesystem::create_directories(folder);
    std::vector<std::pair<std::string, std::string>> const runs{{"b", "2021-03-04"}, {"a", "2022-11-30"}};
    for (auto const& [name, day] : runs) {
        std::string text = flat_odf(good_workbook(0));
        std::string const first_cell = "<table:table-row><table:table-cell";
        ASSERT_NE(text.find(first_cell), std::string::npos) << text.substr(0, 3000);
        text.replace(text.find(first_cell), first_cell.size(),
                     "<table:table-row><table:table-cell office:value-type=\"date\" office:date-value=\"" + day +
                         "\"/></table:table-row>" + first_cell);
        std::ofstream(folder / (name + ".fods")) << text;
    }
    Ended const ended =
        run("days", {folder, "--output", output_of("days"), "--dry-run", "--collect", "Readings.A1,Readings.B3"});
    std::vector<Row> const rows = read_csv(ended.output / "collected.csv");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].at("Readings.A1"), "2022-11-30");
    EXPECT_EQ(rows[1].at("Readings.A1"), "2021-03-04");
    PageRows const page = pages_of(ended.output / "summary.ods").at("Collected");
    EXPECT_TRUE(says_on_page(page, "Time is the day that was collected as 'Readings.A1'"));
    std::vector<std::string> days; // of the points, beside the page, in their order in time
    for (auto const& row : page)
        for (std::size_t column = 4; column < row.size(); ++column)
            if (std::string const text = text_in(row[column]); text.starts_with("20"))
                days.push_back(text);
    EXPECT_EQ(days, (Words{"2021-03-04", "2022-11-30"}));
}

TEST(TheSummary, SaysInWordsWhereThereIsNothing) {
    auto const folder = fresh_folder("nothing new") / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(0), folder / "run.fods");
    Ended const first = run("nothing new", {folder, "--output", folder.parent_path() / "first"});
    std::filesystem::remove_all(folder);
    std::filesystem::rename(folder.parent_path() / "first", folder);
    std::filesystem::remove(folder / "summary.ods"); // else it is a workbook of the archive
    Ended const again = run("nothing new", {folder, "--output", output_of("nothing new")});
    EXPECT_EQ(again.status, 0) << again.complained;
    auto const all = pages_of(again.output / "summary.ods");
    EXPECT_EQ(all.size(), 5U);
    for (char const* page : {"By function", "By folder or year", "Largest changes", "How far"})
        EXPECT_TRUE(says_on_page(all.at(page), "No result changed")) << page;
    EXPECT_TRUE(says_on_page(all.at("Problems"), "No problems"));
    EXPECT_TRUE(first.left_behind.empty());
}

TEST(TheSummary, GivesWayToAWorkbookOfItsName) {
    auto const folder = fresh_folder("same name") / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(0), folder / "summary.ods");
    Ended const ended = run("same name", {folder, "--output", output_of("same name")});
    EXPECT_EQ(held_in_copy(ended.output / "summary.ods", 0, "A1"), held_in_copy(folder / "summary.ods", 0, "A1"));
    EXPECT_TRUE(pages_of(ended.output / "summary-of-archive.ods").contains("By function"));
}

TEST(TheSummary, ThatCannotBeWrittenIsAProblemAndTheCsvFilesStay) {
    auto const folder = fresh_folder("no summary") / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(20), folder / "run.fods"); // some of its results have changed
    std::filesystem::create_directories(output_of("no summary") / ".hearthcell-archive");
    std::filesystem::create_directories(output_of("no summary") / "summary.ods/in the way");
    Ended const ended = run("no summary", {folder, "--output", output_of("no summary")});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    EXPECT_EQ(problems(ended.output).at("summary.ods"), std::set<std::string>{"output not written"});
    EXPECT_FALSE(read_csv(ended.output / "changes.csv").empty());
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(TheSummary, IsLeftOutWhenItIsNotWantedAndNotDrawnTwice) {
    auto const folder = fresh_folder("unwanted") / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(0), folder / "run.fods");
    Words const arguments{folder, "--output", output_of("unwanted")};
    Ended const ended = run("unwanted", arguments);
    auto const written = snapshot(ended.output).at("summary.ods");
    run("unwanted", arguments);
    EXPECT_EQ(snapshot(ended.output).at("summary.ods"), written);
    run("unwanted", {folder, "--output", output_of("unwanted"), "--no-summary"});
    EXPECT_FALSE(std::filesystem::exists(ended.output / "summary.ods"));
    EXPECT_TRUE(std::filesystem::exists(ended.output / "summary.txt"));
}

} // namespace hearthcell::tests::archive
