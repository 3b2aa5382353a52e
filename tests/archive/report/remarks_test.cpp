// What the check of an archive's workbooks remarks, and where it stands.

#include "tests/archive/runs/pages.hpp"
#include "tests/archive/runs/reports.hpp"

#include "extension/office/document.hpp"

namespace hearthcell::tests::archive {
namespace {

/// Two workbooks: one with slips in it, one without.
std::filesystem::path checked_folder() {
    static std::filesystem::path const folder = [] {
        auto const input = fresh_folder("workbooks to check") / "input";
        std::filesystem::create_directories(input);
        office::Office office({.package = PACKAGE});
        auto const make = [&](char const* name, double moisture, std::string const& mass) {
            office::Document workbook = office::Document::blank(office);
            office::Sheet sheet = workbook.sheet(0);
            sheet.number("A1", 520);
            sheet.number("B1", moisture);
            sheet.text("A2", mass);
            sheet.formula("C1", "=STOVE.DRYMASS(A1;B1)");
            if (!mass.empty())
                sheet.formula("C2", "=STOVE.DRYMASS(A2;0.14)");
            workbook.save(input / name);
        };
        make("clean.ods", 0.14, "");
        make("slips.ods", 14, "=HYPERLINK(1)");
        return input;
    }();
    return folder;
}

Ended check(std::string const& name, Words const& further = {}) {
    fresh_folder(name);
    Words words{checked_folder(), "--output", output_of(name), "--dry-run", "--check", "--workers", "1"};
    words.insert(words.end(), further.begin(), further.end());
    return run(name, words);
}

Words remarks_in(std::filesystem::path const& output) {
    Words lines;
    for (Row const& row : read_csv(output / "remarks.csv"))
        lines.push_back(row.at("file") + " " + row.at("sheet") + "." + row.at("cell") + " " + row.at("function") + " " +
                        row.at("value") + " " + row.at("remark") + " " + row.at("effect"));
    return lines;
}

} // namespace

TEST(Remarks, SayWhatIsWrongAndChangeNoExitStatus) {
    Ended const ended = check("check");
    EXPECT_EQ(ended.status, 0) << ended.complained;
    EXPECT_NE(ended.said.find("2 runs checked: nothing stands out in 1; 2 remarks in 1 workbook"), std::string::npos)
        << ended.said;
    EXPECT_EQ(
        remarks_in(ended.output),
        (Words{"slips.ods Sheet1.C1 STOVE.DRYMASS #NUM! moisture is 14, outside 0 to 0.75: 14 is 1400 %; type 14% or "
               "0.14. It would be 447.2.",
               "slips.ods Sheet1.C2 STOVE.DRYMASS #VALUE! mass is the text \"=HYPERLINK(1)\"; a number is needed. "}));
    EXPECT_TRUE(has_proper_line_ends(ended.output / "remarks.csv"));
    EXPECT_EQ(ended.left_behind, Words());
}

TEST(Remarks, EndInStatus1WhereThatIsAskedFor) {
    EXPECT_EQ(check("strict check", {"--strict"}).status, 1);
    fresh_folder("strict without check");
    EXPECT_EQ(run("strict without check",
                  {checked_folder(), "--output", output_of("strict without check"), "--strict", "--quiet"})
                  .status,
              2);
}

TEST(Remarks, AreJoined) {
    Ended const ended = check("check to join");
    fresh_folder("joined checks");
    Ended const joined = run("joined checks", {"--merge", ended.output, "--output", output_of("joined checks")});
    EXPECT_EQ(text_of(joined.output / "remarks.csv"), text_of(ended.output / "remarks.csv"));
    EXPECT_EQ(joined.said.substr(0, joined.said.find("\n\n")), ended.said.substr(0, ended.said.find("\n\n")));
}

TEST(Remarks, StandOnAPageOfTheSummary) {
    Ended const ended = check("check with summary");
    auto const pages = pages_of(ended.output / "summary.ods");
    ASSERT_TRUE(pages.contains("Remarks"));
    PageRows const rows = table_below(pages.at("Remarks"), "file");
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(text_in(rows[0].at(0)), "slips.ods");
    EXPECT_EQ(text_in(rows[0].at(1)), "Sheet1.C1");
    EXPECT_EQ(text_in(rows[0].at(4)).find("moisture is 14"), 0U);
    EXPECT_EQ(text_in(rows[0].at(5)), "It would be 447.2.");
}

TEST(Remarks, AreNotThereWhereNobodyAskedForThem) {
    fresh_folder("no check");
    Ended const ended =
        run("no check", {checked_folder(), "--output", output_of("no check"), "--dry-run", "--workers", "1"});
    EXPECT_FALSE(std::filesystem::exists(ended.output / "remarks.csv"));
    EXPECT_EQ(ended.said.find("checked"), std::string::npos) << ended.said;
}

} // namespace hearthcell::tests::archive
