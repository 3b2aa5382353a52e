// 'Do the same in a folder' with the real program: what is typed into one sheet comes into copies of all.

#include "old_sheets.hpp"
#include "program_on_path.hpp"

#include "extension/office/process.hpp"
#include "tests/support/content.hpp"

#include <algorithm>
#include <chrono>

namespace hearthcell::tests {

namespace {

class SameForReal : public OldSheets {
protected:
    SameForReal() { make_old_sheet(office_with_package(), sheets / "2021" / "fourth.xls", 2600); }

    [[nodiscard]] std::string report(char const* name) const { return content(results / name); }

    ProgramOnPath const program{folder / "program"};
    Office office{{.package = package()}};
};

} // namespace

TEST_F(SameForReal, IsDoneFromAnOriginalOfEachFormat) {
    for (char const* const from : {"2014/first.ods", "2019/third.xlsx", "2021/fourth.xls"}) {
        std::filesystem::remove_all(results);
        auto const example = start_from(office, sheets / from);
        first_sheet(example).formula("D4", "=STOVE.BOILINGPOINT(B3)");
        said = command(office, example, "do-the-same-in-folder", {results, sheets, sheets / from});
        EXPECT_EQ(said.state, Said::State::done) << said.words;
        ASSERT_TRUE(eventually([&] { return open_document(office, results / "summary.ods").is(); })) << from;
        close(open_document(office, results / "summary.ods"));
        for (char const* const name : {"2014/first.ods", "2016/second.ods", "2019/third.xlsx", "2021/fourth.xls"}) {
            Document const carried = Document::open(office, results / name);
            EXPECT_NE(carried.sheet(0).formula("D4").find("STOVE.BOILINGPOINT(B3)"), std::string::npos)
                << from << " " << name << report("problems.csv");
            EXPECT_NEAR(number(carried.sheet(0).value("D4")), number(carried.sheet(0).value("B4")), 1) << name;
            EXPECT_EQ(Document::open(office, sheets / name).sheet(0).formula("D4"), "") << name;
        }
        std::string const plan = report("carried.csv");
        EXPECT_EQ(std::count(plan.begin(), plan.end(), '\n'), 2) << "more than what was typed: " << plan;
        std::string const pairs = report("old-and-new.csv");
        EXPECT_NE(pairs.find("2016/second.ods,Sheet1.D4=Sheet1.B4,Sheet1,4,D4,B4,"), std::string::npos) << pairs;
        close(example);
    }
}

TEST_F(SameForReal, IsPlannedAlsoWhereNothingIsToBeDone) {
    std::filesystem::path const example = folder / "example.ods";
    std::filesystem::copy_file(original, example);
    office::Process plan(ARCHIVE_TOOL,
                         {sheets.string(), "--example", example.string(), "--of", original.string(), "--plan",
                          "--output", results.string(), "--quiet"},
                         (folder / "said").string());
    EXPECT_EQ(plan.wait(std::chrono::seconds(120)), 0);
    EXPECT_EQ(report("carried.csv"), "example,sheet,cell,kind,before,after,note\r\n");
}

} // namespace hearthcell::tests
