// Ctrl-C, and going on where it stopped.

#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/support/all_below.hpp"

#include <sys/stat.h>

#include <algorithm>
#include <csignal>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

using namespace std::chrono_literals;

/// Which file a name stands for and when it was written: a copy that is made again is another file.
std::map<std::string, std::string> identities(std::filesystem::path const& output) {
    std::map<std::string, std::string> all;
    for (std::string const& copy : copies(output)) {
        struct stat facts {};
        ::stat((output / copy).c_str(), &facts);
        all[copy] = std::to_string(facts.st_ino) + " " + std::to_string(facts.st_mtim.tv_sec) + "." +
                    std::to_string(facts.st_mtim.tv_nsec);
    }
    return all;
}

Words arguments(std::string const& name) {
    return {"-", "--null", made().odd(), "--output", output_of(name), "--workers", "2", "--collect", collected};
}

Setting with_list() {
    return {part_of_archive().list};
}

void stop_after(Running& run, std::size_t copies_made, int signal) {
    while (run.running() && copies(run.output()).size() < copies_made)
        std::this_thread::sleep_for(20ms);
    run.send(signal);
}

/// How many workbooks are done, with copies or without.
std::size_t records(std::filesystem::path const& output) {
    auto const files = all_below(output / ".hearthcell-archive");
    return static_cast<std::size_t>(std::ranges::count(files, ".json", &std::filesystem::path::extension));
}

/// Copies appear whole or not at all.
void expect_whole(std::filesystem::path const& output) {
    for (std::string const& copy : copies(output)) {
        std::filesystem::path const file = output / copy;
        if (file.extension() == ".fods") {
            EXPECT_TRUE(text_of(file).ends_with("</office:document>")) << copy;
        } else if (file.extension() != ".xls") {
            EXPECT_NO_THROW(held_in_copy(file, 0, "A1")) << copy;
        }
    }
}

} // namespace

TEST(AnInterruptedRun, StopsCleanlyAndGoesOnWithoutLosingOrRepeatingAnything) {
    fresh_folder("interrupted");
    {
        Running first("interrupted", arguments("interrupted"), with_list());
        stop_after(first, 40, SIGINT);
        EXPECT_EQ(first.wait(), 130) << first.complained(); // as for any program that Ctrl-C stops
        EXPECT_EQ(first.left_behind(), Words{});
        expect_whole(first.output());
    }
    auto const first = identities(output_of("interrupted"));
    EXPECT_GE(first.size(), 40U);
    EXPECT_LT(first.size(), part_of_archive().files.size());
    Ended const second = run("interrupted", arguments("interrupted"), with_list());
    EXPECT_EQ(second.status, 1) << second.complained;
    auto const all = identities(output_of("interrupted"));
    for (auto const& [copy, identity] : first)
        EXPECT_EQ(all.at(copy), identity) << "made again: " << copy;
    expect_the_same_reports(second.output, part_of_archive());

    Ended const third = run("interrupted", arguments("interrupted"), with_list());
    EXPECT_EQ(third.status, 1) << third.complained;
    EXPECT_EQ(identities(output_of("interrupted")), all) << "nothing was left to do";
    expect_the_same_reports(third.output, part_of_archive());
    EXPECT_EQ(third.left_behind, Words{});
}

TEST(AnInterruptedRun, IsStoppedByTheSignalOfASystemThatGoesDown) {
    fresh_folder("terminated");
    Running stopped("terminated", arguments("terminated"), with_list());
    stop_after(stopped, 5, SIGTERM);
    EXPECT_EQ(stopped.wait(), 143) << stopped.complained();
    EXPECT_EQ(stopped.left_behind(), Words{});
    expect_whole(stopped.output());
}

TEST(AnInterruptedRun, ThatIsKilledOutrightLeavesNothingRunningAndCanGoOn) {
    fresh_folder("killed outright");
    Words const words{"-", "--null", "--output", output_of("killed outright"), "--workers", "2", "--dry-run"};
    {
        Running first("killed outright", words, with_list());
        while (first.running() && records(first.output()) < 10)
            std::this_thread::sleep_for(20ms);
        first.send(SIGKILL);
        EXPECT_EQ(first.wait(), 128 + SIGKILL);
        auto const patience = std::chrono::steady_clock::now() + 120s; // its workers see the end and clear away
        while (!first.left_behind().empty() && std::chrono::steady_clock::now() < patience)
            std::this_thread::sleep_for(100ms);
        EXPECT_EQ(first.left_behind(), Words{});
    }
    Ended const second = run("killed outright", words, with_list());
    EXPECT_EQ(second.status, 1) << second.complained;
    EXPECT_EQ(problems(second.output).size(), 4U) << "with a new error";
}

TEST(AResumedRun, DoesAgainWhatHasChangedSinceAndNothingElse) {
    std::filesystem::path const folder = fresh_folder("changed") / "input";
    std::filesystem::create_directories(folder);
    for (int number : {0, 1})
        write_odf(good_workbook(number), folder / ("run " + std::to_string(number) + ".fods"));
    Words const words{folder, "--output", output_of("changed"), "--workers", "1"};
    EXPECT_EQ(run("changed", words).status, 0);
    auto const first = identities(output_of("changed"));
    write_odf(good_workbook(12), folder / "run 1.fods");
    EXPECT_EQ(run("changed", words).status, 0);
    auto const second = identities(output_of("changed"));
    EXPECT_EQ(second.at("run 0.fods"), first.at("run 0.fods"));
    EXPECT_NE(second.at("run 1.fods"), first.at("run 1.fods"));
    Held const now = held_in_copy(output_of("changed") / "run 1.fods", 1, "B1");
    EXPECT_TRUE(says(digits(std::get<double>(now)), results(readings(12)).boiling_point));

    Words other = words;
    other.insert(other.end(), {"--set", "calorific_value=16.5"});
    EXPECT_EQ(run("changed", other).status, 0);
    auto const third = identities(output_of("changed"));
    EXPECT_NE(third.at("run 0.fods"), second.at("run 0.fods")) << "with other settings all is done again";
}

} // namespace hearthcell::tests::archive
