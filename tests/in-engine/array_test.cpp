#include "calc.hpp"

namespace hearthcell::tests {

TEST_F(Calc, FillsAFormulaDownAColumn) {
    constexpr int rows = 1000;
    office::TextRows altitudes;
    std::vector<std::string> singly;
    for (int row = 0; row < rows; ++row) {
        altitudes.push_back({std::to_string(row * 5)});
        singly.push_back("=STOVE.BOILINGPOINT(" + std::to_string(row * 5) + ")");
    }
    sheet.formulas("A1", altitudes);
    sheet.formula("B1", "=STOVE.BOILINGPOINT(A1)");
    sheet.fill_down("B1:B1000");

    auto const filled = sheet.values("B1:B1000");
    auto const expected = evaluate(singly);
    for (std::size_t row = 0; row < filled.size(); ++row)
        EXPECT_EQ(number(filled[row][0]), number(expected[row])) << "row " << row + 1;
}

TEST_F(Calc, WorksThroughColumnsRowByRowInAnArrayFormula) {
    sheet.formulas("A1", {{"500", "0.1"}, {"", ""}, {"600", "a wet day"}, {"700", "2"}, {"800", "0.2"}, {"", ""}});
    sheet.array_formula("C1:C6", "=STOVE.EACHROW(\"DRYMASS\";A1:A6;B1:B6)");
    auto const block = sheet.values("C1:C6");
    EXPECT_EQ(block[0][0], CellValue(450.0));
    EXPECT_EQ(block[1][0], CellValue(std::string()));
    EXPECT_EQ(block[2][0], CellValue(not_a_value));
    EXPECT_EQ(block[3][0], CellValue(not_a_result));
    EXPECT_EQ(block[4][0], CellValue(640.0));
    EXPECT_EQ(block[5][0], CellValue(not_available)) << "the result ends with the last row that holds anything";
}

TEST_F(Calc, WorksThroughColumnsRowByRowInsideAnotherFunctionOfAnOrdinaryCell) {
    sheet.formulas("A1", {{"500", "0.1"}, {"", ""}, {"600", "0.2"}, {"", ""}});
    auto const results =
        evaluate({"=SUM(STOVE.EACHROW(\"DRYMASS\";A1:A4;B1:B4))", "=AVERAGE(STOVE.EACHROW(\"DRYMASS\";A1:A4;B1:B4))",
                  "=MAX(STOVE.EACHROW(\"DRYMASS\";A1:A4;B1:B4))", "=SUMPRODUCT(STOVE.EACHROW(\"DRYMASS\";A1:A4;0.5))",
                  "=STOVE.EACHROW(\"DRYMASS\";A1:A4;B1:B4)", "=SUM(STOVE.EACHROW(\"DRYMASS\";A1:A4;2))",
                  "=STOVE.EACHROW(\"EXPLAIN\";\"DRYMASS\";A1:A4;12)"});
    EXPECT_EQ(results[0], CellValue(450.0 + 480.0));
    EXPECT_EQ(results[1], CellValue((450.0 + 480.0) / 2));
    EXPECT_EQ(results[2], CellValue(480.0));
    EXPECT_EQ(results[3], CellValue(550.0));
    EXPECT_EQ(results[4], CellValue(450.0)) << "a single cell shows the first row";
    EXPECT_EQ(results[5], CellValue(not_a_result)) << "no sum skips an error";
    EXPECT_EQ(results[6], CellValue(std::string("moisture is 12, outside 0 to 0.75: 12 is 1200 %; type 12% or 0.12.")));
}

/// An add-in cannot know where it stands, and a sum of one row alone would be wrong without a word.
TEST_F(Calc, RefusesABlockWhereOneValueIsWantedWhereverItStands) {
    sheet.formulas("A1", {{"0"}, {"1000"}, {"2000"}});
    sheet.array_formula("B1:B3", "=STOVE.BOILINGPOINT(A1:A3)");
    sheet.array_formula("C1", "=AVERAGE(STOVE.BOILINGPOINT(A1:A3))");
    sheet.formulas("D1", {{"=SUMPRODUCT(STOVE.BOILINGPOINT(A1:A3))"},
                          {"=STOVE.BOILINGPOINT(A1:A3)"}, // in a row of the range
                          {"=STOVE.BOILINGPOINT(A:A)"},
                          {"=SUM(STOVE.DRYMASS(500;A1:A3))"},
                          {"=STOVE.WATERHEAT(5000;20;95;A1:A3)"},
                          {"=STOVE.BOILINGPOINT({0;1000})"}});
    for (char const* cell : {"B1", "B3", "C1", "D1", "D2", "D3", "D4", "D5", "D6"})
        EXPECT_EQ(sheet.value(cell), CellValue(not_a_value)) << cell;
    EXPECT_EQ(evaluate("=STOVE.EXPLAIN(\"BOILINGPOINT\";A1:A3)"),
              CellValue(std::string("altitude must be one value, not a block of cells. Whole columns go through "
                                    "STOVE.EACHROW.")));
    EXPECT_EQ(evaluate("=STOVE.BOILINGPOINT(A2:A2)"), evaluate("=STOVE.BOILINGPOINT(A2)")) << "a block of one is none";
}

} // namespace hearthcell::tests
