// Where LibreOffice is found, and what is said when it is not. Each runs in a system in which it lies elsewhere.

#include "tests/archive/runs/archive_runs.hpp"

#include "extension/archive/find_office.hpp"
#include "extension/office/confinement.hpp"
#include "tests/archive/made/flat_odf.hpp"
#include "tests/archive/made/good_workbooks.hpp"
#include "tests/support/content.hpp"

#include <cstdlib>
#include <fstream>
#include <regex>

namespace hearthcell::tests::archive {
namespace {

namespace fs = std::filesystem;

fs::path const usual = fs::path(OFFICE_PROGRAM).parent_path();

struct Said {
    int status;
    std::string words;
};

/// Runs the program where the usual LibreOffice has no programs; and where `elsewhere` is it, unless that is empty.
Said without_usual_office(std::string const& name, fs::path const& elsewhere, std::string const& environment,
                          std::string const& arguments) {
    fs::path const log = fs::path(RUNS) / (name + ".log");
    std::string command = "bwrap --unshare-user --dev-bind / / ";
    if (!elsewhere.empty()) {
        // Debian's own says in one of its files where it is; others know it from where that file is.
        constexpr char const* file = "program/fundamentalrc";
        std::string const text =
            std::regex_replace(content(usual / file), std::regex("BRAND_BASE_DIR=.*"), "BRAND_BASE_DIR=$${ORIGIN}/..");
        std::ofstream(fs::path(RUNS) / (name + ".rc")) << text;
        command += "--bind '" + usual.string() + "' '" + elsewhere.string() + "' --ro-bind '" RUNS "/" + name +
                   ".rc' '" + (elsewhere / file).string() + "' ";
    }
    command += "--tmpfs '" OFFICE_PROGRAM "' /usr/bin/env -u UNO_PATH -u HEARTHCELL_OFFICE " + environment +
               " " ARCHIVE_TOOL " " + arguments + " >'" + log.string() + "' 2>&1 </dev/null";
    int const status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, content(log)};
}

class AnOffice : public testing::Test {
protected:
    void SetUp() override {
        if (office::confining() == nullptr)
            GTEST_SKIP() << "bubblewrap is not allowed here";
    }
};

} // namespace

TEST_F(AnOffice, IsNotNeededToSayVersionAndHelp) {
    fresh_folder("no office");
    EXPECT_EQ(without_usual_office("no office/version", {}, {}, "--version").status, 0);
    Said const help = without_usual_office("no office/help", {}, {}, "--help");
    EXPECT_EQ(help.status, 0);
    EXPECT_NE(help.words.find("--office"), std::string::npos) << help.words;
}

TEST_F(AnOffice, ThatIsNotThereIsSaidToBeMissing) {
    fs::path const folder = fresh_folder("no office at all");
    write_odf(good_workbook(0), folder / "run.fods");
    std::string const paths = "'" + (folder / "run.fods").string() + "' --output '" + (folder / "out").string() + "'";
    Said const nowhere = without_usual_office("no office at all/run", {}, "PATH=/nowhere", paths);
    EXPECT_EQ(nowhere.status, 2);
    EXPECT_NE(nowhere.words.find("--office DIR"), std::string::npos) << nowhere.words;
    Said const wrong = without_usual_office("no office at all/run", {}, {}, paths + " --office /nowhere");
    EXPECT_EQ(wrong.status, 2);
    EXPECT_NE(wrong.words.find("/nowhere"), std::string::npos) << wrong.words;
    EXPECT_FALSE(fs::exists(folder / "out"));
}

TEST_F(AnOffice, IsFoundWhereverItIs) {
    fs::path const folder = fresh_folder("office elsewhere");
    write_odf(good_workbook(0), folder / "run.fods");
    fs::path const elsewhere = folder / "an office";
    fs::create_directories(elsewhere);
    fs::create_directories(folder / "bin");
    fs::create_symlink(elsewhere / "program/soffice", folder / "bin/soffice");
    fs::create_symlink(elsewhere, folder / "another name");
    struct {
        char const *name, *environment, *argument;
    } const ways[] = {
        {"by its folder", "", "--office '%/an office'"},
        {"by a link to its programs", "", "--office '%/another name/program'"},
        {"by the SDK's variable", "'UNO_PATH=%/an office/program'", ""},
        {"by soffice on the PATH", "'PATH=%/bin:/usr/bin:/bin'", ""},
    };
    auto const here = [&](std::string text) {
        for (std::size_t at = 0; (at = text.find('%', at)) != std::string::npos;)
            text.replace(at, 1, folder.string());
        return text;
    };
    for (auto const& way : ways) {
        fs::remove_all(folder / "out");
        Said const said =
            without_usual_office("office elsewhere/run", elsewhere, here(way.environment),
                                 here("'%/run.fods' --output '%/out' --workers 1 --no-summary ") + here(way.argument));
        EXPECT_EQ(said.status, 0) << way.name << ": " << said.words;
        EXPECT_TRUE(fs::exists(folder / "out/run.fods")) << way.name;
    }
}

TEST(AChosenFolder, IsAnInstallationOrItsPrograms) {
    EXPECT_EQ(hearthcell::archive::find_office(usual), fs::canonical(OFFICE_PROGRAM));
    EXPECT_EQ(hearthcell::archive::find_office(OFFICE_PROGRAM), fs::canonical(OFFICE_PROGRAM));
    EXPECT_THROW(hearthcell::archive::find_office("/etc"), std::runtime_error);
}

} // namespace hearthcell::tests::archive
