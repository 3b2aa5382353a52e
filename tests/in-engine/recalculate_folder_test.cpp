// 'Recalculate a folder', given as a command: the work goes on beside the office.

#include "commands.hpp"
#include "program_on_path.hpp"

#include "tests/support/changed_variable.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <fstream>

namespace hearthcell::tests {

namespace {

/// Whether a run is at work in an output folder.
bool is_at_work(std::filesystem::path const& output) {
    int const lock = ::open((output / ".hearthcell-archive/lock").c_str(), O_RDONLY | O_CLOEXEC);
    bool const taken = lock >= 0 && ::flock(lock, LOCK_SH | LOCK_NB) != 0;
    if (lock >= 0)
        ::close(lock);
    return taken;
}

/// An office of somebody whose own folder is this one.
Office at_home_in(std::filesystem::path const& folder, std::filesystem::path const& with) {
    ChangedVariable const home("HOME", folder.string());
    return Office({.package = with});
}

class RecalculateFolder : public testing::Test {
protected:
    RecalculateFolder() {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
    }
    ~RecalculateFolder() override { std::filesystem::remove_all(folder); }

    /// So many times the old sheets.
    void make_old_sheets(int times) const {
        for (int time = 0; time < times; ++time)
            std::filesystem::copy(OLD_ARCHIVE, sheets / std::to_string(time), std::filesystem::copy_options::recursive);
    }

    std::filesystem::path const folder = scratch_folder() / "recalculate a folder", sheets = folder / "old sheets",
                                results = folder / "results";
};

} // namespace

TEST_F(RecalculateFolder, WorksBesideTheOfficeAndOpensTheSummaryAtTheEnd) {
    std::filesystem::create_directories(sheets);
    make_old_sheets(2);
    ProgramOnPath const program(folder / "programs");
    Office office({.package = package()});
    Document const document = Document::blank(office);
    Said const said = command(office, document, "recalculate-folder", results, sheets);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    EXPECT_FALSE(std::filesystem::exists(results / "summary.ods")) << "the command waited for the work";
    ASSERT_TRUE(eventually([&] { return is_at_work(results); }));
    EXPECT_GT(number(evaluate(office, {"=STOVE.BOILINGPOINT(1240)"}).at(0)), 95) << "the office is usable meanwhile";
    EXPECT_TRUE(is_at_work(results)) << "and the work goes on";
    ASSERT_TRUE(eventually([&] { return open_document(office, results / "summary.ods").is(); }));
    EXPECT_TRUE(std::filesystem::exists(results / "1/2019/tall-chimney-1.fods"));
    EXPECT_FALSE(is_at_work(results));
    EXPECT_TRUE(office.alive());
}

TEST_F(RecalculateFolder, StopsWhenTheOfficeEnds) {
    std::filesystem::create_directories(sheets);
    make_old_sheets(30);
    ProgramOnPath const program(folder / "programs");
    {
        Office office({.package = package()});
        command(office, Document::blank(office), "recalculate-folder", results, sheets);
        ASSERT_TRUE(eventually([&] { return std::filesystem::exists(results / "0"); })) << "the first copies";
    }
    EXPECT_TRUE(eventually([&] { return !is_at_work(results); }));
    EXPECT_FALSE(std::filesystem::exists(results / "changes.csv")) << "it came to its end";
}

TEST_F(RecalculateFolder, NeedsNothingButThePackage) {
    std::filesystem::create_directories(sheets);
    make_old_sheets(1);
    Office office = at_home_in(folder, WHOLE_PACKAGE);
    Said const said = command(office, Document::blank(office), "recalculate-folder", results, sheets);
    EXPECT_EQ(said.state, Said::State::done) << said.words;
    ASSERT_TRUE(eventually([&] { return open_document(office, results / "summary.ods").is(); }));
    EXPECT_TRUE(std::filesystem::exists(results / "0/2019/tall-chimney-1.fods"));
}

TEST_F(RecalculateFolder, SaysInWordsThatTheProgramIsNotInstalled) {
    Office office = at_home_in(folder, package());
    Said const said = command(office, Document::blank(office), "recalculate-folder", results, folder);
    EXPECT_EQ(said.state, Said::State::failed);
    EXPECT_NE(said.words.find("hearthcell-archive"), std::string::npos) << said.words;
    EXPECT_NE(said.words.find((folder / ".local/bin").string()), std::string::npos) << said.words;
    EXPECT_FALSE(std::filesystem::exists(results));
}

} // namespace hearthcell::tests
