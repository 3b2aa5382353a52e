// Which functions a formula calls: ours, those that are volatile, others.

#include "extension/formulas/calls.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/tokens.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace hearthcell::formulas {
namespace {

std::string called(std::string_view formula) {
    std::string names;
    for (Token const& token : tokens_of(formula))
        if (Function const* const function = function_called(token))
            names += std::string(function->name) + ' ';
    return names;
}

bool any(std::string_view formula, bool (*is)(Token const&)) {
    auto const tokens = tokens_of(formula);
    return std::any_of(tokens.begin(), tokens.end(), is);
}

std::string whole_call(std::string_view formula) {
    Function const* const function = only_call(formula);
    return function == nullptr ? "none" : std::string(function->name);
}

TEST(OurFunctions, AreKnownByTheirNameInFilesAndInTheCell) {
    EXPECT_EQ(called("=HEARTHCELL.STOVE.BOILINGPOINT(A1)+STOVE.boilingpoint(2)"), "BOILINGPOINT BOILINGPOINT ");
    EXPECT_EQ(called("of:=hearthcell.stove.BoilingPoint ([.A1])"), "BOILINGPOINT ");
    EXPECT_EQ(called("{=SUM(STOVE.BOILINGPOINT(A1:A2))}"), "BOILINGPOINT ");
}

TEST(OurFunctions, AreNotTextsNorOtherNames) {
    EXPECT_EQ(called("=\"STOVE.BOILINGPOINT(1)\"&'STOVE.BOILINGPOINT('.A1"), "");
    EXPECT_EQ(called("=STOVE.BOILINGPOINT"), "");
    EXPECT_EQ(called("=MYSTOVE.BOILINGPOINT(1)+STOVE2(1)+BOILINGPOINT(1)+STOVE.NEVERHEARDOF(1)"), "");
    EXPECT_TRUE(any("=STOVE.NEVERHEARDOF(1)", is_ours)) << "of another edition";
    EXPECT_TRUE(any("=HEARTHCELL.STOVE.X()", is_ours));
    EXPECT_FALSE(any("=STOVE2(1)+HEARTHCELL.X(1)+STOVE.BOILINGPOINT", is_ours));
}

TEST(OurFunctions, AreShownAsTheUserSeesThemAndNothingElseChanges) {
    EXPECT_EQ(as_shown("=HEARTHCELL.STOVE.BOILINGPOINT( A1 )&\"HEARTHCELL.STOVE.BOILINGPOINT(\""),
              "=STOVE.BOILINGPOINT( A1 )&\"HEARTHCELL.STOVE.BOILINGPOINT(\"");
    EXPECT_EQ(as_shown("=HEARTHCELL.STOVE.NEVERHEARDOF(1)"), "=HEARTHCELL.STOVE.NEVERHEARDOF(1)");
}

TEST(OurFunctions, CanBeAFormulasOnlyCall) {
    for (char const* const formula :
         {"=HEARTHCELL.STOVE.BOILINGPOINT(A1)", "{=STOVE.BOILINGPOINT(A1:A3)}", "= STOVE.BOILINGPOINT (SUM(A1;(2))) "})
        EXPECT_EQ(whole_call(formula), "BOILINGPOINT") << formula;
    for (char const* const formula :
         {"", "=", "=A1", "=STOVE.BOILINGPOINT(A1)+1", "=-STOVE.BOILINGPOINT(A1)", "=SUM(STOVE.BOILINGPOINT(A1))",
          "=STOVE.BOILINGPOINT(A1)+STOVE.BOILINGPOINT(A2)", "=STOVE.BOILINGPOINT(A1", "=(STOVE.BOILINGPOINT(A1))"})
        EXPECT_EQ(whole_call(formula), "none") << formula;
}

TEST(VolatileFunctions, AreTheClockChanceAndWhatTheOfficeSaysOfItself) {
    for (char const* const formula : {"=NOW()", "=today ()", "=A1*Rand()", "=RANDBETWEEN(1;6)", "=RAND.NV()",
                                      "=RANDBETWEEN.NV(1;6)", "=RANDARRAY(3)", "=INFO(\"system\")", "=CELL(\"row\")"})
        EXPECT_TRUE(any(formula, is_volatile)) << formula;
    for (char const* const formula : {"=TODAY", "=\"NOW()\"", "='NOW('.A1", "=INDIRECT(\"A1\")", "=MYNOW()+NOW2()"})
        EXPECT_FALSE(any(formula, is_volatile)) << formula;
}

TEST(Calls, EndWithTheirOwnBracket) {
    auto const tokens = tokens_of("=SUM((A1);\")\";STOVE.X(1))+(2)");
    EXPECT_EQ(tokens.at(end_of_call(tokens, 1)).start, 24U);
    auto const open = tokens_of("=SUM((A1)");
    EXPECT_EQ(end_of_call(open, 1), open.size());
}

} // namespace
} // namespace hearthcell::formulas
