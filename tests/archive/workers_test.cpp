// However many processes work, and whatever happens to them, the reports are the same.

#include "archive_runs.hpp"

#include "good_workbooks.hpp"

#include <csignal>
#include <random>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

using namespace std::chrono_literals;

constexpr int kills = 10;

/// Ends one of the run's own offices, and waits until another stands in its place.
bool kill_one(Running& run, std::mt19937& chance, std::size_t workers) {
    std::vector<pid_t> const before = run.offices();
    if (before.empty())
        return false;
    pid_t const chosen = before[chance() % before.size()];
    ::kill(chosen, SIGKILL);
    auto const end = std::chrono::steady_clock::now() + 30s;
    while (run.running() && std::chrono::steady_clock::now() < end) {
        std::vector<pid_t> const now = run.offices();
        if (now.size() >= workers && std::find(now.begin(), now.end(), chosen) == now.end())
            break;
        std::this_thread::sleep_for(50ms);
    }
    return true;
}

} // namespace

TEST(Workers, ThatAreKilledTenTimesDuringTheRunChangeNothing) {
    constexpr std::size_t workers = 3;
    unsigned const seed = std::random_device{}();
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 chance(seed);
    fresh_folder("killed");
    Running under_way("killed", {made().good(), made().odd(), "--output", output_of("killed"), "--workers",
                                 std::to_string(workers), "--time-limit", "60", "--collect", collected});
    int killed = 0;
    while (under_way.running() && killed < kills) {
        std::this_thread::sleep_for(std::chrono::milliseconds(200 + chance() % 1500));
        if (kill_one(under_way, chance, workers))
            ++killed;
    }
    EXPECT_EQ(under_way.wait(), 1) << under_way.complained();
    EXPECT_EQ(killed, kills) << "the run was over before";
    EXPECT_EQ(under_way.left_behind(), Words{});
    expect_the_same_reports(under_way.output(), whole_run().ended.output);
    std::set<std::string> expected = copies(whole_run().ended.output);
    std::erase_if(expected, [](std::string const& file) { return file.starts_with("slow/"); });
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
    std::set<pid_t> killed;
    std::map<pid_t, int> busy; // for how many looks in a row
    std::map<pid_t, double> used;
    while (under_way.running() && killed.size() < 5) {
        std::this_thread::sleep_for(500ms);
        for (pid_t const office : under_way.offices()) {
            double const now = processor_time(office);
            busy[office] = now - used[office] > 0.3 ? busy[office] + 1 : 0;
            used[office] = now;
            if (busy[office] > 16 && killed.insert(office).second) // starting and loading takes less than 8 s
                ::kill(office, SIGKILL);
        }
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
