// What workbooks hold, read without an office, and what is seen in it.

#include "extension/archive/files/xls_formula.hpp"
#include "extension/archive/files/xlsx_formula.hpp"
#include "extension/archive/inventory/look.hpp"
#include "tests/archive/made/zip_writer.hpp"

#include <gtest/gtest.h>

#include <fstream>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;

std::filesystem::path place(std::string const& name) {
    std::filesystem::create_directories(READERS);
    return std::filesystem::path(READERS) / name;
}

/// A package with one sheet, three names of texts and a defined name.
std::filesystem::path xlsx(std::string const& name, std::string const& sheet) {
    auto const file = place(name);
    std::filesystem::remove(file);
    std::string const relations = R"(<Relationships xmlns="r">)";
    ZipWriter zip(file);
    zip.add("_rels/.rels",
            relations + R"(<Relationship Id="a" Type="http://x/officeDocument" Target="b.xml"/></Relationships>)");
    zip.add("b.xml", R"(<workbook xmlns:r="r"><sheets><sheet name="It's" r:id="c"/></sheets><definedNames>)"
                     R"(<definedName name="cp">'It''s'!$B$1</definedName></definedNames></workbook>)");
    zip.add("_rels/b.xml.rels",
            relations + R"(<Relationship Id="c" Type="http://x/worksheet" Target="d.xml"/>)"
                        R"(<Relationship Id="e" Type="http://x/sharedStrings" Target="e.xml"/></Relationships>)");
    zip.add("d.xml", "<worksheet><sheetData>" + sheet +
                         R"(</sheetData><mergeCells><mergeCell ref="A1:C1"/></mergeCells></worksheet>)");
    zip.add("e.xml",
            R"(<sst><si><t>Water</t></si><si><r><t>Wood</t></r><r><t>, kg</t></r><rPh><t>aloud</t></rPh></si></sst>)");
    zip.close();
    return file;
}

std::filesystem::path fods(std::string const& name, std::string const& rows) {
    auto const file = place(name);
    std::ofstream(file)
        << R"(<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0")"
           R"( xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0")"
           R"( xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0")"
           R"( office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>)"
           R"(<table:table table:name="Data">)"
        << rows
        << R"(</table:table><table:named-expressions><table:named-range table:name="cp" )"
           R"(table:base-cell-address="$Data.$C$4" table:cell-range-address="$Data.$B$1"/></table:named-expressions>)"
           "</office:spreadsheet></office:body></office:document>";
    return file;
}

struct Read {
    explicit Read(std::filesystem::path const& file) {
        read_contents(file, format_of(file).value(), std::uint64_t{64} << 20, room, contents);
    }
    /// "A1 Water; B1 4.186; C1 =B1*2 8"
    [[nodiscard]] std::string text() const {
        std::string all;
        for (ContentCell const& cell : contents.cells())
            all += (all.empty() ? "" : "; ") + cell_name(cell.place) +
                   (cell.formula.empty() ? "" : " " + cell.formula) + " " + written(cell.value);
        return all;
    }
    Room room{std::uint64_t{16} << 20};
    Contents contents{room};
};

TEST(Contents, OfXlsxHoldTextsAndSharedFormulas) {
    Read read(xlsx(
        "shared.xlsx",
        R"(<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><v>4.186</v></c><c r="C1" t="inlineStr"><is><t>Note</t></is></c></row>)"
        R"(<row r="2"><c r="A2" t="s"><v>1</v></c><c r="B2"><f t="shared" ref="B2:B3" si="0">A1*$B$1+It!C4</f><v>2</v></c></row>)"
        R"(<row r="3"><c r="B3"><f t="shared" si="0"/><v>3</v></c><c r="C3" t="e"><f>1/0</f><v>#DIV/0!</v></c></row>)"));
    EXPECT_EQ(read.text(),
              "A1 Water; B1 4.186; C1 Note; A2 Wood, kg; B2 =A1*$B$1+It.C4 2; B3 =A2*$B$1+It.C5 3; C3 =1/0 #DIV/0!");
    EXPECT_EQ(read.contents.sheets(), (std::vector<std::string>{"It's"}));
    ASSERT_EQ(read.contents.merged().size(), 1U);
    EXPECT_EQ(read.contents.merged()[0], (formulas::Range{{0, 0, 0}, {0, 0, 2}}));
    auto const names = read.contents.take_names();
    ASSERT_EQ(names.size(), 1U);
    EXPECT_EQ(names[0].content, "='It''s'.$B$1");
}

