// In a French office EXPLAIN and LOGCHECK still answer in English, and in any language that the cell asks for.

#include "calls.hpp"

namespace hearthcell::tests {
namespace {

class Languages : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        french = std::make_unique<Office>(office::Settings{.package = package(), .locale = "fr-FR", .menus = "fr"});
        document = std::make_unique<Document>(Document::blank(*french));
        Sheet sheet = document->sheet(0);
        sheet.number("A1", 1.5);
        ASSERT_EQ(sheet.shown("A1"), "1,5") << "this office is not French at all";
    }
    static void TearDownTestSuite() {
        document.reset();
        french.reset();
    }
    static std::string answer(std::string const& formula) {
        Sheet sheet = document->sheet(0);
        sheet.formula("A1", formula);
        return sheet.shown("A1");
    }

    static std::unique_ptr<Office> french;
    static std::unique_ptr<Document> document;
};
std::unique_ptr<Office> Languages::french;
std::unique_ptr<Document> Languages::document;

TEST_F(Languages, EnglishIsSpokenWhateverTheOfficeSpeaks) {
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"DRYMASS\";520;14)"),
              "moisture is 14, outside 0 to 0.75: 14 is 1400 %; type 14% or 0.14.");
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"BOILINGPOINT\";1240)"), "Fine: local boiling point 95.8503 °C.");
}

TEST_F(Languages, EveryOneIsSpokenThatTheNameAsksForWithItsDecimalSign) {
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"BOILINGPOINT:en\";1240)"), "Fine: local boiling point 95.8503 °C.");
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"BOILINGPOINT:fr\";1240)"), "Bien\u00a0: point d’ébullition local 95,8503 °C.");
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"BOILINGPOINT:es\";1240)"), "Bien: punto de ebullición local 95,8503 °C.");
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"BOILINGPOINT:sw\";1240)"), "Sawa: kiwango cha kuchemka hapa 95.8503 °C.");
    EXPECT_EQ(
        answer("=STOVE.EXPLAIN(\"DRYMASS:fr\";520;14)"),
        "«\u00a0humidité\u00a0» vaut 14, hors de l’intervalle de 0 à 0,75\u00a0: 14, c’est 1400\u00a0%\u00a0; tapez "
        "14% ou 0,14.");
}

TEST_F(Languages, OneThatNobodySpeaksIsRefusedInWords) {
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"DRYMASS:de\";520;14)"),
              "\"de\" is no language of EXPLAIN; there are \"en\", \"fr\", \"es\", \"sw\".");
    EXPECT_EQ(answer("=STOVE.EXPLAIN(\"NOSUCHTHING:fr\";520)"), "#N/A");
}

TEST_F(Languages, TheLogIsCheckedInTheOneThatTheLastArgumentNames) {
    Sheet sheet = document->sheet(0);
    sheet.formulas("C1", {{"=0", "=20"}, {"=2", "=26"}, {"=4", "=32"}, {"=5", "=70.5"}, {"=7", "=41"}});
    EXPECT_EQ(answer("=STOVE.LOGCHECK(C1:C5;D1:D5)"),
              "A jump to 41 °C, 29.5 K below the reading 2 min before: no pot jumps like that. Was water added or the "
              "probe moved?");
    EXPECT_EQ(answer("=STOVE.LOGCHECK(C1:C5;D1:D5;;;;;\"fr\")"),
              "Un saut à 41 °C, 29,5 K au-dessous de la mesure faite 2 min avant\u00a0: aucune marmite ne saute ainsi. "
              "A-t-on ajouté de l’eau ou déplacé la sonde\u00a0?");
    EXPECT_EQ(answer("=STOVE.LOGCHECK(C1:C5;D1:D5;;;;;\"de\")"), "#N/A");
}

} // namespace
} // namespace hearthcell::tests
