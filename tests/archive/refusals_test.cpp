// What it refuses, how it exits, and what it says of itself.

#include "tests/archive/runs/archive_runs.hpp"

#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"

#include <cstdio>
#include <fstream>

namespace hearthcell::tests::archive {
namespace {

std::filesystem::path input_folder(std::string const& name) {
    std::filesystem::path const folder = fresh_folder(name) / "input";
    std::filesystem::create_directories(folder / "deeper");
    write_odf(good_workbook(0), folder / "run.fods");
    return folder;
}

void expect_refused(std::string const& name, Words const& arguments, std::string const& because) {
    Ended const ended = run(name, arguments);
    EXPECT_EQ(ended.status, 2);
    EXPECT_NE(ended.complained.find(because), std::string::npos) << ended.complained;
    EXPECT_EQ(ended.left_behind, Words{});
}

std::string printed_by(std::string const& command) {
    std::unique_ptr<FILE, int (*)(FILE*)> const pipe(::popen(command.c_str(), "r"), ::pclose);
    std::string text;
    char buffer[4096];
    while (std::size_t const got = std::fread(buffer, 1, sizeof buffer, pipe.get()))
        text.append(buffer, got);
    return text;
}

std::set<std::string> options_in(std::string const& text) {
    std::set<std::string> found;
    for (std::size_t at = text.find("--"); at != std::string::npos; at = text.find("--", at + 2)) {
        std::size_t const end = text.find_first_not_of("abcdefghijklmnopqrstuvwxyz-", at);
        if ((at == 0 || text[at - 1] == ' ' || text[at - 1] == ',') && end > at + 3)
            found.insert(text.substr(at, end - at));
    }
    return found;
}

} // namespace

TEST(ARefusedRun, IsOneWhoseOutputIsAnInput) {
    auto const folder = input_folder("output is input");
    auto const before = snapshot(folder);
    expect_refused("output is input", {folder, "--output", folder}, "output");
    EXPECT_EQ(snapshot(folder), before);
}

TEST(ARefusedRun, IsOneWhoseOutputLiesInsideAnInput) {
    auto const folder = input_folder("output in input");
    auto const before = snapshot(folder);
    expect_refused("output in input", {folder, "--output", folder / "deeper/new"}, "output");
    expect_refused("output in input", {folder, "--output", folder / "deeper/../deeper"}, "output");
    EXPECT_EQ(snapshot(folder), before);
}

TEST(ARefusedRun, IsOneWhoseOutputIsAnInputByAnotherName) {
    auto const folder = input_folder("output by link");
    std::filesystem::path const link = folder.parent_path() / "another name";
    std::filesystem::create_directory_symlink(folder, link);
    auto const before = snapshot(folder);
    expect_refused("output by link", {folder, "--output", link}, "output");
    expect_refused("output by link", {link, "--output", folder / "deeper"}, "output");
    EXPECT_EQ(snapshot(folder), before);
}

TEST(ARefusedRun, IsOneWithoutOutputInputOrWithAnOptionThatDoesNotExist) {
    auto const folder = input_folder("mistakes");
    expect_refused("mistakes", {folder}, "--output");
    expect_refused("mistakes", {"--output", output_of("mistakes")}, "input");
    expect_refused("mistakes", {folder, "--output", output_of("mistakes"), "--no-such-option"}, "--no-such-option");
    expect_refused("mistakes", {folder, "--output", output_of("mistakes"), "--workers", "none"}, "workers");
    expect_refused("mistakes", {folder, "--output", output_of("mistakes"), "--set", "nothing"}, "nothing");
    expect_refused("mistakes", {folder, "--output", output_of("mistakes"), "--package", folder / "no.oxt"}, "no.oxt");
}

TEST(ARun, IsWellWhenNothingIsWrong) {
    auto const folder = input_folder("well");
    Ended const ended = run("well", {folder, "--output", output_of("well"), "--workers", "1"});
    EXPECT_EQ(ended.status, 0) << ended.complained;
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"run.fods"});
    EXPECT_EQ(read_csv(ended.output / "problems.csv").size(), 0U);
}