TEST(Contents, OfOpenDocumentHoldTextsFormulasAndRepeatedCells) {
    Read read(fods(
        "plain.fods",
        R"(<table:table-row><table:table-cell office:value-type="string" table:number-columns-spanned="2"><text:p>Water</text:p></table:table-cell>)"
        R"(<table:covered-table-cell office:value-type="string"><text:p>hidden</text:p></table:covered-table-cell>)"
        R"(<table:table-cell office:value-type="float" office:value="5" table:number-columns-repeated="2"/></table:table-row>)"
        R"(<table:table-row><table:table-cell table:formula="of:=[.C1]*cp" office:value-type="float" office:value="20.93"/></table:table-row>)"));
    EXPECT_EQ(read.text(), "A1 Water; C1 5; D1 5; A2 of:=[.C1]*cp 20.93");
    EXPECT_EQ(read.contents.merged().size(), 1U);
    auto const names = read.contents.take_names();
    ASSERT_EQ(names.size(), 1U);
    EXPECT_EQ(names[0].content, "$Data.$B$1");
    EXPECT_EQ(names[0].seen_from, (Place{0, 3, 2}));
}

TEST(Contents, AreNoLargerThanTheirRoom) {
    std::string rows =
        R"(<table:table-row table:number-rows-repeated="1048576"><table:table-cell table:number-columns-repeated="16384" )"
        R"(office:value-type="string"><text:p>again and again</text:p></table:table-cell></table:table-row>)";
    EXPECT_THROW(Read{fods("many.fods", rows)}, Trouble);
    std::string shared =
        R"(<row r="1"><c r="A1"><f t="shared" si="0">)" + std::string(8000, '1') + "</f><v>1</v></c></row>";
    for (int row = 2; row < 4000; ++row)
        shared += "<row><c><f t=\"shared\" si=\"0\"/><v>1</v></c></row>";
    EXPECT_THROW(Read{xlsx("long.xlsx", shared)}, Trouble);
}

TEST(XlsxFormulas, AreReadInTheWayOfCalc) {
    EXPECT_EQ(in_the_way_of_calc("SUM(Sheet2!A1,'My sheet'!$B$2)"), "=SUM(Sheet2.A1,'My sheet'.$B$2)");
    EXPECT_EQ(in_the_way_of_calc("\"a!b\"&A1"), "=\"a!b\"&A1");
    EXPECT_EQ(in_the_way_of_calc("#REF!+A1/#DIV/0!"), "=#REF!+A1/#DIV/0!");
    EXPECT_EQ(in_the_way_of_calc("'It''s! ours'!A1"), "='It''s! ours'.A1");
}

std::string xls(std::string const& tokens, xls::Book const& book = {}, xls::Shared const& shared = {}) {
    return xls::formula_of(tokens, {0, 4, 2}, book, shared);
}

template <std::size_t size> std::string bytes(unsigned char const (&values)[size]) {
    return {reinterpret_cast<char const*>(values), size};
}

TEST(XlsFormulas, AreReadFromTheirTokens) {
    EXPECT_EQ(xls(bytes({0x44, 0, 0, 0, 0xC0, 0x44, 1, 0, 1, 0, 0x05})), "=A1*$B$2");
    EXPECT_EQ(xls(bytes({0x1E, 5, 0, 0x13, 0x15, 0x14})), "=(-5)%");
    EXPECT_EQ(xls(bytes({0x25, 0, 0, 3, 0, 0, 0xC0, 1, 0xC0, 0x22, 1, 4, 0})), "=SUM(A1:B4)");
    EXPECT_EQ(xls(bytes({0x25, 0, 0, 3, 0, 0, 0xC0, 1, 0xC0, 0x19, 0x10, 0, 0})), "=SUM(A1:B4)");
    EXPECT_EQ(xls(bytes({0x17, 2, 0, 'a', '"', 0x1E, 2, 0, 0x1E, 3, 0, 0x42, 3, 1, 0})), "=IF(\"a\"\"\";2;3)");
    EXPECT_EQ(xls(bytes({0x44, 0, 0, 0, 0xC0, 0x1E, 1, 0, 0x41, 27, 0})), "=ROUND(A1;1)");
    EXPECT_EQ(
        xls(bytes({0x01, 4, 0, 2, 0}), {}, {{{4, 2}, std::string_view("\x2C\xFF\xFF\xFF\xC0\x1E\x02\x00\x03", 9)}}),
        "=B4+2")
        << "shared: one row up, one column to the left";
    xls::Book book{{"A", "It's"}, {{true, {}}}, {{0, 1, 1}}, {"cp"}};
    EXPECT_EQ(xls(bytes({0x5A, 0, 0, 6, 0, 3, 0xC0}), book), "='It''s'.D7");
    EXPECT_EQ(xls(bytes({0x43, 1, 0, 0, 0}), book), "=cp");
}

