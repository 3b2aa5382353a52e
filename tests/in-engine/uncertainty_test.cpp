#include "calc.hpp"

#include <chrono>
#include <cmath>

namespace hearthcell::tests {
namespace {

/// One run's raw readings with their standard uncertainties, as a record has them; no method, 40 g of char.
office::TextRows const run{{"760", "2"},     {"4360", "2"}, {"14.5", "0.5"}, {"950", "2"},
                           {"95.85", "0.5"}, {"4170", "2"}, {"430", "2"},    {"0.14", "0.015"},
                           {"18.7", "0.35"}, {"", ""},      {"40", "3"}};
constexpr double run_uncertainty = 0.00856816; // by differences, computed apart

office::TextRows turned(office::TextRows const& rows) {
    office::TextRows result(rows.front().size());
    for (auto const& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            result[i].push_back(row[i]);
    return result;
}

std::string text(CellValue const& value) {
    if (std::string const* found = std::get_if<std::string>(&value))
        return *found;
    ADD_FAILURE() << "no text but " << testing::PrintToString(value);
    return "";
}

} // namespace

TEST_F(Calc, CarriesDoubtThroughARunInAColumnAndInARow) {
    sheet.formulas("A1", run);
    sheet.formulas("D1", turned(run));
    auto const results = evaluate(
        {"=STOVE.UNCERTAINTY(\"BENCHEFFICIENCY\";A1:A11;B1:B11)", "=STOVE.UNCERTAINTY(\"BENCHEFFICIENCY\";D1:N1;D2:N2)",
         "=STOVE.UNCERTAINTY(\"BENCHEFFICIENCY\";A1:A15;B1:B15;2)", // room below
         "=STOVE.UNCERTAINTY(\"WATERMASS\";{3.6;14.5};{0.02;2})", "=STOVE.UNCERTAINTY(\"WETBASIS\";0.15;0.01)"});
    EXPECT_NEAR(number(results[0]), run_uncertainty, 2e-8);
    EXPECT_EQ(results[1], results[0]);
    EXPECT_NEAR(number(results[2]), 2 * run_uncertainty, 4e-8);
    EXPECT_NEAR(number(results[3]), 20.01069, 2e-5); // IAPWS SR6-08 by differences, computed apart
    EXPECT_NEAR(number(results[4]), 0.01 / (1.15 * 1.15), 1e-12);
}

TEST_F(Calc, TakesAMethodAndAMaterialAmongTheValues) {
    sheet.formulas("A1", run);
    sheet.text("A10", "WBT 3");
    sheet.formulas("C1", {{"500", "1"}, {"aluminium", ""}, {"20", ""}, {"95", ""}});
    auto const results =
        evaluate({"=STOVE.UNCERTAINTY(\"BENCHEFFICIENCY\";A1:A11;B1:B11)",
                  "=STOVE.UNCERTAINTY(\"POTHEAT\";C1:C4;D1:D4)", "=STOVE.UNCERTAINTY(\"POTHEAT\";C1:C4;{1;0.01;0;0})"});
    EXPECT_NEAR(number(results[0]), 0.007838487, 1e-9); // the method's own equation, by differences
    EXPECT_NEAR(number(results[1]), 0.897 * 75 / 1000, 1e-12);
    EXPECT_EQ(results[2], CellValue(not_a_value));
}

TEST_F(Calc, TakesCorrelationsFromASquareAndFromHalfOfIt) {
    sheet.formulas("A1", {{"1", "0.8"}, {"0.8", "1"}, {"", "0.8"}, {"", ""}});
    double const a = 100 / (120.0 * 120) * 0.5, b = 0.5 / 120; // (wet - dry)/wet
    double const expected = std::sqrt(a * a + b * b - 1.6 * a * b);
    std::vector<std::string> const formulas{"=STOVE.UNCERTAINTY(\"MOISTURE\";{120;100};{0.5;0.5};1;A1:B2)",
                                            "=STOVE.UNCERTAINTY(\"MOISTURE\";{120;100};{0.5;0.5};;A3:B4)"};
    for (CellValue const& value : evaluate(formulas))
        EXPECT_NEAR(number(value), expected, 1e-12);
}

TEST_F(Calc, ShowsDoubtsOwnErrorsAndThoseOfTheFunction) {
    auto const results = evaluate(
        {"=STOVE.UNCERTAINTY(\"WATERMASS\";{3.6;14.5};{0.02;-2})", "=STOVE.UNCERTAINTY(\"WATERMASS\";{5;200};{0.02;2})",
         "=STOVE.UNCERTAINTY(\"WATERMASS\";{3.6;14.5};{0.02;\"little\"})",
         "=STOVE.UNCERTAINTY(\"WATERMASS\";{3.6;14.5};{0.02})",
         "=STOVE.UNCERTAINTY(\"FUELENERGY\";{3.6;14.5};{0.02;2})",
         "=STOVE.UNCERTAINTY(\"NOSUCHTHING\";{3.6;14.5};{0.02;2})", "=STOVE.BUDGET(\"WATERMASS\";{5;200};{0.02;2})"});
    CellError const expected[] = {not_a_result,  not_a_result,  not_a_value, not_a_value,
                                  not_available, not_available, not_a_result};
    for (std::size_t i = 0; i < std::size(expected); ++i)
        EXPECT_EQ(results[i], CellValue(expected[i])) << i;
}

TEST_F(Calc, PutsABudgetBesideItsValues) {
    sheet.formulas("A1", run);
    sheet.array_formula("D1:G16", "=STOVE.BUDGET(\"BENCHEFFICIENCY\";A1:A11;B1:B11;2)");
    auto const budget = sheet.values("D1:G16");
    double squares = 0, shares = 0;
    for (std::size_t row = 0; row < 11; ++row) {
        if (row == 9)
            continue;
        squares += number(budget[row][2]) * number(budget[row][2]);
        shares += number(budget[row][3]);
    }
    EXPECT_NEAR(std::sqrt(squares), 2 * run_uncertainty, 4e-8);
    EXPECT_NEAR(shares, 1, 1e-12);
    EXPECT_EQ(text(budget[0][0]), "pot empty");
    EXPECT_EQ(text(budget[7][0]), "moisture");
    EXPECT_EQ(text(budget[9][0]), "method");
    EXPECT_EQ(text(budget[9][1]), "");                      // left out
    EXPECT_EQ(text(budget[11][0]), "char calorific value"); // a default, which counts as exact
    EXPECT_EQ(budget[11][2], CellValue(0.0));
    EXPECT_EQ(budget[15][0], CellValue(not_available)); // below the block
    EXPECT_EQ(text(evaluate("=STOVE.BUDGET(\"BENCHEFFICIENCY\";A1:A11;B1:B11)")), "pot empty");
}

TEST_F(Calc, ReadsTimesHoweverTheyStandInCells) {
    sheet.formulas("A1", {{"0:31:40"}, {"31:40"}, {"1:08:20"}, {"31.7"}}); // as typed: times of Calc, and a number
    sheet.text("A5", "31:40");
    sheet.text("A6", "12'45\"");
    sheet.text("A7", "1:75");
    auto const results = evaluate(
        {"=STOVE.MINUTES(A1)", "=STOVE.MINUTES(A2;\"mm:ss\")", "=STOVE.MINUTES(A2)", "=STOVE.MINUTES(A3)",
         "=STOVE.MINUTES(A4)", "=STOVE.MINUTES(A5)", "=STOVE.MINUTES(A6)", "=STOVE.MINUTES(A7)", "=STOVE.MINUTES(A8)",
         "=STOVE.MINUTES(\"1 h 8 min\")", "=STOVE.MINUTES(\"soon\")", "=STOVE.MINUTES(NA())"});
    EXPECT_EQ(results[0], CellValue(31 + 40 / 60.0));
    EXPECT_EQ(results[1], CellValue(31 + 40 / 60.0));
    EXPECT_EQ(results[2], CellValue(not_a_result)); // minutes, or minutes and seconds?
    EXPECT_EQ(results[3], CellValue(68 + 20 / 60.0));
    EXPECT_EQ(results[4], CellValue(31.7));
    EXPECT_EQ(results[5], CellValue(31 + 40 / 60.0));
    EXPECT_EQ(results[6], CellValue(12.75));
    EXPECT_EQ(results[7], CellValue(not_a_result));
    EXPECT_EQ(results[8], CellValue(0.0)); // an empty cell is 0 to every add-in; EXPLAIN asks
    EXPECT_EQ(results[9], CellValue(68.0));
    EXPECT_EQ(results[10], CellValue(not_a_value));
    EXPECT_EQ(results[11], CellValue(not_available));
}

TEST_F(Calc, TurnsAColumnOfTimesIntoMinutesWithEachErrorInItsRow) {
    sheet.formulas("A1", {{"0:00:00"}, {"0:01:30"}, {""}, {"soon"}, {"'2:30"}, {"'12′45″"}, {"0:20:00"}});
    sheet.array_formula("B1:B7", "=STOVE.MINUTES(A1:A7)");
    auto const minutes = sheet.values("B1:B7");
    EXPECT_EQ(minutes[0][0], CellValue(0.0));
    EXPECT_EQ(minutes[1][0], CellValue(1.5));
    EXPECT_EQ(minutes[2][0], CellValue(std::string())); // blank stays blank
    EXPECT_EQ(minutes[3][0], CellValue(not_a_value));
    EXPECT_EQ(minutes[4][0], CellValue(2.5));
    EXPECT_EQ(minutes[5][0], CellValue(12.75));
    EXPECT_EQ(minutes[6][0], CellValue(20.0));
    sheet.formulas("D1", turned({{"0:01:30"}, {"0:20:00"}}));
    sheet.array_formula("D2:E2", "=STOVE.MINUTES(D1:E1)");
    EXPECT_EQ(sheet.values("D2:E2"), (office::ValueRows{{1.5, 20.0}}));
}

TEST_F(Calc, TurnsAHundredThousandTimesIntoMinutes) {
    constexpr int rows = 100000;
    office::TextRows times;
    for (int row = 0; row < rows; ++row)
        times.push_back({row % 2 == 0 ? "'12'45\"" : std::to_string(row % 40000) + "/86400"});
    for (int row = 1; row < rows; row += 2)
        times[std::size_t(row)][0].insert(0, "=");
    sheet.formulas("A1", times);
    sheet.array_formula("B1:B100000", "=STOVE.MINUTES(A1:A100000)");
    auto const minutes = sheet.values("B1:B100000");
    for (std::size_t row = 0; row < minutes.size(); ++row)
        ASSERT_EQ(minutes[row][0], CellValue(row % 2 == 0 ? 12.75 : double(row % 40000) / 60)) << row;
    EXPECT_NEAR(number(evaluate("=SUM(STOVE.MINUTES(A2:A2))")), 1 / 60.0, 1e-12);
}

TEST_F(Calc, TakesAWholeColumnOfTimes) {
    sheet.formulas("A1", {{"0:00:00"}, {"0:01:30"}, {""}, {"0:20:00"}});
    auto const start = std::chrono::steady_clock::now();
    EXPECT_EQ(evaluate("=SUM(STOVE.MINUTES(A:A))"), CellValue(21.5));
    EXPECT_LT(std::chrono::steady_clock::now() - start,
              std::chrono::seconds(10)); // minutes, were all blanks given back
}

TEST_F(Calc, ExplainsDoubtAndTimes) {
    auto const results = evaluate({"=STOVE.EXPLAIN(\"UNCERTAINTY\";\"DRYMASS\";{520;14};{1;0.1})",
                                   "=STOVE.EXPLAIN(\"UNCERTAINTY\";\"WATERMASS\";{3.6;14.5};{0.02;2};2)",
                                   "=STOVE.EXPLAIN(\"MINUTES\";1.325)", "=STOVE.EXPLAIN(\"MINUTES\";\"1.08.20\")"});
    EXPECT_NE(text(results[0]).find("moisture is 14, outside 0 to 0.75"), std::string::npos);
    EXPECT_NE(text(results[1]).find("Fine: uncertainty 40.0214."), std::string::npos);
    EXPECT_NE(text(results[2]).find("Say how it was typed"), std::string::npos);
    EXPECT_NE(text(results[3]).find("\"1.08.20\""), std::string::npos);
}

} // namespace hearthcell::tests
