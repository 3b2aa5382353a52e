// What a reference says, and where in the formula it says it.

#include "extension/formulas/reference.hpp"
#include "extension/formulas/tokens.hpp"

#include <gtest/gtest.h>

#include <sstream>

namespace hearthcell::formulas {
namespace {

std::string written(Corner const& corner) {
    std::ostringstream text;
    text << (corner.sheet_fixed ? "$" : "") << corner.sheet << '!' << (corner.column_fixed ? "$" : "");
    if (corner.column)
        text << *corner.column;
    text << ',' << (corner.row_fixed ? "$" : "");
    if (corner.row)
        text << *corner.row;
    return text.str();
}

std::string written(Reference const& reference) {
    return std::string(reference.file) + '#' + written(reference.first) + ' ' + written(reference.last);
}

std::string read(std::string_view formula) {
    std::vector<Token> const tokens = tokens_of(formula);
    EXPECT_EQ(tokens.size(), 1U) << formula;
    EXPECT_EQ(tokens.at(0).kind, TokenKind::reference) << formula;
    return written(reference_of(tokens.at(0)));
}

std::string block(std::string_view formula) {
    auto const [top, left, bottom, right] = block_of(reference_of(tokens_of(formula).at(0)));
    std::ostringstream text;
    text << top << ',' << left << ' ' << bottom << ',' << right;
    return text.str();
}

std::string address(std::string_view text) {
    auto const address = address_in(text);
    if (!address)
        return "none";
    auto const [top, left, bottom, right] = address->block;
    std::ostringstream written;
    written << address->sheet << '|' << top << ',' << left << ' ' << bottom << ',' << right;
    return written.str();
}

TEST(Reference, SaysSheetColumnAndRowOfBothEndsAndWhatIsFixed) {
    EXPECT_EQ(read("B7"), "#!1,6 !1,6");
    EXPECT_EQ(read("$B$7"), "#!$1,$6 !$1,$6");
    EXPECT_EQ(read("b$7:AA9"), "#!1,$6 !26,8");
    EXPECT_EQ(read("$A:C"), "#!$0, !2,");
    EXPECT_EQ(read("1:$5"), "#!,0 !,$4");
    EXPECT_EQ(read("$'It''s'.A1:B2"), "#$'It''s'!0,0 !1,1");
    EXPECT_EQ(read("Sheet1.A1:$Sheet3.B2"), "#Sheet1!0,0 $Sheet3!1,1");
    EXPECT_EQ(read("'file:///a.ods'#$Runs.A1"), "'file:///a.ods'#$Runs!0,0 $Runs!0,0");
    EXPECT_EQ(read("[.A1:.B$2]"), "#!0,0 !1,$1");
    EXPECT_EQ(read("['../a.ods'#$'My. sheet'.A1:.B2]"), "'../a.ods'#$'My. sheet'!0,0 !1,1");
    EXPECT_EQ(read("XFD1048576"), "#!16383,1048575 !16383,1048575");
}

TEST(Reference, HoldsPartsOfTheFormulaItself) {
    std::string_view const formula = "=1+'My sheet'.$B$7";
    Token const token = tokens_of(formula).back();
    Corner const corner = reference_of(token).first;
    EXPECT_EQ(token.start, 3U);
    EXPECT_EQ(token.end(), formula.size());
    EXPECT_EQ(corner.sheet.data() - formula.data(), 3);
    EXPECT_EQ(corner.sheet, "'My sheet'");
    EXPECT_EQ(corner.cell.data() - formula.data(), 14);
    EXPECT_EQ(corner.cell, "$B$7");
}

TEST(Reference, IsABlockWhicheverCornersAreNamed) {
    EXPECT_EQ(block("C9:A2"), "1,0 8,2");
    EXPECT_EQ(block("A9:C2"), "1,0 8,2");
    EXPECT_EQ(block("B:A"), "0,0 1048575,1");
    EXPECT_EQ(block("[.5:.1]"), "0,0 4,16383");
}

TEST(Address, NeedsNoQuotesAroundTheSheet) {
    EXPECT_EQ(address("Runs.B4"), "Runs|3,1 3,1");
    EXPECT_EQ(address("$Runs.$B$4"), "Runs|3,1 3,1");
    EXPECT_EQ(address("Sheet of the day.C11"), "Sheet of the day|10,2 10,2");
    EXPECT_EQ(address("'It''s a sheet'.B4"), "It's a sheet|3,1 3,1");
    EXPECT_EQ(address("It's a sheet.B4"), "It's a sheet|3,1 3,1");
    EXPECT_EQ(address("a.b.B4"), "a.b|3,1 3,1");
    EXPECT_EQ(address("2014.B4"), "2014|3,1 3,1");
    EXPECT_EQ(address("Runs.A1:C20"), "Runs|0,0 19,2");
    EXPECT_EQ(address("$Runs.$A$1:.$C$20"), "Runs|0,0 19,2");
    EXPECT_EQ(address("Runs.A1:Runs.C20"), "Runs|0,0 19,2");
    EXPECT_EQ(address("Sheet of the day.A:A"), "Sheet of the day|0,0 1048575,0");
}

TEST(Address, IsNothingElse) {
    for (char const* const text : {"", ".", "B4", ".B4", "Runs", "Runs.", "Runs.local", "Runs.B4+1", "$.B4",
                                   "Runs.A1:Other.B2", "'file:///a.ods'#$Runs.A1", "Runs.B0", "Runs.XFE1"})
        EXPECT_EQ(address(text), "none") << text;
}

TEST(CellName, CountsColumnsInLetters) {
    EXPECT_EQ(cell_name(0, 0), "A1");
    EXPECT_EQ(cell_name(25, 9), "Z10");
    EXPECT_EQ(cell_name(26, 9), "AA10");
    EXPECT_EQ(cell_name(701, 0), "ZZ1");
    EXPECT_EQ(cell_name(702, 0), "AAA1");
    EXPECT_EQ(cell_name(last_column, last_row), "XFD1048576");
}

} // namespace
} // namespace hearthcell::formulas