TEST(ARun, SaysThatTheUsersLibreOfficeHasAnotherEdition) {
    auto const folder = input_folder("another edition");
    auto const settings = folder.parent_path() / "settings";
    auto const package = settings / "libreoffice/4/user/uno_packages/cache/uno_packages/lu1/any.oxt";
    std::filesystem::create_directories(package);
    auto const complained = [&](std::string const& identifier, std::string const& version) {
        std::ofstream(package / "description.xml") << "<description><identifier value='" << identifier
                                                   << "'/><version value='" << version << "'/></description>";
        Ended const ended =
            run("another edition", {folder, "--output", output_of("another edition"), "--workers", "1", "--no-summary"},
                {.variables = {"XDG_CONFIG_HOME=" + settings.string()}});
        EXPECT_EQ(ended.status, 0) << ended.complained;
        return ended.complained;
    };
    EXPECT_NE(complained("hearthcell", "9.8.7").find("Hearthcell 9.8.7"), std::string::npos);
    EXPECT_EQ(complained("hearthcell", EDITION).find("Your LibreOffice"), std::string::npos);
    EXPECT_EQ(complained("another.extension", "9.8.7").find("Your LibreOffice"), std::string::npos);
}

TEST(ARun, IsRefusedToAMenuOfAnotherEdition) {
    auto const folder = input_folder("menu of another edition");
    auto const asked_by = [&](std::string const& menu) {
        return run("menu of another edition",
                   {folder, "--output", output_of("menu of another edition"), "--workers", "1", "--no-summary"},
                   {.variables = {"HEARTHCELL_EDITION=" + menu}});
    };
    Ended const refused = asked_by("Hearthcell 9.8.7");
    EXPECT_EQ(refused.status, 2);
    EXPECT_NE(refused.complained.find("Hearthcell 9.8.7"), std::string::npos) << refused.complained;
    EXPECT_EQ(asked_by("Hearthcell " EDITION).status, 0);
}

TEST(ARun, ListsAGivenFileThatIsNotThere) {
    auto const folder = input_folder("missing");
    Ended const ended = run("missing", {folder / "run.fods", folder / "gone.ods", "--output", output_of("missing")});
    EXPECT_EQ(ended.status, 1) << ended.complained;
    EXPECT_EQ(problems(ended.output).at("gone.ods"), std::set<std::string>{"unreadable"});
    EXPECT_EQ(copies(ended.output), std::set<std::string>{"run.fods"});
}

TEST(ARun, TakesAListOfNamesOneALine) {
    auto const folder = input_folder("list");
    write_odf(good_workbook(1), folder / "deeper/-dash & more.ods");
    std::string const list =
        (folder / "run.fods").string() + "\n" + (folder / "deeper/-dash & more.ods").string() + "\n";
    Ended const ended = run("list", {"-", "--output", output_of("list")}, {list});
    EXPECT_EQ(ended.status, 0) << ended.complained;
    EXPECT_EQ(copies(ended.output), (std::set<std::string>{"run.fods", "deeper/-dash & more.ods"}));
}

TEST(TheManualPage, NamesTheSameOptionsAsTheHelp) {
    std::string const help = printed_by(ARCHIVE_TOOL " --help");
    std::string const page =
        printed_by("man -l -Tutf8 '" MANUAL_PAGE "' 2>&1 | sed 's/\\x1b\\[[0-9;]*m//g; s/.\\x08//g'");
    std::set<std::string> const known = options_in(help);
    for (char const* option : {"--output", "--workers", "--time-limit", "--recycle", "--collect", "--set", "--values",
                               "--dry-run", "--quiet", "--json", "--package", "--null", "--merge", "--no-summary"})
        EXPECT_TRUE(known.contains(option)) << option;
    EXPECT_EQ(options_in(page), known);
    EXPECT_EQ(text_of(MANUAL_PAGE).substr(0, 3), ".TH");
}

} // namespace hearthcell::tests::archive
