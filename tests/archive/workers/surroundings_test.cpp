// A hostile world: full and read-only disks, files that may not be read, macros, and servers that wait to be asked.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"
#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/archive/made/special_workbooks.hpp"
#include "tests/support/small_disk.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include <fstream>

namespace css = com::sun::star;

namespace hearthcell::tests::archive {
namespace {

constexpr uid_t nobody = 65534;

std::filesystem::path input_folder(std::string const& name, int workbooks) {
    std::filesystem::path const folder = fresh_folder(name) / "input";
    std::filesystem::create_directories(folder);
    for (int number = 0; number < workbooks; ++number)
        write_odf(good_workbook(number), folder / ("run " + std::to_string(number) + ".fods"));
    return folder;
}

} // namespace

TEST(AFullDisk, IsSaidAndLeavesNoHalfCopyAndCanBeMadeUpFor) {
    auto const folder = input_folder("full disk", 30);
    {
        // Some room is kept for the reports from the start; what is left is enough for some copies only.
        SmallDisk const disk(output_of("full disk"), "size=700k");
        if (!disk.mounted())
            GTEST_SKIP() << "no small disk can be mounted here: " << disk.why_not();
        Ended const ended = run("full disk", {folder, "--output", output_of("full disk"), "--workers", "2"});
        EXPECT_NE(ended.status, 0);
        EXPECT_NE(text_of(ended.output / "problems.csv").find("No space left"), std::string::npos);
        EXPECT_EQ(ended.left_behind, Words{});
        std::set<std::string> const written = copies(ended.output);
        EXPECT_GT(written.size(), 0U);
        EXPECT_LT(written.size(), 30U);
        int listed = 0;
        for (auto const& [file, reasons] : problems(ended.output))
            listed += file != "summary.ods" && reasons.contains("output not written") ? 1 : 0;
        EXPECT_EQ(written.size() + static_cast<std::size_t>(listed), 30U);
        for (std::string const& copy : written)
            EXPECT_TRUE(text_of(ended.output / copy).ends_with("</office:document>")) << copy;
    }
    Ended const later = run("full disk", {folder, "--output", output_of("full disk"), "--workers", "2"});
    EXPECT_EQ(later.status, 1) << "the one with a new error"; // number 24
    EXPECT_EQ(copies(later.output).size(), 30U);
}

TEST(AReadOnlyDisk, IsNoPlaceToRun) {
    auto const folder = input_folder("read-only disk", 1);
    SmallDisk const disk(output_of("read-only disk"), "size=1m");
    if (!disk.mounted() || !disk.make_read_only())
        GTEST_SKIP() << "no small disk can be mounted here: " << disk.why_not();
    Ended const ended = run("read-only disk", {folder, "--output", output_of("read-only disk")});
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.complained.find("Read-only"), std::string::npos) << ended.complained;
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(AnOutput, WhosePlaceIsTakenByAFileIsSaidOfThatWorkbookOnly) {
    auto const folder = input_folder("place taken", 2);
    std::filesystem::create_directories(folder / "deeper");
    write_odf(good_workbook(2), folder / "deeper/run.fods");
    std::filesystem::create_directories(output_of("place taken"));
    std::ofstream(output_of("place taken") / "deeper") << "a file where a folder has to be\n";
    Ended const ended = run("place taken", {folder, "--output", output_of("place taken")});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    std::map<std::string, std::set<std::string>> const expected{{"deeper/run.fods", {"output not written"}}};
    EXPECT_EQ(problems(ended.output), expected);
    EXPECT_EQ(copies(ended.output), (std::set<std::string>{"run 0.fods", "run 1.fods"}));
}

TEST(AnOutput, ThatIsNotOursIsNeverOverwritten) {
    auto const folder = input_folder("not ours", 1);
    std::filesystem::create_directories(output_of("not ours"));
    std::ofstream(output_of("not ours") / "run 0.fods") << "somebody's own file\n";
    Ended const ended = run("not ours", {folder, "--output", output_of("not ours")});
    EXPECT_NE(ended.status, 0);
    EXPECT_EQ(text_of(output_of("not ours") / "run 0.fods"), "somebody's own file\n");
}

TEST(AFileWithoutPermission, IsUnreadableAndAFolderToo) {
    auto const folder = input_folder("permission", 2);
    std::filesystem::create_directories(folder / "closed");
    write_odf(good_workbook(2), folder / "closed/run.fods");
    std::filesystem::permissions(folder / "run 0.fods", std::filesystem::perms::none);
    std::filesystem::permissions(folder / "closed", std::filesystem::perms::none);
    std::filesystem::create_directories(output_of("permission"));
    std::filesystem::permissions(output_of("permission"), std::filesystem::perms::all);
    // Root may read everything, so that it is run by somebody else then.
    Setting const setting{.standard_input = {}, .user = ::getuid() == 0 ? nobody : 0};
    Ended const ended = run("permission", {folder, "--output", output_of("permission"), "--workers", "1"}, setting);
    std::filesystem::permissions(folder / "closed", std::filesystem::perms::owner_all);
    if (ended.status == 126 || ended.status == 127)
        GTEST_SKIP() << "another user cannot run programs of this build folder";
    EXPECT_EQ(ended.status, 1) << ended.complained;
    std::map<std::string, std::set<std::string>> const expected{{"run 0.fods", {"unreadable"}},
                                                                {"closed", {"unreadable"}}};
    EXPECT_EQ(problems(ended.output), expected);
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"run 1.fods"});
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(AnOutputFolder, ThatMayNotBeWrittenToIsNoPlaceToRun) {
    auto const folder = input_folder("no writing", 1);
    std::filesystem::create_directories(output_of("no writing"));
    std::filesystem::permissions(output_of("no writing"),
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_exec |
                                     std::filesystem::perms::others_read | std::filesystem::perms::others_exec);
    Setting const setting{.standard_input = {}, .user = ::getuid() == 0 ? nobody : 0};
    Ended const ended = run("no writing", {folder, "--output", output_of("no writing")}, setting);
    std::filesystem::permissions(output_of("no writing"), std::filesystem::perms::owner_all);
    if (ended.status == 126 || ended.status == 127)
        GTEST_SKIP() << "another user cannot run programs of this build folder";
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.complained.find("Permission denied"), std::string::npos) << ended.complained;
    EXPECT_EQ(ended.left_behind, Words{});
}

