// What stands in a copy for sharing where Hearthcell is missing.

#include "copy_for_sharing.hpp"

#include "extension/office/text.hpp"
#include "extension/sharing/freeze.hpp"
#include "functions/edition.hpp"

namespace hearthcell::tests {

namespace {

std::string const by_edition = std::string("\n") + edition; // the last line of each note

struct Row {
    char const* formula;
    char const* left; // the cell's formula in the copy; empty for a plain value
};

// Every kind of result; what each formula gives is compared with the open document, not stated here.
constexpr Row rows[] = {
    {"=STOVE.BOILINGPOINT(1240)", ""},
    {"=stove.boilingpoint( 1240 ; 1000 )", ""},
    {"=ROUND(STOVE.BOILINGPOINT(0);1)&\" °C\"", ""},
    {"=STOVE.BOILINGPOINT(0)>99", ""},                            // TRUE
    {"=STOVE.BOILINGPOINT(0)*1%", ""},                            // a percentage by the formula, not by the cell
    {"=IF(STOVE.BOILINGPOINT(0)>99;\"\";1)", "=\"\""},            // a text of no length
    {"=IF(STOVE.BOILINGPOINT(0)>99;\"12\";1)", ""},               // a text that looks like a number
    {"=STOVE.EXPLAIN(\"DRYMASS:fr\";520;14)", ""},                // a sentence in another language
    {"=STOVE.EXPLAIN(\"BOILINGPOINT\";99999)", ""},               // a text of ours
    {"=STOVE.BOILINGPOINT(99999)", "=#NUM!"},                     // too high
    {"=STOVE.BOILINGPOINT(\"high\")", "=#VALUE!"},                // a text
    {"=STOVE.BOILINGPOINT(NA())", "=#N/A"},                       // an error that passes through
    {"=STOVE.BOILINGPOINT(1/0)", "=#DIV/0!"},                     // another
    {"=A1*2", "=A1*2"},                                           // not ours
    {"=IFERROR(A9;\"error\")", "=IFERROR(A9;\"error\")"},         // an error must stay one
    {"=AVERAGE(A1:A1;A9)", "=AVERAGE(A1:A1;A9)"},                 // which no average may skip
    {"=\"STOVE.BOILINGPOINT(0)\"", "=\"STOVE.BOILINGPOINT(0)\""}, // only looks like ours
    {"=Boil-1", ""},                                              // through a name
    {"=Twice+1", ""},                                             // through two names
    {"=TABLE(A1;B30;B31)", ""},                                   // MULTIPLE.OPERATIONS over ours
    {"=SUM({1;2;3})", "=SUM({1;2;3})"},
};

} // namespace

TEST_F(CopyForSharing, ShowsTheSameWithoutHearthcellAsTheOpenDocument) {
    define(document, "Boil", "STOVE.BOILINGPOINT(1000)");
    define(document, "Twice", "Boil*2");
    office::TextRows formulas;
    for (Row const& row : rows)
        formulas.push_back({row.formula});
    sheet.formulas("A1", formulas);
    std::string const all = "A1:A" + std::to_string(std::size(rows));
    share(document);

    Document const shared = received();
    EXPECT_EQ(shared.sheet(0).shown_rows(all), sheet.shown_rows(all));
    expect_same(shared.sheet(0).values(all), sheet.values(all));
    auto const notes = comments(shared, 0);
    for (std::size_t place = 0; place < std::size(rows); ++place) {
        std::string const cell = "A" + std::to_string(place + 1);
        std::string const formula = shared.sheet(0).formula(cell);
        if (*rows[place].left != '\0')
            EXPECT_EQ(formula, rows[place].left) << rows[place].formula;
        else
            EXPECT_FALSE(formula.starts_with("=")) << formula;
        bool const was_ours = sheet.formula(cell) != formula;
        EXPECT_EQ(notes.count(cell), was_ours ? 1U : 0U) << rows[place].formula;
    }
}

TEST_F(CopyForSharing, KeepsEachFormulaAsTheUserSeesItInTheCellsComment) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240;1010)");
    sheet.formula("A2", "=STOVE.BOILINGPOINT(B1)");
    sheet.formula("A3", "=STOVE.BOILINGPOINT(1;2;3;4)"); // Err:504, which only LibreOffice knows
    comment_on(document, 0, "A2", "Measured at noon");
    share(document);
    Document const shared = received();
    std::map<std::string, std::string> const expected{
        {"A1", "=STOVE.BOILINGPOINT(1240,1010)" + by_edition},
        {"A2", "Measured at noon\n\n=STOVE.BOILINGPOINT(B1)" + by_edition},
        {"A3", "=STOVE.BOILINGPOINT(1,2,3,4)\nErr:504" + by_edition}};
    EXPECT_EQ(comments(shared, 0), expected);
    EXPECT_EQ(sheet.error("A3"), parameter_list.code);
    EXPECT_EQ(shared.sheet(0).error("A3"), not_a_value.code);
    EXPECT_EQ(comments(document, 0), (std::map<std::string, std::string>{{"A2", "Measured at noon"}}));
}

