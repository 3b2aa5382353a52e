// No copy of an earlier run stays for a workbook that this run did not write.

#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"

#include <csignal>
#include <fstream>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

using namespace std::chrono_literals;
using Files = std::set<std::string>;

std::filesystem::path three_workbooks(std::string const& name) {
    std::filesystem::path const folder = fresh_folder(name) / "input";
    std::filesystem::create_directories(folder / "deeper");
    write_odf(good_workbook(0), folder / "a.fods");
    write_odf(good_workbook(1), folder / "b.ods");
    write_odf(good_workbook(2), folder / "deeper/c.fods");
    return folder;
}

void become_junk(std::filesystem::path const& file) {
    std::ofstream(file) << "words\n";
}

} // namespace

TEST(AnEarlierCopy, IsRemovedWhenItsWorkbookIsJunkOrGone) {
    auto const folder = three_workbooks("earlier");
    Words const words{folder, "--output", output_of("earlier"), "--workers", "1", "--no-summary"};
    Ended const first = run("earlier", words);
    ASSERT_EQ(copies(first.output), (Files{"a.fods", "b.ods", "deeper/c.fods"})) << first.complained;
    std::ofstream(first.output / "notes.txt") << "somebody's own\n";
    become_junk(folder / "b.ods");
    std::filesystem::remove(folder / "deeper/c.fods");
    Ended const second = run("earlier", words);
    EXPECT_EQ(copies(second.output), Files{"a.fods"});
    EXPECT_NE(second.complained.find("2 copies of an earlier run were removed"), std::string::npos)
        << second.complained;
    EXPECT_NE(second.complained.find("b.ods, deeper/c.fods"), std::string::npos) << second.complained;
    EXPECT_FALSE(std::filesystem::exists(second.output / "deeper")) << "nothing is in it";
    EXPECT_TRUE(std::filesystem::exists(second.output / "notes.txt"));
    Ended const third = run("earlier", words);
    EXPECT_EQ(copies(third.output), Files{"a.fods"});
    EXPECT_EQ(third.complained.find("earlier run"), std::string::npos) << third.complained;
}

TEST(AnEarlierCopy, IsRemovedWhenTheWorkbookFailsWithOtherOptions) {
    auto const folder = three_workbooks("earlier set");
    Words words{folder, "--output", output_of("earlier set"), "--workers", "1", "--no-summary"};
    EXPECT_EQ(run("earlier set", words).status, 0);
    // What cannot be read may pass, and leaves no record of its own.
    std::filesystem::remove(folder / "b.ods");
    std::filesystem::create_symlink("nowhere.ods", folder / "b.ods");
    words.insert(words.end(), {"--set", "calorific_value=16.5"});
    Ended const second = run("earlier set", words);
    EXPECT_EQ(copies(second.output), (Files{"a.fods", "deeper/c.fods"}));
    EXPECT_EQ(problems(second.output).at("b.ods"), Files{"unreadable"});
    words.emplace_back("--dry-run");
    EXPECT_EQ(copies(run("earlier set", words).output), Files{}) << "this run writes none";
}

TEST(AnEarlierCopy, ThatSomebodyChangedIsLeftAndListed) {
    auto const folder = three_workbooks("earlier changed");
    Words const words{folder, "--output", output_of("earlier changed"), "--workers", "1", "--no-summary"};
    EXPECT_EQ(run("earlier changed", words).status, 0);
    std::ofstream(output_of("earlier changed") / "a.fods", std::ios::app) << "<!-- a note -->\n";
    std::filesystem::remove(folder / "a.fods");
    Ended const second = run("earlier changed", words);
    EXPECT_TRUE(text_of(second.output / "a.fods").ends_with("<!-- a note -->\n"));
    EXPECT_EQ(problems(second.output).at("a.fods"), Files{"output not written"});
}

TEST(AnEarlierCopy, IsRemovedWhenARunWithOtherOptionsIsStopped) {
    constexpr int all = 8;
    std::filesystem::path const folder = fresh_folder("earlier stopped") / "input";
    std::filesystem::create_directories(folder);
    for (int number = 0; number < all; ++number)
        write_odf(good_workbook(number), folder / (std::to_string(number) + ".fods"));
    Words words{folder, "--output", output_of("earlier stopped"), "--workers", "1", "--no-summary"};
    EXPECT_LE(run("earlier stopped", words).status, 1);
    ASSERT_EQ(copies(output_of("earlier stopped")).size(), std::size_t(all));
    {
        Running same("earlier stopped", words);
        while (same.running() && same.offices().empty() && same.workers().empty())
            std::this_thread::sleep_for(5ms);
        same.send(SIGTERM);
        same.wait();
        EXPECT_EQ(copies(same.output()).size(), std::size_t(all)) << "the same run would have taken all as they are";
    }
    words.insert(words.end(), {"--set", "calorific_value=16.5"});
    Running stopped("earlier stopped", words);
    while (stopped.running() && stopped.offices().empty())
        std::this_thread::sleep_for(5ms);
    stopped.send(SIGTERM);
    EXPECT_EQ(stopped.wait(), 143);
    EXPECT_LT(copies(stopped.output()).size(), std::size_t(all / 2));
    EXPECT_NE(stopped.complained().find("of an earlier run were removed"), std::string::npos) << stopped.complained();
}

} // namespace hearthcell::tests::archive
