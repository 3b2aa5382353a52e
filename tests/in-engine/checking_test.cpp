// The check of a workbook: what it remarks, and what it leaves alone.

#include "checks.hpp"
#include "copy_for_sharing.hpp"
#include "picture_server.hpp"
#include "rules.hpp"

#include "extension/demonstration/demo_data.hpp"

#include <com/sun/star/sheet/XCalculatable.hpp>

#include <chrono>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// Every test has a blank sheet of its own.
class CheckOfAWorkbook : public Calc {
protected:
    using Lines = std::vector<std::string>;

    [[nodiscard]] Lines remarks() const { return remarks_of(checked(document)); }
};

TEST_F(CheckOfAWorkbook, HasNothingToSayOfTheDemonstrations) {
    for (char const* const name : {"bench-record", "campaign", "comparison", "logger-import"}) {
        Document const workbook = Document::open(office_with_package(),
                                                 std::filesystem::path(TEMPLATES) / "en" / (std::string(name) + ".ots"),
                                                 office::Access::read_write);
        Reference<css::sheet::XCalculatable> const calculation(workbook.model(), UNO_QUERY_THROW);
        calculation->enableAutomaticCalculation(false); // not after each cell that is filled
        fill(workbook, std::filesystem::path(SAMPLE_SHEETS) / "demo" / (std::string(name) + ".json"));
        calculation->enableAutomaticCalculation(true);
        checking::Result const result = checked(workbook);
        EXPECT_TRUE(remarks_of(result).empty()) << name << ": " << in_words(result);
        EXPECT_GT(result.runs, 0U) << name;
    }
}

TEST_F(CheckOfAWorkbook, SaysWhatIsWrongAndWhatItWouldBe) {
    sheet.number("A1", 520);
    sheet.number("B1", 12);
    sheet.formula("C1", "=STOVE.DRYMASS(A1;B1)");
    EXPECT_EQ(remarks(), Lines{"C1 STOVE.DRYMASS #NUM! moisture is 12, outside 0 to 0.75: 12 is 1200 %; type 12% or "
                               "0.12. [It would be 457.6.]"});
    sheet.number("B1", 0.12);
    checking::Result const result = checked(document);
    EXPECT_EQ(in_words(result), "Runs: 1. Nothing stands out in any of them.");
}

TEST_F(CheckOfAWorkbook, LooksIntoLongerFormulasAndOnlyWhereCalcComesToTheCall) {
    sheet.formula("A1", "=IF(1=1;2*STOVE.DRYMASS(520;12);STOVE.DRYMASS(0;0))+IFERROR(STOVE.BOILINGPOINT(99999);1)");
    sheet.formula("A2", "=IF(B2=\"\";\"\";STOVE.DRYMASS(520;12))");
    sheet.formula("A3", "=CHOOSE(2;STOVE.DRYMASS(520;13);STOVE.DRYMASS(520;0.14);STOVE.DRYMASS(520;15))");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 2U) << in_words(checked(document));
    EXPECT_EQ(found[0].find("A1 STOVE.BOILINGPOINT #NUM! altitude is 99999"), 0U) << found[0];
    EXPECT_EQ(found[1].find("A1 STOVE.DRYMASS #NUM! moisture is 12"), 0U) << found[1];
}

TEST_F(CheckOfAWorkbook, KnowsAnEmptyCellFromA0) {
    sheet.number("A1", 520);
    sheet.number("B1", 0);
    sheet.formula("C1", "=STOVE.DRYMASS(A1;B1)");
    EXPECT_EQ(remarks(), Lines());
    sheet.formula("B1", "");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0], "C1 STOVE.DRYMASS 520 moisture is an empty cell, which counts as 0.");
}

TEST_F(CheckOfAWorkbook, LeavesRowsAloneThatWereFilledDownAheadOfTheirReadings) {
    sheet.number("A1", 520);
    sheet.number("B1", 0.14);
    sheet.formula("C1", "=STOVE.DRYMASS(A1;B1)");
    sheet.fill_down("C1:C20");
    EXPECT_EQ(remarks(), Lines());
}

TEST_F(CheckOfAWorkbook, TellsEqualRemarksDownAColumnOnce) {
    for (int row = 1; row <= 5; ++row)
        sheet.number("A" + std::to_string(row), 500 + row);
    sheet.formula("C1", "=STOVE.DRYMASS(A1;14)");
    sheet.fill_down("C1:C5");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].find("C1:C5 STOVE.DRYMASS #NUM! moisture is 14"), 0U) << found[0];
}

TEST_F(CheckOfAWorkbook, LooksIntoArrayFormulas) {
    for (int row = 1; row <= 3; ++row) {
        sheet.number("A" + std::to_string(row), 500 + row);
        sheet.number("B" + std::to_string(row), row == 2 ? 14 : 0.14);
    }
    sheet.array_formula("C1:C3", "=STOVE.EACHROW(\"DRYMASS\";A1:A3;B1:B3)");
    sheet.formula("D1", "=SUMPRODUCT((A1:A3>0)*STOVE.FUELENERGY(A1:A3*1;0.14;999))");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 2U) << in_words(checked(document));
    EXPECT_EQ(found[0].find("C1 STOVE.EACHROW 430.86 1 of 3 could not be computed; the first: row 2"), 0U) << found[0];
    EXPECT_EQ(found[1].find("D1 STOVE.FUELENERGY"), 0U) << found[1];
}

