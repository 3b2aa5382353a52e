// Copies for sharing of documents of many kinds.

#include "copy_for_sharing.hpp"
#include "rules.hpp"

#include "extension/office/text.hpp"
#include "functions/edition.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <fstream>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::sheet::XSpreadsheet> sheet_itself(Document const& document, int index) {
    Reference<css::container::XIndexAccess> const sheets(document.model()->getSheets(), UNO_QUERY_THROW);
    return {sheets->getByIndex(index), UNO_QUERY_THROW};
}

void add_sheet(Document const& document, std::string const& name) {
    document.model()->getSheets()->insertNewByName(office::wide(name), sal_Int16(document.sheets()));
}

void protect(Document const& document, int sheet, rtl::OUString const& password) {
    Reference<css::util::XProtectable>(sheet_itself(document, sheet), UNO_QUERY_THROW)->protect(password);
}

} // namespace

TEST_F(CopyForSharing, ReachesMergedCellsHiddenSheetsAndTextsOfSeveralLines) {
    sheet.formula("B2", "=STOVE.BOILINGPOINT(1240)");
    sheet.formula("C2", "=STOVE.BOILINGPOINT(0)"); // will be covered by the cell at its left
    Reference<css::util::XMergeable>(sheet_itself(document, 0)->getCellRangeByName("B2:C3"), UNO_QUERY_THROW)
        ->merge(true);
    sheet.formula("A5", "=\"first\"&CHAR(10)&STOVE.SOURCE(\"BOILINGPOINT\")");
    add_sheet(document, "Behind");
    document.sheet(1).formula("A1", "=STOVE.BOILINGPOINT(4000)");
    document.sheet(1).formula("A2", "='" + sheet.name() + "'.B2-A1");
    Reference<css::beans::XPropertySet>(sheet_itself(document, 1), UNO_QUERY_THROW)
        ->setPropertyValue("IsVisible", css::uno::Any(false));
    share(document);

    Document const shared = received();
    expect_same(shared.sheet(0).values("A1:C5"), sheet.values("A1:C5"));
    expect_same(shared.sheet(1).values("A1:A2"), document.sheet(1).values("A1:A2"));
    EXPECT_EQ(shared.sheet(1).formula("A2"), document.sheet(1).formula("A2"));
    EXPECT_EQ(shared.sheet(0).shown("A5"), sheet.shown("A5"));
    EXPECT_EQ(comments(shared, 0).size(), 3U);
    EXPECT_TRUE(Reference<css::util::XMergeable>(sheet_itself(shared, 0)->getCellRangeByName("B2:C3"), UNO_QUERY_THROW)
                    ->getIsMerged());
}

TEST_F(CopyForSharing, LetsFormulasThatWereFilledDownShareACommentWhereThereAreThousands) {
    constexpr int rows = 10000;
    sheet.formulas("A1", {{"=ROW()/4", "=STOVE.BOILINGPOINT(A1)", "=B1+1"}});
    sheet.fill_down("A1:C" + std::to_string(rows));
    sheet.formula("B5000", "=STOVE.BOILINGPOINT(99999)"); // interrupts the run
    sheet.formula("D1", "=STOVE.BOILINGPOINT(0)");
    sheet.formula("D2", "=STOVE.BOILINGPOINT(1)");
    share(document);

    Document const shared = received();
    std::string const all = "A1:D" + std::to_string(rows);
    expect_same(shared.sheet(0).values(all), sheet.values(all));
    std::string const end = std::string("\n") + edition;
    std::map<std::string, std::string> const expected{{"B1", "=STOVE.BOILINGPOINT(A1)\nB1:B4999" + end},
                                                      {"B5000", "=STOVE.BOILINGPOINT(99999)" + end},
                                                      {"B5001", "=STOVE.BOILINGPOINT(A5001)\nB5001:B10000" + end},
                                                      {"D1", "=STOVE.BOILINGPOINT(0)" + end},
                                                      {"D2", "=STOVE.BOILINGPOINT(1)" + end}};
    EXPECT_EQ(comments(shared, 0), expected);
}

TEST_F(CopyForSharing, ShowsTheSameWhenItIsPassedOnInOtherFormats) {
    sheet.formulas("A1", {{"=STOVE.BOILINGPOINT(1240)", "=A1*2"},
                          {"=STOVE.BOILINGPOINT(99999)", "=IFERROR(A2;\"error\")"},
                          {"=STOVE.BOILINGPOINT(NA())", "=SUM(A1;A3)"},
                          {"=STOVE.SOURCE(\"BOILINGPOINT\")", "=LEN(A4)"},
                          {"=STOVE.BOILINGPOINT(0)>99", "=STOVE.BOILINGPOINT(0)*1%"}});
    sheet.array_formula("C1:C5", "=STOVE.EACHROW(\"BOILINGPOINT\";{0|500|1000|1500|2000})");
    share(document);
    for (char const* const ending : {".xlsx", ".fods"}) {
        std::filesystem::path passed_on = copy;
        passed_on.replace_extension(ending);
        Document bare = received();
        bare.save(passed_on);
        Document again = Document::open(office_without_package(), passed_on);
        again.recalculate();
        expect_same(again.sheet(0).values("A1:C5"), sheet.values("A1:C5"));
        EXPECT_EQ(again.sheet(0).shown_rows("A1:C5"), sheet.shown_rows("A1:C5")) << ending;
        std::string const comment = "=STOVE.BOILINGPOINT(1240)\n" + std::string(edition);
        if (ending == std::string(".fods")) {
            EXPECT_EQ(comments(again, 0)["A1"], comment);
            continue;
        }
        // LibreOffice 25.2 does not read the comments back that it writes into an .xlsx; 7.4 reads those of both.
        std::string const written = entry_of(passed_on, "xl/comments1.xml");
        for (char const* const part : {"ref=\"A1\"", "=STOVE.BOILINGPOINT(1240)", edition})
            EXPECT_NE(written.find(part), std::string::npos) << part << " in " << written;
    }
}

