// What each word of a formula is.

#include "extension/formulas/tokens.hpp"

#include <gtest/gtest.h>

#include <string>

namespace hearthcell::formulas {
namespace {

/// A letter for each kind of token, in the order of the kinds.
constexpr std::string_view letters = "=> 0\"rntf!o();{}|?";

constexpr std::string_view cut = "·";

std::string cut_apart(std::string_view formula) {
    std::string text;
    for (Token const& token : tokens_of(formula)) {
        text += text.empty() ? "" : cut;
        text += token.text;
    }
    return text;
}

std::string kinds(std::string_view formula) {
    std::string text;
    for (Token const& token : tokens_of(formula))
        text += letters.at(static_cast<std::size_t>(token.kind));
    return text;
}

std::string without_cuts(std::string text) {
    for (auto at = text.find(cut); at != std::string::npos; at = text.find(cut, at))
        text.erase(at, cut.size());
    return text;
}

struct Row {
    char const* apart; // the formula, with a point between its words
    char const* kinds;
};

void expect(std::initializer_list<Row> rows) {
    for (auto const& [apart, expected] : rows) {
        std::string const formula = without_cuts(apart);
        EXPECT_EQ(cut_apart(formula), apart);
        EXPECT_EQ(kinds(formula), expected) << apart;
    }
}

TEST(Tokens, TellFormulasAndWhatStandsBeforeThem) {
    expect({
        {"", ""},
        {"=·1", "=0"},
        {"A1·*·2", "ro0"},          // what a name stands for has no sign
        {"of:=·[.A1]·*·2", "=ro0"}, // a file of ODF
        {"oooc:=·[.A1]", "=r"},     // an older one
        {"msoxl:=·A1", "=r"},
        {"of:·cell·-·content·(·)", "=nof()"},       // a condition
        {"{=·SUM·(·A1:A3·*·2·)·}", "=f(ro0)>"},     // an array formula
        {"=·{·1·;·2·|·3·;·\"a\"·}", "={0;0|0;\"}"}, // an array in it
        {"{=·{·1·;·2·}·}", "={0;0}>"},
        {"=·{·1·;·2·}", "={0;0}"},
    });
}

TEST(Tokens, TellNumbersFromWhatBeginsLikeThem) {
    expect({
        {"=·4.186", "=0"},
        {"=·.5·+·1.·+·1E3·+·1e-3·+·2.5E+10", "=0o0o0o0o0"},
        {"=·12·%", "=0o"},
        {"=·-·3·^·-·2", "=o0oo0"},
        {"=·1E·+·x", "=non"},
        {"=·1st.A1", "=r"},
        {"=·2nd_run", "=n"},
        {"=·SUM·(·1:5·)", "=f(r)"},
        {"=·1:1048576·+·1·:·1048577", "=ro0o0"},
    });
}

TEST(Tokens, ReadTextsAsTheyAreWhateverIsInThem) {
    expect({
        {R"~(=·"")~", "=\""},
        {R"~(=·"say ""no"""·&·"A1+'x'")~", "=\"o\""},
        {R"~(=·"STOVE.BOILINGPOINT(1)")~", "=\""},
        {R"~(=·"été ; ( [")~", "=\""},
        {R"~(=·A1·&·"never closed)~", "=ro?"},
        {R"~(=·"closed"""· )~", "=\" "},
    });
}

TEST(Tokens, KnowEveryWayToNameCells) {
    expect({
        {"=·A1·+·$B$2·+·xfd1048576", "=roror"},
        {"=·A1:B2·+·$A1:B$2", "=ror"},
        {"=·SUM·(·A:C·;·$A:$C·;·1:5·;·$1:$5·)", "=f(r;r;r;r)"},
        {"=·Sheet1.A1·+·$Sheet1.$A$1", "=ror"},
        {"=·'My sheet'.A1·+·$'My sheet'.A1:B2", "=ror"},
        {"=·'It''s. a "
         "sheet"
         "'.C3",
         "=r"},
        {"=·Läufe.A1·+·Essais_2.B$4", "=ror"},
        {"=·Sheet1.A1:Sheet3.B4", "=r"},
        {"=·'2014'.A1:'2016'.A1", "=r"},
        {"=·Sheet1.A:B·+·Sheet1.2:4", "=ror"},
        {"=·'file:///tmp/site.ods'#$Sheet1.A1", "=r"},
        {"=·'file:///tmp/it''s.ods'#$'My. sheet'.A1:B2", "=r"},
        {"of:=·[.A1]·+·[.A1:.B2]·+·[$Runs.$A$1]·+·[Runs.A1:Runs2.B3]", "=rororor"},
        {"of:=·['It''s ]'.C3]·+·[.A:.C]·+·[.1:.5]", "=roror"},
        {"of:=·['file:///tmp/x.ods'#$Sheet1.A1]·+·['../x.ods'#$'My. sheet'.A1:.B2]", "=ror"},
        {"Runs.A1:Runs.B2· ·'Other runs'.C3:.D4", "r r"}, // addresses in a file
        {"#·Runs.A1", "?r"},
        {"=·A1:B2·:·C3", "=ror"},
        {"=·A1:B2·!·B1:B9·~·C4", "=roror"},
        {"=·A1·:·INDEX·(·A:A·;·3·)", "=rof(r;0)"},
        {"=·A1·:·first", "=ron"},
    });
}

TEST(Tokens, TellCellsFromNamesThatLookLikeThem) {
    expect({
        {"=·STOVE2·+·A1B·+·R1C1·+·A0·+·A01", "=nonononon"},
        {"=·XFD1·+·XFE1·+·A1048577·+·ABCD1", "=rononon"},
        {"=·A·+·B", "=non"},
        {"=·LOG10·(·A1·)·+·LOG10", "=f(r)or"},
        {"=·T1· ·(·2·)", "=f (0)"},
        {"=·A1·:·LOG10·(·2·)", "=rof(0)"},
        {"=·site.boil·*·2", "=no0"},
        {"=·fuel.T1", "=r"}, // a name as well, where a workbook defines it
        {"=·calorific_value·+·_x·+·x?·+·\\x", "=nononon"},
        {"=·Wärme·+·été.boil·+·水", "=nonon"},
        {"=·'My sheet'.local·+·$Sheet1.local", "=non"},
        {"=·'file:///tmp/x.ods'#altitude·+·'file:///tmp/x.ods'#$Sheet1.altitude", "=non"},
        {"=·'Mass of wood'·*·2", "=no0"}, // the heading of a column
    });
}

TEST(Tokens, KnowFunctionsByTheirBracket) {
    expect({
        {"=·HEARTHCELL.STOVE.BOILINGPOINT·(·A1·;·STOVE.X·(·)·)", "=f(r;f())"},
        {"=·_xlfn.STDEV.S·(·A1:A3·)·+·_xlfn.foo·(·1·)", "=f(r)of(0)"},
        {"=·RAND.NV·(·)·+·TRUE·(·)·+·Σ·(·1·)", "=f()of()of(0)"},
        {"=·(·A1·)·(·2·)", "=(r)(0)"},
    });
}

TEST(Tokens, KnowErrorsAndWhatIsLeftOfLostReferences) {
    expect({
        {"=·#REF!·+·#DIV/0!·+·#NAME?·+·#N/A·+·#VALUE!·+·#NUM!·+·#NULL!", "=!o!o!o!o!o!o!"},
        {"=·Err:504·+·err:510", "=!o!"},
        {"=·#REF!.A1·+·$#REF!.$A$1·+·A$#REF!·+·$Sheet1.#REF!#REF!·+·'My sheet'.$#REF!$4", "=!o!o!o!o!"},
        {"of:=·[#REF!]·+·[.A#REF!]·+·[$Sheet1.#REF!#REF!]", "=!o!o!"},
        {"=·#BEZUG!", "=!"},
        {"=·ERR:A", "=r"},
    });
}

TEST(Tokens, ReadColumnsOfTablesWhole) {
    expect({
        {"=·SUM·(·Runs[Mass]·)", "=f(t)"},
        {"=·Runs[[#This Row];[Mass]]·*·2", "=to0"},
        {"=·Runs[[#All];[Mass]:[It''s '[odd']]]", "=t"},
        {"=·Runs[never closed+A1", "=?"},
    });
}

TEST(Tokens, TellSignsApart) {
    expect({
        {"=·A1·<>·B1", "=ror"},
        {"=·A1·<=·-·B1", "=roor"},
        {"=·A1·>=·B1·&·C1", "=roror"},
        {"=·A1·<·B1·=·C1", "=roror"},
        {"=· \t\n·A1·\u00A0·+·\u202F\u3000·B1", "= r o r"},
        {"=·IF·(·A1·,·2·;·3·)", "=f(r;0;0)"},
        {"=·@·#·§", "=??n"},
    });
}

} // namespace
} // namespace hearthcell::formulas