TEST_F(CheckOfAWorkbook, PutsACallThatLooksAtItsCellIntoThatCell) {
    sheet.formula("A12", "=STOVE.DRYMASS(520;ROW())");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].find("A12 STOVE.DRYMASS #NUM! moisture is 12,"), 0U) << found[0];
}

TEST_F(CheckOfAWorkbook, LooksIntoNamesConditionalFormatsAndValidityRules) {
    define(document, "dry", "STOVE.DRYMASS(520;12)");
    add_conditional_format(document, "B1:B9", Comparison::greater, "STOVE.DRYMASS(520;13)");
    add_validity(document, "C1:C9", "STOVE.DRYMASS(520;14)", "1000");
    Lines const found = remarks();
    ASSERT_EQ(found.size(), 3U) << in_words(checked(document));
    EXPECT_EQ(found[0].find("name dry STOVE.DRYMASS  moisture is 12,"), 0U) << found[0];
    EXPECT_EQ(found[1].find("conditional format, from B1 on STOVE.DRYMASS  moisture is 13,"), 0U) << found[1];
    EXPECT_EQ(found[2].find("validity rule, from C1 on STOVE.DRYMASS  moisture is 14,"), 0U) << found[2];
}

TEST_F(CheckOfAWorkbook, LooksAtTheSelectedCellsOnly) {
    sheet.formula("A1", "=STOVE.DRYMASS(520;12)");
    sheet.formula("A2", "=STOVE.DRYMASS(520;13)");
    Lines const found = remarks_of(checked(document, Language::english, {{{0, 1, 0}, {0, 1, 0}}}));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].find("A2 "), 0U) << found[0];
}

TEST_F(CheckOfAWorkbook, SpeaksTheLanguageOfTheOfficeInItsOwnSentences) {
    sheet.formula("A1", "=STOVE.DRYMASS(520;0.14)");
    EXPECT_EQ(checked(document, Language::french).summary, "Essais\u00a0: 1. Rien n’y attire l’attention.");
    EXPECT_EQ(checked(Document::blank(office_with_package()), Language::spanish).summary,
              "Ninguna celda usa una función de Hearthcell: no se ha comprobado nada.");
}

TEST_F(CheckOfAWorkbook, RecognisesWhatWasWrittenByHandAndSaysItOnce) {
    for (int row = 1; row <= 4; ++row) {
        sheet.number("A" + std::to_string(row), 5000 + row);
        sheet.number("B" + std::to_string(row), 20);
        sheet.number("C" + std::to_string(row), 95);
        sheet.number("D" + std::to_string(row), 250);
    }
    sheet.formula("E1", "=(A1*4.186*(C1-B1)+D1*2260)/1000");
    sheet.fill_down("E1:E4");
    sheet.formula("F1", "=STOVE.DRYMASS(520;0.14)");
    checking::Result const result = checked(document);
    EXPECT_EQ(remarks_of(result), Lines());
    ASSERT_EQ(result.whole.size(), 1U) << in_words(result);
    EXPECT_EQ(
        result.whole[0].find("Formulas written by hand that compute what a function does, each at the first of its "
                             "cells: E1 STOVE.USEFULHEAT"),
        0U)
        << result.whole[0];
}

TEST_F(CheckOfAWorkbook, FetchesNothing) {
    PictureServer const server;
    sheet.formula("A1", "=STOVE.DRYMASS(LEN(WEBSERVICE(\"" + server.address() + "a\"));0.14)");
    sheet.text("B1",
               "'file:///nowhere/b.ods'#$Sheet1.A1"); // LibreOffice 7.4 ends where a server answers with a picture
    sheet.formula("A2", "=STOVE.DRYMASS(INDIRECT(B1);0.14)");
    sheet.formula("A3", "=STOVE.DRYMASS('" + server.address() + "c.ods'#$Sheet1.A1;0.14)");
    define(document, "far", "WEBSERVICE(\"" + server.address() + "d\")");
    sheet.formula("A4", "=STOVE.DRYMASS(LEN(far);0.14)");
    (void)sheet.values("A1:B4");
    std::this_thread::sleep_for(std::chrono::seconds(2));
    int const before = server.connections(); // what Calc itself has asked for
    checking::Result const result = checked(document);
    EXPECT_EQ(server.connections(), before);
    EXPECT_EQ(remarks_of(result), Lines());
    ASSERT_FALSE(result.whole.empty());
    EXPECT_NE(result.whole.back().find("(INDIRECT, WEBSERVICE, other files): 4."), std::string::npos)
        << in_words(result);
}

TEST_F(CheckOfAWorkbook, ChecksTenThousandCallsInSeconds) {
    sheet.formula("A1", "=500+ROW()/100");
    sheet.formula("B1", "=STOVE.DRYMASS(A1;0.14)");
    sheet.fill_down("A1:B10000");
    sheet.formula("B777", "=STOVE.DRYMASS(520;14)");
    auto const start = std::chrono::steady_clock::now();
    Lines const found = remarks();
    std::chrono::duration<double> const taken = std::chrono::steady_clock::now() - start;
    EXPECT_LT(taken.count(), 30) << "on a busy machine";
    RecordProperty("seconds", std::to_string(taken.count()));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].find("B777 "), 0U) << found[0];
}

} // namespace hearthcell::tests