TEST(AMacro, WouldRunIfItWereLet) { // else that it did not run says nothing
    std::filesystem::path const folder = fresh_folder("macro"), marker = folder / "ran";
    write_odf(with_macro("macro.fods", marker), folder / "macro.fods");
    office::Office office;
    auto const option = [](char const* name, css::uno::Any const& value) {
        return css::beans::PropertyValue(office::wide(name), 0, value, css::beans::PropertyState_DIRECT_VALUE);
    };
    css::beans::PropertyValue const options[] = {
        option("Hidden", css::uno::Any(true)),
        option("MacroExecutionMode", css::uno::Any(css::document::MacroExecMode::ALWAYS_EXECUTE_NO_WARN))};
    auto const document =
        office.desktop()->loadComponentFromURL(office::file_url(folder / "macro.fods"), "_blank", 0,
                                               css::uno::Sequence<css::beans::PropertyValue>(options, 2));
    css::uno::Reference<css::sheet::XCalculatable>(document, css::uno::UNO_QUERY_THROW)->calculateAll();
    css::uno::Reference<css::util::XCloseable>(document, css::uno::UNO_QUERY_THROW)->close(true);
    EXPECT_TRUE(std::filesystem::exists(marker));
}

TEST(AServer, IsNotAskedForWhatAWorkbookWantsFromIt) {
    int const listening = ::socket(AF_INET, SOCK_STREAM | SOCK_NONBLOCK, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    ASSERT_EQ(::bind(listening, reinterpret_cast<sockaddr*>(&address), size), 0);
    ASSERT_EQ(::listen(listening, 8), 0);
    ASSERT_EQ(::getsockname(listening, reinterpret_cast<sockaddr*>(&address), &size), 0);
    std::string const url = "http://127.0.0.1:" + std::to_string(ntohs(address.sin_port)) + "/value";

    std::filesystem::path const folder = fresh_folder("server") / "input";
    std::filesystem::create_directories(folder);
    write_odf(with_web_service("web.fods", url), folder / "web.fods");
    write_odf(with_links("links.fods", folder / "none", link_as_saved), folder / "links.fods");
    Ended const ended = run("server", {folder, "--output", output_of("server"), "--time-limit", "60"});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    int const caller = ::accept(listening, nullptr, nullptr);
    EXPECT_EQ(caller, -1) << "somebody called";
    ::close(listening);
    EXPECT_TRUE(problems(ended.output).contains("web.fods")) << "it has to say that the cell could not be recalculated";
}

} // namespace hearthcell::tests::archive
