// The way a person installs it: LibreOffice's own package tool, through extension/install.

#include "calc.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "functions/edition.hpp"
#include "tests/support/content.hpp"

#include <unistd.h>

#include <chrono>

namespace hearthcell::tests {
namespace {

using namespace std::chrono_literals;

class Install : public testing::Test {
protected:
    Install() { std::filesystem::remove_all(folder); }
    ~Install() override { std::filesystem::remove_all(folder); }

    /// Runs the script on the profile of this test. Gives what it said.
    std::string run(std::vector<std::string> arguments) {
        std::filesystem::create_directories(folder);
        arguments.insert(arguments.end(), {"--profile", profile.string()});
        std::filesystem::remove(log);
        office::Process script(INSTALL_SCRIPT, arguments, log);
        EXPECT_EQ(script.wait(120s), 0) << content(log);
        return content(log);
    }

    /// The whole content of a sheet as an office with this profile calculates it.
    std::string calculated(std::filesystem::path const& sheet) {
        std::string const url = "-env:UserInstallation=" + office::narrow(office::file_url(profile));
        office::Process convert(OFFICE_PROGRAM "/soffice",
                                {url, "--headless", "--convert-to", "csv", "--outdir", folder.string(), sheet.string()},
                                folder / "convert.log");
        EXPECT_EQ(convert.wait(120s), 0) << content(folder / "convert.log");
        return content(folder / sheet.filename().replace_extension(".csv"));
    }

    std::filesystem::path const folder = scratch_folder() / "install";
    std::filesystem::path const profile = folder / "profile";
    std::filesystem::path const log = folder / "said";
};

bool can_install() {
    office::Process become_ordinary("/usr/bin/unshare", {"--user", "true"}, "/dev/null");
    return ::geteuid() != 0 || become_ordinary.wait(10s) == 0;
}

int files_named_after_us(std::filesystem::path const& folder) {
    int count = 0;
    for (auto const& entry : std::filesystem::recursive_directory_iterator(folder))
        count += entry.path().filename().string().find("earthcell") != std::string::npos ? 1 : 0;
    return count;
}

/// What the program says that the package brought along: LibreOffice must have let it be run.
std::string answer_of_program_in(std::filesystem::path const& profile) {
    for (auto const& entry : std::filesystem::recursive_directory_iterator(profile / "user/uno_packages"))
        if (entry.path().filename() == "hearthcell-archive") {
            std::filesystem::path const said = profile / "program said";
            office::Process program(entry.path().string(), {"--version"}, said);
            EXPECT_EQ(program.wait(10s), 0);
            return content(said);
        }
    return "no program";
}

} // namespace

TEST_F(Install, PutsThePackageIntoAProfileAndTakesItOutAgain) {
    if (!can_install())
        GTEST_SKIP()
            << "run the tests as an ordinary user: LibreOffice's package tool refuses to work for root, and this "
               "system allows no user namespace";
    Document document = Document::blank(office_with_package());
    document.sheet(0).formula("A1", "=ROUND(STOVE.BOILINGPOINT(0);2)");
    std::filesystem::create_directories(folder);
    std::filesystem::path const sheet = folder / "sheet.ods";
    document.save(sheet);

    std::string const office = std::filesystem::path(OFFICE_PROGRAM).parent_path();
    std::string const said = run({"--package", WHOLE_PACKAGE, "--prefix", folder / "own", "--office", office});
    EXPECT_NE(said.find("not on your PATH"), std::string::npos) << said;
    EXPECT_NE(run({"--list"}).find("is installed"), std::string::npos);
    EXPECT_EQ(answer_of_program_in(profile).find(edition), 0U) << answer_of_program_in(profile);
    EXPECT_GT(files_named_after_us(profile), 0);
    EXPECT_EQ(calculated(sheet), "99.97\n");

    run({"--package", package().string()}); // again, over itself

    run({"--remove"});
    EXPECT_NE(run({"--list"}).find("is not installed"), std::string::npos);
    EXPECT_EQ(calculated(sheet), "#NAME?\n");
    EXPECT_EQ(files_named_after_us(profile), 0); // LibreOffice clears its copies away at its next start
}

} // namespace hearthcell::tests
