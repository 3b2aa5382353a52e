// Repeated runs and comparisons in cells: blocks, single cells, gaps and texts in columns, long columns.

#include "calc.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

// Invented figures, not measurements. Baseline in column A, new runs in column B.
office::TextRows const six_runs{{"1020", "640"}, {"980", "700"}, {"1055", "655"},
                                {"1010", "610"}, {"945", "690"}, {"990", "665"}};

std::vector<double> numbers(std::vector<CellValue> const& row) {
    std::vector<double> result;
    result.reserve(row.size());
    for (CellValue const& cell : row)
        result.push_back(number(cell));
    return result;
}

class Series : public Calc {
protected:
    Series() { sheet.formulas("A1", six_runs); }

    /// A call entered as an array formula over so many columns of row 20.
    std::vector<CellValue> row(std::string const& call, char last) {
        std::string const range = std::string("C20:") + last + "20";
        sheet.array_formula(range, "=STOVE." + call);
        return sheet.values(range).at(0);
    }
};

} // namespace

TEST_F(Series, FillsARowWhenEnteredAsAnArrayFormula) {
    // Recomputed with R 4.2
    std::vector<double> const expected{660, 6, 33.0151480, 0.0500230, 625.35273, 694.64727, 0.95};
    auto const given = numbers(row("SERIES(B1:B6;;\"all\")", 'I'));
    for (std::size_t i = 0; i < expected.size(); ++i)
        EXPECT_NEAR(given.at(i), expected[i], 5e-6) << "part " << i + 1;
}

TEST_F(Series, ShowsItsFirstPartUnlessAnotherIsNamed) {
    auto const results =
        evaluate({"=STOVE.SERIES(B1:B6)", "=STOVE.SAVING(A1:A6;B1:B6)", "=STOVE.DIFFERENCE(A1:A6;B1:B6)",
                  "=STOVE.SERIES(B1:B6;;\"N\")", "=STOVE.SAVING(A1:A6;B1:B6)*2", "=STOVE.SERIES(B1:B6;;\"écart-type\")",
                  "=STOVE.SERIES(B1:B6;;X1)"});
    EXPECT_EQ(number(results[0]), 660);
    EXPECT_NEAR(number(results[1]), 0.34, 1e-15);
    EXPECT_NEAR(number(results[2]), -340, 1e-12);
    EXPECT_EQ(number(results[3]), 6);
    EXPECT_NEAR(number(results[4]), 0.68, 1e-15);
    EXPECT_NEAR(number(results[5]), 33.0151480, 5e-8);
    EXPECT_EQ(number(results[6]), 660) << "the name stands in an empty cell";
}

TEST_F(Series, TakesTrueAndFalseForThePooledVariance) {
    // R 4.2, the t test inverted by root finding
    auto const own = numbers(row("SAVING(A1:A6;B1:B6;;FALSE();\"all\")", 'H'));
    EXPECT_NEAR(own.at(1), 0.301374887051, 5e-13);
    EXPECT_NEAR(own.at(4), 9.83880108306, 5e-12);
    auto const pooled = numbers(row("SAVING(A1:A6;B1:B6;;TRUE();\"all\")", 'H'));
    EXPECT_NEAR(pooled.at(1), 0.300757170876, 5e-13);
    EXPECT_EQ(pooled.at(4), 10);
}

TEST_F(Series, PassesOverEmptyCellsInsideAColumn) {
    sheet.formulas("D1", {{"640"}, {""}, {"700"}, {"655"}, {""}, {"610"}, {"690"}, {"665"}, {""}});
    EXPECT_EQ(numbers(row("SERIES(D1:D9;;\"all\")", 'I')), numbers(row("SERIES(B1:B6;;\"all\")", 'I')));
    sheet.formulas("A12", {{"640", "", "700", "655"}});
    EXPECT_EQ(number(evaluate("=STOVE.SERIES(A12:D12;;\"n\")")), 3) << "a row";
    // The sixth run stands in the eighth cell.
    sheet.formulas("D1", {{"26.1"}, {""}, {"25.8"}, {"26.4"}, {""}, {"25.9"}, {"26.2"}, {"31"}, {""}});
    EXPECT_EQ(number(evaluate("=STOVE.OUTLIER(D1:D9)")), 8);
}

TEST_F(Series, DoesNotPassOverTextOrErrorsInsideAColumn) {
    sheet.formulas("D1", {{"640"}, {"spilled"}, {"700"}});
    sheet.formulas("E1", {{"640"}, {"=NA()"}, {"700"}});
    auto const results = evaluate({"=STOVE.SERIES(D1:D3)", "=STOVE.OUTLIER(D1:D3)", "=STOVE.SAVING(A1:A6;D1:D3)",
                                   "=STOVE.SERIES(E1:E3)", "=STOVE.EXPLAIN(\"SERIES\";D1:D3)"});
    EXPECT_EQ(results[0], CellValue(not_a_value));
    EXPECT_EQ(results[1], CellValue(not_a_value));
    EXPECT_EQ(results[2], CellValue(not_a_value));
    EXPECT_EQ(results[3], CellValue(CellError{504})); // Calc's own, before the function is asked
    EXPECT_EQ(results[4], CellValue("row 2 of values is the text \"spilled\"; a number is needed."));
}

