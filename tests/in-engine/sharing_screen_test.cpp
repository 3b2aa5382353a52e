// Copies for sharing hold what the open document shows, also where every recalculation shows something else.

#include "copy_for_sharing.hpp"

namespace hearthcell::tests {

namespace {

/// Fed by chance or the clock, and read by functions of ours.
constexpr char const* fed[][2] = {
    {"=RAND()*4000", "=STOVE.BOILINGPOINT(A1)"},
    {"=RAND()*4000", "=STOVE.EXPLAIN(\"BOILINGPOINT\";A2*1000)"}, // a text with the number in it
    {"=NOW()", "=STOVE.BOILINGPOINT((A3-INT(A3))*4000)"},
    {"=TODAY()", "=STOVE.BOILINGPOINT(MOD(A4;4000)+RAND())"},
    {"=RANDBETWEEN(0;4000)", "=IF(RAND()>0.5;STOVE.BOILINGPOINT(A5);STOVE.BOILINGPOINT(99999))"}, // or an error
    {"=A1", "=Chance*2"},
    {"=B1*2", "=STOVE.BOILINGPOINT(A7)"}, // through another function of ours
};
std::string const all = "B1:B" + std::to_string(std::size(fed));

class CopyOfChance : public CopyForSharing {
protected:
    CopyOfChance() {
        define(document, "Chance", "STOVE.BOILINGPOINT(4000*RAND())");
        office::TextRows formulas;
        for (auto const& row : fed)
            formulas.push_back({row[0], row[1]});
        sheet.formulas("A1", formulas);
        sheet.array_formula("C1:C2", "=STOVE.BOILINGPOINT({0|1}+RAND())");
    }
};

} // namespace

TEST_F(CopyOfChance, HoldsWhatTheScreenShows) {
    for (std::string const ending : {".ods", ".xlsx"}) {
        std::filesystem::path target = copy;
        target.replace_extension(ending);
        auto const before = sheet.values(all), block = sheet.values("C1:C2");
        auto const chance = sheet.values("A1:A7");
        Said const said = command(office_with_package(), document, "copy-for-sharing", target);
        EXPECT_EQ(said.state, Said::State::done) << said.words;
        EXPECT_EQ(sheet.values(all), before) << "the open document was recalculated";
        EXPECT_EQ(sheet.values("A1:A7"), chance);

        Document const shared = Document::open(office_without_package(), target);
        expect_same(shared.sheet(0).values(all), before);
        expect_same(shared.sheet(0).values("C1:C2"), block);
        EXPECT_EQ(shared.sheet(0).formula("A1"), "=RAND()*4000"); // not ours: goes on by chance
    }
}

TEST_F(CopyOfChance, KeepsTheResultsOfOtherFormulasToo) {
    double const shown = number(sheet.value("A1"));
    share(document);
    std::string const cells = entry_of(copy, "content.xml");
    std::string const start = "table:formula=\"of:=RAND()*4000\" office:value-type=\"float\" office:value=\"";
    auto const place = cells.find(start);
    ASSERT_NE(place, std::string::npos) << cells;
    EXPECT_NEAR(std::stod(cells.substr(place + start.size(), 25)), shown, 1e-9);
}

TEST_F(CopyOfChance, ShowsSomethingElseAfterARecalculation) { // else the test above proved nothing
    auto const before = sheet.values("B1");
    document.recalculate();
    EXPECT_NE(sheet.values("B1"), before);
}

TEST_F(CopyOfChance, LetsOtherFormulasFollowTheValuesOfTheScreen) {
    sheet.formula("D1", "=B1*10");
    sheet.formula("D2", "=D1+1");
    double const shown = number(sheet.value("B1"));
    share(document);
    Document const shared = received();
    EXPECT_EQ(shared.sheet(0).formula("D2"), "=D1+1");
    EXPECT_NEAR(number(shared.sheet(0).value("D2")), shown * 10 + 1, 1e-9);
}

} // namespace hearthcell::tests