TEST_F(CopyForSharing, IsRefusedOnlyWhereALockedSheetHasFormulasOfOurs) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    add_sheet(document, "Locked");
    document.sheet(1).formula("A1", "=1+1");
    protect(document, 1, "secret");
    share(document);
    Document const shared = received();
    EXPECT_TRUE(Reference<css::util::XProtectable>(sheet_itself(shared, 1), UNO_QUERY_THROW)->isProtected());
    expect_same(shared.sheet(0).values("A1"), sheet.values("A1"));
}

TEST_F(CopyForSharing, CountsARuleOnALockedSheetAsLeft) {
    add_conditional_format(document, "B1:B9", Comparison::greater, "STOVE.BOILINGPOINT(1240)");
    protect(document, 0, "secret");
    Said const said = command(office_with_package(), document, "copy-for-sharing", copy);
    EXPECT_EQ(said.state, Said::State::done);
    EXPECT_NE(said.words.find("depends on the cell: 1."), std::string::npos) << said.words;
}

TEST_F(CopyForSharing, KeepsThePlaceOfUndoInTheOpenDocument) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    Reference<css::document::XUndoManager> const undo =
        Reference<css::document::XUndoManagerSupplier>(document.model(), UNO_QUERY_THROW)->getUndoManager();
    auto const before = undo->getAllUndoActionTitles();
    ASSERT_TRUE(before.hasElements());
    share(document);
    EXPECT_TRUE(undo->getAllUndoActionTitles() == before);
    EXPECT_FALSE(undo->isLocked());
}

TEST_F(CopyForSharing, TakesADocumentThatIsNotRecalculatedAsItIs) {
    sheet.number("A1", 1240);
    sheet.formula("B1", "=STOVE.BOILINGPOINT(A1)");
    sheet.formula("C1", "=B1*2");
    ASSERT_NEAR(number(sheet.value("C1")), 2 * 95.85, 0.1);
    Reference<css::sheet::XCalculatable>(document.model(), UNO_QUERY_THROW)->enableAutomaticCalculation(false);
    sheet.number("A1", 0); // what depends on it stays as it was
    share(document);
    Document const shared = received();
    expect_same(shared.sheet(0).values("A1:C1"), sheet.values("A1:C1"));
    EXPECT_NEAR(number(shared.sheet(0).value("B1")), 95.85, 0.1);
    EXPECT_FALSE(
        Reference<css::sheet::XCalculatable>(shared.model(), UNO_QUERY_THROW)->isAutomaticCalculationEnabled());
}

TEST_F(CopyForSharing, RunsNoMacro) {
    std::filesystem::path const marker = scratch_folder() / "the macro ran", file = scratch_folder() / "macro.fods";
    std::ofstream(file) << R"xml(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" office:version="1.3"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:ooo="http://openoffice.org/2004/office"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 xmlns:script="urn:oasis:names:tc:opendocument:xmlns:script:1.0" xmlns:xlink="http://www.w3.org/1999/xlink"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:scripts><office:script script:language="ooo:Basic"><ooo:libraries><ooo:library-embedded ooo:name="Standard">
<ooo:module ooo:name="Opening"><ooo:source-code>Sub Mark
  number = FreeFile
  Open ")xml" << marker.string()
                        << R"xml(" For Output As #number
  Close #number
End Sub
</ooo:source-code></ooo:module></ooo:library-embedded></ooo:libraries></office:script>
<office:event-listeners><script:event-listener script:language="ooo:script" script:event-name="dom:load"
 xmlns:dom="http://www.w3.org/2001/xml-events" xlink:type="simple"
 xlink:href="vnd.sun.star.script:Standard.Opening.Mark?language=Basic&amp;location=document"/></office:event-listeners>
</office:scripts>
<office:body><office:spreadsheet><table:table table:name="Data"><table:table-row>
<table:table-cell table:formula="of:=HEARTHCELL.STOVE.BOILINGPOINT(0)"/></table:table-row></table:table>
</office:spreadsheet></office:body></office:document>)xml";
    share(Document::open(office_with_package(), file, office::Access::read_write));
    EXPECT_FALSE(std::filesystem::exists(marker));
    EXPECT_NEAR(number(received().sheet(0).value("A1")), 99.97, 0.01);
}

} // namespace hearthcell::tests