TEST_F(Series, ShowsNoLimitsWhereTheyAreUnboundedAndAllElse) {
    sheet.formulas("D1", {{"20", "400"}, {"900", "420"}});
    auto const given = row("SAVING(D1:D2;E1:E2;;;\"all\")", 'H');
    EXPECT_EQ(given.at(1), CellValue(not_available));
    EXPECT_EQ(given.at(2), CellValue(not_available));
    EXPECT_NEAR(number(given.at(0)), 0.108695652174, 5e-13);
    EXPECT_NEAR(number(given.at(3)), 0.927969770225, 5e-13); // R 4.2
    EXPECT_EQ(number(given.at(5)), 0.95);
    auto const sentence = std::get<std::string>(evaluate("=STOVE.EXPLAIN(\"SAVING\";D1:D2;E1:E2)"));
    EXPECT_NE(sentence.find("lower limit none; upper limit none"), std::string::npos) << sentence;
    EXPECT_NE(sentence.find("The limits are unbounded"), std::string::npos) << sentence;
}

TEST_F(Series, NeedsRuns) {
    auto const results =
        evaluate({"=STOVE.SERIES(B1)", "=STOVE.SERIES(X1:X9)", "=STOVE.SERIES(X1)", "=STOVE.OUTLIER(B1:B4)",
                  "=STOVE.DIFFERENCE(A1:A6;B1)", "=STOVE.SERIES(A1:B6)", "=STOVE.SERIES(B1:B6;95)"});
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_EQ(results[i], CellValue(not_available)) << i;
    EXPECT_EQ(results[5], CellValue(not_a_value)); // a block of both rows and columns
    EXPECT_EQ(results[6], CellValue(not_a_result));
}

TEST_F(Series, AnswersForAHundredThousandRuns) {
    constexpr int runs = 100000;
    office::TextRows column;
    column.reserve(runs);
    for (int i = 0; i < runs; ++i)
        column.push_back({std::to_string(500 + i % 1000)}); // 500 … 1499, a hundred times
    sheet.formulas("F1", column);
    std::vector<double> parts;
    for (CellValue const& cell :
         evaluate({"=STOVE.SERIES(F1:F100000;;\"n\")", "=STOVE.SERIES(F1:F100000)",
                   "=STOVE.SERIES(F1:F100000;;\"standard deviation\")", "=STOVE.SERIES(F:F;;\"standard deviation\")",
                   "=STOVE.OUTLIER(F1:F100000)", "=STOVE.SAVING(F1:F100000;F1:F100000)"}))
        parts.push_back(number(cell));
    EXPECT_EQ(parts[0], runs);
    EXPECT_EQ(parts[1], 999.5);
    // The variance of 0 … 999 is (1000² - 1)/12, over all; n - 1 makes it n/(n - 1) as large.
    double const deviation = std::sqrt(999999.0 / 12 * runs / (runs - 1));
    EXPECT_DOUBLE_EQ(parts[2], deviation);
    EXPECT_EQ(parts[3], parts[2]) << "the whole column";
    EXPECT_EQ(parts[4], 0);
    EXPECT_EQ(parts[5], 0);
}

TEST_F(Series, ArePlannedAndJudgedRowByRow) {
    sheet.formulas("D1", {{"0.05", "11.507"}, {"0.1", "3"}, {"", ""}, {"wide", "much"}, {"0.15", "40"}});
    sheet.array_formula("G1:G5", "=STOVE.EACHROW(\"RUNSNEEDED\";D1:D5;0.1)");
    sheet.array_formula("H1:H5", "=STOVE.EACHROW(\"PERFORMANCETIER\";\"CO\";E1:E5)");
    auto const cells = sheet.values("G1:H5");
    // R 4.2, power.t.test: 5.09, 16.7, 36.3; tiers from the table
    for (auto const& [line, runs, tier] : {std::tuple{0U, 6.0, 1.0}, {1U, 17.0, 5.0}, {4U, 37.0, 0.0}}) {
        EXPECT_EQ(number(cells[line][0]), runs);
        EXPECT_EQ(number(cells[line][1]), tier);
    }
    for (std::size_t const place : {0U, 1U}) {
        EXPECT_EQ(cells[2][place], CellValue(std::string())) << "an empty row";
        EXPECT_EQ(cells[3][place], CellValue(not_a_value)) << "a text";
    }
}

} // namespace hearthcell::tests