TEST(XlsFormulas, ThatAreNotUnderstoodAreNotGuessed) {
    EXPECT_EQ(xls(""), "");
    EXPECT_EQ(xls(bytes({0x03})), "");
    EXPECT_EQ(xls(bytes({0x1E, 1, 0, 0x1E, 2, 0})), "");
    EXPECT_EQ(xls(bytes({0x1E, 1, 0, 0x41, 0xFF, 0x7F})), "") << "an unknown function";
    EXPECT_EQ(xls(bytes({0x5A, 9, 0, 6, 0, 3, 0xC0})), "") << "an unknown sheet";
    EXPECT_EQ(xls(bytes({0x60, 0, 0, 0, 0, 0, 0, 0})), "") << "an array";
    EXPECT_EQ(xls(std::string(3000, '\x1D') + std::string(3000, '\x08')), "");
}

TEST(Looking, SeesFormsOursAndWhatIsOdd) {
    auto const cell = [](std::string const& formula, double value) {
        return "<table:table-cell" + (formula.empty() ? "" : " table:formula=\"of:=" + formula + "\"") +
               " office:value-type=\"float\" office:value=\"" + std::to_string(value) + "\"/>";
    };
    auto const row = [](std::string const& cells) { return "<table:table-row>" + cells + "</table:table-row>"; };
    auto const heat = [&](int number) {
        std::string const n = std::to_string(number);
        return cell("4.186*[.A" + n + "]*([.C" + n + "]-[.B" + n + "])", 1);
    };
    std::string const readings = cell("", 5) + cell("", 20) + cell("", 95);
    std::string const text = R"(<table:table-cell office:value-type="string"><text:p>0,42</text:p></table:table-cell>)";
    Read read(fods(
        "odd.fods",
        row(readings + heat(1)) + row(readings + heat(2)) + row(readings + cell("", 1500)) + row(readings + heat(4)) +
            row(cell("HEARTHCELL.STOVE.BOILINGPOINT(1)", 99) + text +
                R"(<table:table-cell table:formula="of:=1/0" office:value-type="string" office:string-value="" )"
                R"(calcext:value-type="error" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"><text:p>#DIV/0!</text:p></table:table-cell>)")));
    Looked const looked = look_at(read.contents);
    ASSERT_EQ(looked.sheets.size(), 1U);
    SheetFacts const& sheet = looked.sheets[0];
    EXPECT_EQ(sheet.formulas, 5U);
    EXPECT_EQ(sheet.ours, 1U);
    ASSERT_EQ(sheet.recognised.size(), 1U);
    EXPECT_EQ(sheet.recognised[0].function, "WATERHEAT");
    EXPECT_EQ(sheet.recognised[0].formula, "=4.186*A1*(C1-B1)");
    EXPECT_EQ(sheet.recognised[0].cells, 3U);
    std::string odd;
    for (Problem const& problem : looked.problems)
        odd += std::string(words(problem.reason)) + ": " + problem.detail + "\n";
    EXPECT_EQ(odd, "results typed over: Data.D3\nnumbers that are texts: Data.B5\nstored errors: Data.C5\n");
    SheetFacts const again = sheet_facts_in(written({sheet}));
    EXPECT_EQ(again.recognised[0].methods, (std::vector<std::string>{"WBT 4.2.3", "WBT 3"}));
    EXPECT_EQ(again.texts.size(), sheet.texts.size());
}

} // namespace
} // namespace hearthcell::tests::archive
