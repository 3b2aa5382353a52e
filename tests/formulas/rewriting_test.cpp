// Formulas of which some words change.

#include "extension/formulas/quotes.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/rewriting.hpp"
#include "extension/formulas/tokens.hpp"

#include <gtest/gtest.h>

namespace hearthcell::formulas {
namespace {

std::string with_essais(std::string_view formula) {
    return rewritten(formula, [](Token const& token) {
        return with_other_sheets(token, [](std::string const& sheet) {
            return sheet == "Runs" || sheet == "It's" ? std::optional<std::string>("L'essai") : std::nullopt;
        });
    });
}

TEST(Rewriting, NamesSheetsAnewWhereverAReferenceNamesThem) {
    EXPECT_EQ(with_essais("=Runs.A1+$Runs.A1:B2+$'It''s'.A1:Runs.B2+RUNS"),
              "='L''essai'.A1+$'L''essai'.A1:B2+$'L''essai'.A1:'L''essai'.B2+RUNS");
    EXPECT_EQ(with_essais("of:=[Runs.A1:.B2]+[.Runs1]"), "of:=['L''essai'.A1:.B2]+[.Runs1]");
    EXPECT_EQ(with_essais("=Runs.local+'It''s'.local"), "='L''essai'.local+'L''essai'.local");
}

TEST(Rewriting, LeavesTextsOtherFilesAndOtherSheetsAlone) {
    for (char const* const formula :
         {"=\"Runs.A1\"&Runs", "='file:///a.ods'#$Runs.A1", "=Runs2.A1+'My Runs'.A1", "=Runs()+Runs.#REF!"})
        EXPECT_EQ(with_essais(formula), formula);
}

TEST(Rewriting, PutsOtherTextsInThePlaceOfParts) {
    std::string_view const text = "'It''s'.B4:C7";
    Reference const reference = reference_of(tokens_of(text).at(0));
    EXPECT_EQ(with_replacements(text, {{reference.first.cell, "A1"}, {reference.last.cell, "XY99"}}),
              "'It''s'.A1:XY99");
    EXPECT_EQ(with_replacements(text, {}), text);
}

TEST(Quotes, DoubleTheMarkInside) {
    EXPECT_EQ(quoted("It's", '\''), "'It''s'");
    EXPECT_EQ(quoted("", '"'), "\"\"");
    EXPECT_EQ(unquoted("'It''s'"), "It's");
    EXPECT_EQ(unquoted("\"say \"\"no\"\"\""), "say \"no\"");
    EXPECT_EQ(unquoted("plain's"), "plain's");
    EXPECT_EQ(unquoted("'"), "");
    EXPECT_EQ(past_quotes("x'It''s'.A1", 1), 8U);
    EXPECT_EQ(past_quotes("'It''s", 0), std::string_view::npos);
}

} // namespace
} // namespace hearthcell::formulas
