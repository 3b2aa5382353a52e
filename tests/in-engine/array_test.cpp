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

TEST_F(Calc, KeepsAnErrorInItsOwnRowOfAnArrayFormula) {
    sheet.formulas("A1",
                   {{"0"}, {"500"}, {"1000"}, {"a hill"}, {"=NA()"}, {"1E9"}, {"2000"}, {"2500"}, {"3000"}, {"3500"}});
    sheet.array_formula("B1:B10", "=STOVE.BOILINGPOINT(A1:A10)");

    auto const block = sheet.values("B1:B10");
    EXPECT_EQ(block[3][0], CellValue(not_a_value));
    EXPECT_EQ(block[4][0], CellValue(not_available));
    EXPECT_EQ(block[5][0], CellValue(not_a_result));
    for (std::size_t row : {0U, 1U, 2U, 6U, 7U, 8U, 9U}) {
        auto const single = evaluate("=STOVE.BOILINGPOINT(A" + std::to_string(row + 1) + ")");
        EXPECT_EQ(number(block[row][0]), number(single)) << "row " << row + 1;
    }
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

TEST_F(Calc, SumsAnArrayOfResults) {
    sheet.formulas("A1", {{"0"}, {"1000"}, {"2000"}});
    sheet.array_formula("B1", "=SUMPRODUCT(STOVE.BOILINGPOINT(A1:A3))");
    sheet.array_formula("B2", "=AVERAGE(STOVE.BOILINGPOINT(A1:A3))");
    auto const singly = evaluate({"=STOVE.BOILINGPOINT(A1)", "=STOVE.BOILINGPOINT(A2)", "=STOVE.BOILINGPOINT(A3)"});
    double const sum = number(singly[0]) + number(singly[1]) + number(singly[2]);
    EXPECT_NEAR(number(sheet.value("B1")), sum, 1e-10);
    EXPECT_NEAR(number(sheet.value("B2")), sum / 3, 1e-10);
}

TEST_F(Calc, PairsTwoColumnsRowByRow) {
    sheet.formulas("A1", {{"500", "0.1"}, {"600", "0.2"}, {"700", "0"}});
    sheet.array_formula("C1:C3", "=STOVE.DRYMASS(A1:A3;B1:B3)");
    EXPECT_NEAR(number(sheet.value("C1")), 450, 1e-10);
    EXPECT_NEAR(number(sheet.value("C2")), 480, 1e-10);
    EXPECT_NEAR(number(sheet.value("C3")), 700, 1e-10);
}

} // namespace hearthcell::tests
