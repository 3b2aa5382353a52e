// What a run needs meanwhile is gone when it ends, however it ends.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/archive/workers/scratch.hpp"
#include "extension/office/process.hpp"
#include "extension/office/profile.hpp"
#include "extension/office/socket_files.hpp"
#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/support/all_below.hpp"

#include <csignal>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

using namespace std::chrono_literals;

Words arguments(std::string const& name) {
    return {made().good() / "2019", "--output", output_of(name), "--workers", "2", "--dry-run"};
}

/// Waits for its offices to be at work; the sockets that they listen on.
Words sockets_at_work(Running& run) {
    while (run.running() && (run.offices().size() < 2 || run.sockets().size() < 4))
        std::this_thread::sleep_for(20ms);
    return run.sockets();
}

void expect_gone(Words const& sockets) {
    EXPECT_GE(sockets.size(), 4U) << "two of each office";
    for (std::string const& socket : sockets)
        EXPECT_FALSE(std::filesystem::exists(socket)) << socket;
}

} // namespace

class ARunThatIsEndedBy : public testing::TestWithParam<int> {};

TEST_P(ARunThatIsEndedBy, LeavesNoSocketAndNoScratch) {
    std::string const name = "ended by " + std::to_string(GetParam());
    fresh_folder(name);
    Running run(name, arguments(name));
    Words const sockets = sockets_at_work(run);
    run.send(GetParam());
    EXPECT_EQ(run.wait(), 128 + GetParam()) << run.complained();
    EXPECT_EQ(run.left_behind(), Words{});
    expect_gone(sockets);
}

INSTANTIATE_TEST_SUITE_P(ASignal, ARunThatIsEndedBy, testing::Values(SIGINT, SIGTERM, SIGHUP));

TEST(ARun, WhoseOfficesAreKilledLeavesNoSocket) {
    fresh_folder("offices killed");
    Running run("offices killed", arguments("offices killed"));
    Words const sockets = sockets_at_work(run);
    for (pid_t const office : run.offices())
        ::kill(office, SIGKILL);
    EXPECT_LE(run.wait(), 1) << run.complained();
    EXPECT_EQ(run.left_behind(), Words{});
    expect_gone(sockets);
}

TEST(ASocket, ThatAnOfficeMakesAsItDiesIsRemoved) {
    std::filesystem::path const folder = fresh_folder("dying"), profile = folder / "0/profile";
    std::filesystem::create_directories(profile);
    office::SocketFiles const sockets("file:///dying", "hearthcell-dying-" + std::to_string(::getpid()), profile);
    std::string const path = sockets.paths().front();
    // What it starts lives on for a while, and makes the socket only then.
    constexpr auto program = "import os, pathlib, socket, sys, time\n"
                             "if os.fork(): time.sleep(100)\n"
                             "os.setpgid(0, 0)\n"
                             "pathlib.Path(sys.argv[1], 'started').touch()\n"
                             "time.sleep(0.5)\n"
                             "socket.socket(socket.AF_UNIX).bind(sys.argv[2])\n"
                             "pathlib.Path(sys.argv[1], 'made').touch()\n";
    std::filesystem::path const log = office::Profile::log_in(profile), kept = folder / "log";
    office::Process office("/usr/bin/python3", {"-c", program, folder, path}, log);
    while (!std::filesystem::exists(folder / "started") && !office.exit_code())
        std::this_thread::sleep_for(5ms);
    std::filesystem::create_hard_link(log, kept);
    office.kill();
    hearthcell::archive::clear_away(folder / "0");
    EXPECT_FALSE(office::is_written(kept)) << text_of(kept);
    EXPECT_TRUE(std::filesystem::exists(folder / "made")) << text_of(kept);
    EXPECT_FALSE(std::filesystem::exists(path));
    EXPECT_FALSE(std::filesystem::exists(folder / "0"));
}

TEST(ARun, ClearsAwayWhatAnotherLeftThatWasKilledWithAllItsProcesses) {
    fresh_folder("all killed");
    std::filesystem::path const temporary = output_of("all killed").parent_path() / "temporary/scratch";
    Words sockets;
    {
        Running run("all killed", arguments("all killed"));
        sockets = sockets_at_work(run);
        run.kill_all();
        run.wait();
    }
    ASSERT_FALSE(all_below(temporary).empty()) << "it would have been cleared away anyway";
    // Another run has an empty folder for temporary files; so that of the dead one is put there.
    std::filesystem::path const aside = temporary.parent_path().parent_path() / "aside";
    std::filesystem::rename(temporary, aside);
    std::filesystem::path const living = aside / "hearthcell-archive-living";
    std::filesystem::create_directories(living / "0"); // one that says of itself nothing is left alone
    Setting setting;
    setting.variables = {"TMPDIR=" + aside.string()};
    Ended const next =
        run("all killed", {made().good() / good_workbook(0).path, "--output", output_of("next"), "--dry-run"}, setting);
    EXPECT_LE(next.status, 1) << next.complained;
    expect_gone(sockets);
    std::filesystem::remove_all(living);
    EXPECT_TRUE(std::filesystem::is_empty(aside));
}

} // namespace hearthcell::tests::archive
