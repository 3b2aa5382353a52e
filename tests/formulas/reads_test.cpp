// Which cells a formula reads. That Calc reads the same is tested with the archive program.

#include "extension/formulas/reads.hpp"

#include <gtest/gtest.h>

#include <sstream>

namespace hearthcell::formulas {
namespace {

std::string written(std::vector<Range> const& ranges) {
    std::string text;
    for (auto const& [first, last] : ranges) {
        text += (text.empty() ? "" : " ") + std::to_string(first.sheet) + '.' + cell_name(first.column, first.row);
        if (first != last)
            text += ':' + cell_name(last.column, last.row);
        EXPECT_EQ(first.sheet, last.sheet);
    }
    return text;
}

std::vector<std::string> const sheets{"Sheet1", "It's. two", "Sheet3"};

/// In cell C3 of the second sheet.
std::string reads(std::string_view formula, std::vector<Definition> definitions = {},
                  std::vector<Table> const& tables = {}) {
    Names const names(std::move(definitions));
    return written(Reads(sheets, names, tables).of(formula, {1, 2, 2}));
}

TEST(Reads, WhatItsReferencesName) {
    EXPECT_EQ(reads("=A1+$B$2:C7"), "1.A1 1.B2:C7");
    EXPECT_EQ(reads("=Sheet1.A1+$Sheet3.B2:A1+'It''s. two'.C4"), "0.A1 2.A1:B2 1.C4");
    EXPECT_EQ(reads("=SUM(Sheet1.A1:Sheet3.B2)"), "0.A1:B2 1.A1:B2 2.A1:B2");
    EXPECT_EQ(reads("=SUM(A:A)+SUM(2:3)"), "1.A1:A1048576 1.A2:XFD3");
    EXPECT_EQ(reads("{=SUM(A1:A2*B1:B2)}"), "1.A1:A2 1.B1:B2");
}

TEST(Reads, NothingElse) {
    EXPECT_EQ(reads("=\"A1\"&LOG10(2)&STOVE2&R1C1&A1B&#REF!.A1&Err:504"), "");
    EXPECT_EQ(reads("='file:///tmp/x.ods'#$Sheet1.A1"), "") << "of another file";
    EXPECT_EQ(reads("=Nowhere.A1"), "");
}

TEST(Reads, WhatNamesStandFor) {
    EXPECT_EQ(reads("=site.boil*2", {{"site.boil", "", "$Sheet1.$B$1", {}}}), "0.B1");
    EXPECT_EQ(reads("=twice", {{"twice", "", "2*$Sheet1.$B$1+SUM($Sheet3.$A$1:$B$2)", {}}}), "0.B1 2.A1:B2");
    EXPECT_EQ(reads("=fuel.T1", {{"fuel.T1", "", "$Sheet1.$B$1", {}}}), "0.B1");
    EXPECT_EQ(reads("=four", {{"four", "", "2*twice", {}}, {"twice", "", "2*$Sheet1.$B$1", {}}}), "0.B1");
    EXPECT_EQ(reads("=mass", {{"mass", "Sheet3", "$Sheet3.$A$1", {}}, {"mass", "", "$Sheet1.$A$1", {}}}), "0.A1");
    EXPECT_EQ(reads("=Sheet3.mass", {{"mass", "Sheet3", "$Sheet3.$A$1", {}}}), "2.A1");
    EXPECT_EQ(reads("=a_", {{"a_", "", "b+$Sheet1.$A$1", {}}, {"b", "", "a_+$Sheet1.$A$2", {}}}), "0.A1 0.A2");
}

TEST(Reads, WhatIsRelativeInANameAsSeenFromTheCell) {
    Place const from{0, 0, 3}; // D1 of the first sheet
    EXPECT_EQ(reads("=left", {{"left", "", "C1", from}}), "1.B3");
    EXPECT_EQ(reads("=left", {{"left", "", "$C1", from}}), "1.C3");
    EXPECT_EQ(reads("=top", {{"top", "", "D$1", from}}), "1.C1");
    EXPECT_EQ(reads("=next", {{"next", "", "'It''s. two'.D1", from}}), "2.C3") << "the sheet moves along";
    EXPECT_EQ(reads("=there", {{"there", "", "$'It''s. two'.$A$9", from}}), "1.A9");
    EXPECT_EQ(reads("=beyond", {{"beyond", "", "Sheet3.D1", from}}), "") << "there is no fourth sheet";
    EXPECT_EQ(reads("=over", {{"over", "", "A1048575", from}}), "1.XFD1")
        << "past the edge it goes on at the other side";
}

TEST(Reads, WhatLiesBetweenTwoNames) {
    std::vector<Definition> const ends{{"first", "", "$Sheet1.$B$4", {}},
                                       {"last", "", "$Sheet1.$A$9", {}},
                                       {"block", "", "$Sheet1.$A$2:$C$3", {}},
                                       {"other", "", "$Sheet3.$A$1", {}}};
    EXPECT_EQ(reads("=SUM(first:last)", ends), "0.A4:B9");
    EXPECT_EQ(reads("=SUM(block : last)", ends), "0.A2:C9");
    EXPECT_EQ(reads("=SUM($Sheet1.D1:first)", ends), "0.B1:D4");
    EXPECT_EQ(reads("=SUM(A1:INDEX(B:B;3))", ends), "1.A1 1.B1:B1048576");
    EXPECT_EQ(reads("=SUM(first:other)", ends), "0.B4 2.A1") << "there is nothing between";
}

TEST(Reads, ColumnsOfTables) {
    std::vector<Table> const tables{{"Runs", {{1, 0, 0}, {1, 9, 2}}, {"Mass", "It's [odd]", "Time"}}};
    EXPECT_EQ(reads("=SUM(Runs[Mass])", {}, tables), "1.A1:A10");
    EXPECT_EQ(reads("=Runs[[#This Row];[mass]]*2", {}, tables), "1.A3");
    EXPECT_EQ(reads("=runs[@Time]", {}, tables), "1.C3");
    EXPECT_EQ(reads("=SUM(Runs[[#All];[Time]:[It''s '[odd']]])", {}, tables), "1.B1:C10");
    EXPECT_EQ(reads("=SUM(Runs[#Data])", {}, tables), "1.A1:C10");
    EXPECT_EQ(reads("=SUM(Runs[])+SUM(Runs[Nothing])", {}, tables), "1.A1:C10 1.A1:C10");
    EXPECT_EQ(reads("=SUM(Others[Mass])", {}, tables), "");
}

} // namespace
} // namespace hearthcell::formulas
