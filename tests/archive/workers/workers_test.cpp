// However many processes work, and whatever happens to them, the reports are the same.

#include "tests/archive/runs/archive_runs.hpp"
#include "tests/archive/runs/processes.hpp"

#include "tests/archive/made/good_workbooks.hpp"

#include <csignal>
#include <random>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

using namespace std::chrono_literals;

constexpr int kills = 10;

/// An office, or now and then the process that drives one. False where there is none just now.
bool kill_one(Running const& run, std::mt19937& chance) {
    std::vector<pid_t> const choice = chance() % 3 == 0 ? run.workers() : run.offices();
    return !choice.empty() && ::kill(choice[chance() % choice.size()], SIGKILL) == 0;
}

} // namespace

TEST(Workers, ThatAreKilledTenTimesDuringTheRunChangeNothing) {
    unsigned const seed = std::random_device{}();
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 chance(seed);
    fresh_folder("killed");
    Running under_way("killed",
                      {"-", "--null", made().odd(), "--output", output_of("killed"), "--workers", "3", "--time-limit",
                       "60", "--collect", collected},
                      {part_of_archive().list});
    // Every so many workbooks, so that it does not matter how fast they go. Only in the first pass: a workbook that is
    // tried for the second time would rightly be called the cause.
    int killed = 0;
    std::size_t next = 1;
    while (under_way.running() && killed < kills) {
        if (copies(under_way.output()).size() >= next && kill_one(under_way, chance)) {
            ++killed;
            next += 4 + chance() % 5;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(chance() % 40));
    }
    EXPECT_EQ(under_way.wait(), 1) << under_way.complained();
    EXPECT_EQ(killed, kills) << "the run was over before";
    EXPECT_EQ(under_way.left_behind(), Words{});
    expect_the_same_reports(under_way.output(), part_of_archive());
    std::set<std::string> expected = copies(whole_run().ended.output);
    std::erase_if(expected, [](std::string const& file) { return !part_of_archive().holds(file); });
    EXPECT_EQ(copies(under_way.output()), expected);
}

TEST(Workers, GiveOneAndTheSameResultWhenThereIsOnlyOne) {
    // Every seventh workbook and a broken one, as a list with NUL between the names: one of them holds a line break.
    std::string list = (made().odd() / "bad/cut short.ods").string() + '\0';
    std::set<std::string> files{"odd/bad/cut short.ods"};
    for (int number = 0; number < good_count; number += 7) {
        std::filesystem::path const file = made().good() / good_workbook(number).path;
        list += file.string() + '\0';
        files.insert("good/" + good_workbook(number).path.string());
    }
    list += (made().good() / "2021/Größen und Maße/line\nbreak.fods").string() + '\0';
    files.insert("good/2021/Größen und Maße/line\nbreak.fods");
    fresh_folder("one worker");
    Ended const alone =
        run("one worker", {"-", "--null", "--output", output_of("one worker"), "--workers", "1"}, {list});
    EXPECT_EQ(alone.status, 1) << alone.complained;
    auto expected = counted_changes(whole_run().ended.output);
    std::erase_if(expected, [&](auto const& change) { return !files.contains(std::get<0>(change.first)); });
    ASSERT_GT(expected.size(), 30U);
    EXPECT_EQ(counted_changes(alone.output), expected);
    auto expected_problems = problems(whole_run().ended.output);
    std::erase_if(expected_problems, [&](auto const& problem) { return !files.contains(problem.first); });
    EXPECT_EQ(problems(alone.output), expected_problems);
}

TEST(Workers, WhoseOfficeDiesOverAWorkbookTwiceListItAsTheCause) {
    // Nothing that we know makes this office crash: so it is killed while it calculates the formula without end.
    fresh_folder("crash");
    Running under_way("crash", {made().slow() / "for ever.fods", "--output", output_of("crash"), "--workers", "1",
                                "--time-limit", "300"});
    constexpr double more_than_starting_and_loading = 3; // seconds of a processor
    std::set<pid_t> killed;
    while (under_way.running() && killed.size() < 5) {
        std::this_thread::sleep_for(200ms);
        for (pid_t const office : under_way.offices())
            if (processor_time(office) > more_than_starting_and_loading && killed.insert(office).second)
                ::kill(office, SIGKILL);
    }
    EXPECT_EQ(under_way.wait(), 1) << under_way.complained();
    EXPECT_EQ(killed.size(), 2U);
    std::vector<Row> const rows = read_csv(under_way.output() / "problems.csv");
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].at("reason"), "crashed the office");
    EXPECT_EQ(rows[0].at("attempts"), "2");
    EXPECT_EQ(under_way.left_behind(), Words{});
}

} // namespace hearthcell::tests::archive
