// Reports of several runs, joined.

#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/runs/pages.hpp"

#include <algorithm>
#include <csignal>

#include <unistd.h>

namespace hearthcell::tests::archive {
namespace {

/// Every other workbook of the archive, from the first or the second: good ones and broken ones.
std::string half_of_the_list(std::size_t from) {
    std::vector<std::string> files;
    for (auto const& folder : {made().good(), made().odd()})
        for (auto const& entry : std::filesystem::recursive_directory_iterator(folder))
            if (std::error_code loop; !entry.is_directory(loop) && entry.path().filename().string().front() != '.')
                files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::string list;
    for (std::size_t place = from; place < files.size(); place += 2)
        list += files[place] + '\0';
    return list;
}

Ended run_on_list(std::string const& name, std::string const& list) {
    fresh_folder(name);
    return run(
        name,
        {"-", "--null", "--base", made().folder, "--output", output_of(name), "--workers", "2", "--collect", collected},
        {list});
}

/// The figures of a summary's page, without what lies in different folders.
std::vector<std::vector<Held>> figures(PageRows const& page) {
    std::vector<std::vector<Held>> rows;
    for (auto const& row : page) {
        rows.emplace_back();
        for (PageCell const& cell : row)
            rows.back().push_back(cell.value);
    }
    return rows;
}

std::filesystem::path one_workbook(std::string const& name, int number) {
    auto const folder = fresh_folder(name) / "input";
    std::filesystem::create_directories(folder);
    write_odf(good_workbook(number), folder / "run.fods");
    return folder;
}

void expect_refused(Words const& outputs, std::string const& because) {
    fresh_folder("joined badly");
    Words words{"--merge", "--output", output_of("joined badly")};
    words.insert(words.end(), outputs.begin(), outputs.end());
    Ended const ended = run("joined badly", words);
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.complained.find(because), std::string::npos) << ended.complained;
    EXPECT_FALSE(std::filesystem::exists(ended.output / "changes.csv"));
}

} // namespace

TEST(JoinedReports, OfTwoHalvesAreThoseOfOneRun) {
    std::string const first = half_of_the_list(0), second = half_of_the_list(1);
    Ended const whole = run_on_list("in one", first + second);
    Ended const one = run_on_list("half one", first), two = run_on_list("half two", second);
    ASSERT_GT(problems(one.output).size(), 5U) << "broken ones in both";
    ASSERT_GT(problems(two.output).size(), 5U);
    fresh_folder("joined");
    Ended const joined = run("joined", {"--merge", two.output, one.output, "--output", output_of("joined")});
    EXPECT_EQ(joined.status, 1) << joined.complained;
    EXPECT_EQ(joined.left_behind, Words{});
    expect_the_same_reports(joined.output, whole.output);
    EXPECT_EQ(text_of(joined.output / "problems.csv"), text_of(whole.output / "problems.csv"));
    EXPECT_EQ(text_of(joined.output / "collected.csv"), text_of(whole.output / "collected.csv"));
    EXPECT_EQ(text_of(joined.output / "summary.txt"), text_of(whole.output / "summary.txt"));
    auto const pages = pages_of(joined.output / "summary.ods"), expected = pages_of(whole.output / "summary.ods");
    ASSERT_EQ(pages.size(), expected.size());
    for (auto const& [name, page] : expected)
        EXPECT_EQ(figures(pages.at(name)), figures(page)) << name;
}

TEST(JoinedReports, CountAWorkbookOnceThatTwoRunsHadAndSaySo) {
    auto const folder = one_workbook("twice", 0);
    Ended const one = run("twice", {folder, "--output", folder.parent_path() / "one"});
    Ended const two = run("twice", {folder, "--output", folder.parent_path() / "two"});
    Ended const joined = run("twice", {"--merge", folder.parent_path() / "one", folder.parent_path() / "two",
                                       "--output", output_of("twice")});
    EXPECT_EQ(joined.status, 0) << joined.complained;
    EXPECT_NE(joined.said.find("1 workbook is in more than one of the joined runs and counted once"), std::string::npos)
        << joined.said;
    EXPECT_EQ(text_of(joined.output / "changes.csv"), text_of(folder.parent_path() / "one/changes.csv"));
    EXPECT_EQ(one.status + two.status, 0);
}