TEST_F(CopyForSharing, ReplacesArrayFormulasWhole) {
    for (int row = 1; row <= 4; ++row)
        sheet.number("A" + std::to_string(row), 1000.0 * row);
    sheet.text("A3", "high");
    comment_on(document, 0, "B2", "The second"); // Calc takes none on a cell of a block that is there already
    sheet.array_formula("B1:B5", "=STOVE.EACHROW(\"BOILINGPOINT\";A1:A4)"); // one row more than there are altitudes
    sheet.array_formula("C1:D1", "=STOVE.EACHROW(\"BOILINGPOINT\";{0;500})");
    sheet.array_formula("E1", "=SUM(STOVE.EACHROW(\"BOILINGPOINT\";A1:A2))");
    sheet.array_formula("F1:F2", "=A1:A2*2"); // not ours
    share(document);

    Document const shared = received();
    expect_same(shared.sheet(0).values("A1:F5"), sheet.values("A1:F5"));
    EXPECT_EQ(shared.sheet(0).shown_rows("A1:F5"), sheet.shown_rows("A1:F5"));
    EXPECT_EQ(shared.sheet(0).shown("B3"), "#VALUE!");
    EXPECT_EQ(shared.sheet(0).shown("B5"), "#N/A");
    EXPECT_EQ(shared.sheet(0).formula("F2"), "{=A1:A2*2}");
    auto const notes = comments(shared, 0);
    EXPECT_EQ(notes.size(), 8U);
    EXPECT_EQ(notes.at("B1"), "{=STOVE.EACHROW(\"BOILINGPOINT\",A1:A4)}" + by_edition);
    EXPECT_EQ(notes.at("B2"), "The second\n\n{=STOVE.EACHROW(\"BOILINGPOINT\",A1:A4)}" + by_edition);
}

TEST_F(CopyForSharing, IsAlsoMadeFromAnotherProcess) {
    sheet.formula("A1", "=STOVE.BOILINGPOINT(1240)");
    sheet.array_formula("B1:B2", "=STOVE.EACHROW(\"BOILINGPOINT\";{0|1000})");
    sheet.array_formula("C1", "=STOVE.BOILINGPOINT(0)>99");
    sheet.array_formula("C2", "=STOVE.BOILINGPOINT(0)*1%");
    sheet.array_formula("D1", "=TIME(12;30;0)*(STOVE.BOILINGPOINT(0)>99)");
    sheet.array_formula("D2", "=DATE(2026;1;31)+(STOVE.BOILINGPOINT(0)>99)");
    auto const before = sheet.values("A1:D2");
    auto const shown = sheet.shown_rows("A1:D2");
    sharing::Frozen const frozen = sharing::freeze(document.model(), office::wide(edition));
    document.hold(frozen.held);
    EXPECT_EQ(frozen.formulas, 7);
    EXPECT_TRUE(frozen.locked_sheet.isEmpty());
    EXPECT_EQ(sheet.values("A1:D2"), before);
    EXPECT_EQ(sheet.shown_rows("A1:D2"), shown); // C and D as TRUE, as a percentage, as a time and as a date
    EXPECT_EQ(comments(document, 0).at("A1"), "=STOVE.BOILINGPOINT(1240)" + by_edition);
}

} // namespace hearthcell::tests
