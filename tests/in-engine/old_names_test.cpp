// A function that is shown under another name than it once was: files of that time go on, in every format.

#include "calc.hpp"

#include "extension/office/process.hpp"
#include "tests/support/content.hpp"

#include <chrono>
#include <cstdlib>
#include <fstream>

namespace hearthcell::tests {
namespace {

void run(char const* program, std::vector<std::string> const& arguments) {
    office::Process process(program, arguments, "/dev/null");
    ASSERT_EQ(process.wait(std::chrono::seconds(20)), 0) << program;
}

std::string with(std::string text, std::string_view old, std::string_view fresh) {
    std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    for (; at != std::string::npos; at = text.find(old, at + fresh.size()))
        text.replace(at, old.size(), fresh);
    return text;
}

/// The package as it was when EQUIVALENTDRYFUEL was shown as DRYWOOD.
std::filesystem::path package_with_the_old_name() {
    std::filesystem::path const folder = scratch_folder() / "old package", old = scratch_folder() / "old.oxt";
    std::filesystem::remove_all(folder);
    std::filesystem::copy_file(package(), old, std::filesystem::copy_options::overwrite_existing);
    run("/usr/bin/unzip", {"-q", "-o", package().string(), "CalcAddIns.xcu", "-d", folder.string()});
    std::filesystem::path const registration = folder / "CalcAddIns.xcu";
    std::string text = with(content(registration), "<value xml:lang=\"zxx\">STOVE.DRYWOOD</value>", "");
    text = with(text, "STOVE.EQUIVALENTDRYFUEL", "STOVE.DRYWOOD");
    std::ofstream(registration) << text;
    run("/usr/bin/zip", {"-q", "-j", old.string(), registration.string()});
    return old;
}

class OldNames : public testing::TestWithParam<char const*> {};

TEST_P(OldNames, GoOnInFilesThatWereSavedWithThem) {
    bool const newer_office = std::getenv("HEARTHCELL_OFFICE_ROOT") != nullptr;
    if (newer_office && GetParam() == std::string(".xlsx"))
        GTEST_SKIP() << "LibreOffice 25.2 does not look for compatibility names in .xlsx: an old name is #NAME? there";
    std::filesystem::path const file = scratch_folder() / (std::string("old name") + GetParam());
    CellValue before;
    {
        Office old({.package = package_with_the_old_name()});
        Document document = Document::blank(old);
        document.sheet(0).formulas("A1", {{"=STOVE.DRYWOOD(520;14%;18.7;40)"}});
        before = document.sheet(0).value("A1");
        ASSERT_NEAR(number(before), 374.5877, 1e-4);
        document.save(file);
    }
    Document document = Document::open(office_with_package(), file);
    document.recalculate();
    EXPECT_EQ(document.sheet(0).value("A1"), before);
    Document fresh = Document::blank(office_with_package());
    fresh.sheet(0).formulas("A1", {{"=STOVE.EQUIVALENTDRYFUEL(520;14%;18.7;40)"}});
    EXPECT_EQ(fresh.sheet(0).value("A1"), before);
    EXPECT_EQ(document.sheet(0).formula("A1"), fresh.sheet(0).formula("A1"));
}

std::string format_name(testing::TestParamInfo<char const*> const& info) {
    return info.param + 1;
}

INSTANTIATE_TEST_SUITE_P(Formats, OldNames, testing::Values(".ods", ".fods", ".xlsx", ".xls"), format_name);

} // namespace
} // namespace hearthcell::tests