TEST(JoinedReports, ListTwoDifferentWorkbooksOfOneName) {
    auto const folder = one_workbook("namesakes", 0);
    run("namesakes", {folder, "--output", folder.parent_path() / "one"});
    write_odf(good_workbook(20), folder / "run.fods");
    run("namesakes", {folder, "--output", folder.parent_path() / "two"});
    Ended const joined = run("namesakes", {"--merge", folder.parent_path() / "one", folder.parent_path() / "two",
                                           "--output", output_of("namesakes")});
    EXPECT_EQ(joined.status, 1) << joined.complained;
    EXPECT_TRUE(problems(joined.output).at("run.fods").contains("differs between runs"));
    EXPECT_EQ(text_of(joined.output / "changes.csv"), text_of(folder.parent_path() / "one/changes.csv"));
}

TEST(JoinedReports, TakeWhatOneRunFinishedAndAnotherCouldNotDo) {
    auto const folder = one_workbook("late", 0);
    std::filesystem::path const file = folder / "run.fods", away = folder / "away";
    std::filesystem::rename(file, away);
    std::filesystem::create_directory(file); // in its place
    Ended const one =
        run("late", {file, folder / "gone.ods", "--base", folder, "--output", folder.parent_path() / "one"});
    std::filesystem::remove(file);
    Ended const missing = run("late", {file, "--base", folder, "--output", folder.parent_path() / "missing"});
    EXPECT_EQ(missing.status, 1) << missing.complained;
    std::filesystem::rename(away, file);
    Ended const two = run("late", {file, "--base", folder, "--output", folder.parent_path() / "two"});
    Ended const joined = run("late", {"--merge", folder.parent_path() / "missing", folder.parent_path() / "two",
                                      "--output", output_of("late")});
    EXPECT_EQ(joined.status, 0) << text_of(joined.output / "problems.csv");
    EXPECT_EQ(text_of(joined.output / "changes.csv"), text_of(folder.parent_path() / "two/changes.csv"));
    EXPECT_EQ(one.status, 1);
    EXPECT_EQ(two.status, 0);
}

TEST(JoinedReports, AreRefusedWhereTheyDoNotBelongTogether) {
    auto const folder = one_workbook("apart", 0);
    std::filesystem::path const plain = folder.parent_path() / "plain", set = folder.parent_path() / "set";
    run("apart", {folder, "--output", plain});
    run("apart", {folder, "--output", set, "--set", "calorific_value=17"});
    expect_refused({plain, set}, "different packages or options");
    expect_refused({plain, plain / "."}, "given twice");
    expect_refused({plain, folder}, "no run in");
    expect_refused({plain, "--collect", "efficiency"}, "--collect");
    Ended const itself = run("apart", {"--merge", plain, "--output", plain});
    EXPECT_EQ(itself.status, 2);
    EXPECT_NE(itself.complained.find("output folder of their own"), std::string::npos) << itself.complained;
}

TEST(JoinedReports, AreRefusedWhereARunDidNotComeToItsEnd) {
    auto const folder = fresh_folder("unfinished") / "input";
    std::filesystem::create_directories(folder);
    for (int number = 0; number < 30; ++number)
        write_odf(good_workbook(number), folder / (std::to_string(number) + ".fods"));
    {
        Running running("unfinished", {folder, "--output", output_of("unfinished"), "--workers", "1"});
        while (running.running() && (!std::filesystem::exists(running.output()) || copies(running.output()).empty()))
            ::usleep(20'000);
        running.send(SIGTERM);
        ASSERT_EQ(running.wait(), 128 + SIGTERM);
    }
    expect_refused({output_of("unfinished")}, "no finished run");
}

} // namespace hearthcell::tests::archive
