// Temperature logs in a real Calc: blocks, single cells, gaps, texts, headings, whole columns and long ones.

#include "calc.hpp"

#include <chrono>
#include <cmath>

namespace hearthcell::tests {
namespace {

/// A reading every minute, 20 °C and 3 K/min, to a plateau at 95 °C: in A and B from a row on.
office::TextRows heating(int readings) {
    office::TextRows rows;
    for (int minute = 0; minute < readings; ++minute)
        rows.push_back({std::to_string(minute), std::to_string(std::min(20 + 3 * minute, 95))});
    return rows;
}

/// 21380 J/K, 1500 W, 5 W/K, from 20 °C: it reaches 95 °C after 20.5021 minutes.
office::TextRows stopped_early() {
    office::TextRows rows;
    for (int i = 0; i <= 30; ++i) {
        double const minute = i * 0.5;
        rows.push_back({std::to_string(minute), std::to_string(320 - 300 * std::exp(-5 * minute * 60 / 21380))});
    }
    return rows;
}

} // namespace

TEST_F(Calc, ReadsALogFromColumnsAndRows) {
    sheet.formulas("A1", heating(31));
    office::TextRows rows(2);
    for (int i = 0; i < 31; ++i) {
        rows[0].push_back(std::to_string(i));
        rows[1].push_back(std::to_string(std::min(20 + 3 * i, 95)));
    }
    sheet.formulas("A40", rows);
    EXPECT_NEAR(number(evaluate("=STOVE.TIMEAT(A1:A31;B1:B31;50)")), 10, 1e-9);
    EXPECT_NEAR(number(evaluate("=STOVE.TIMEAT(A40:AE40;A41:AE41;50)")), 10, 1e-9);
    EXPECT_NEAR(number(evaluate("=STOVE.BOILTIME(A1:A31;B1:B31;95)")), 24.8333, 0.03); // a fire may wander
    EXPECT_NEAR(number(evaluate("=STOVE.BOILTIME(A1:A31;B1:B31;96;;5)")), 19.8333, 0.03);
    EXPECT_NEAR(number(evaluate("=STOVE.HEATINGRATE(A1:A31;B1:B31;0;20)")), 3, 1e-12);
    EXPECT_NEAR(number(evaluate("=STOVE.HEATGAIN(A1:A31;B1:B31;5000;30;80;450)")), 1.0686592, 5e-8);
    EXPECT_NEAR(number(evaluate("=STOVE.HEATLOSS({0|20};{90|80};5000;20;450)")), 2.7560, 5e-5);
}

TEST_F(Calc, ShowsTheMinutesOfAForecastUnlessAllIsAskedFor) {
    sheet.formulas("A1", stopped_early());
    sheet.array_formula("D1:E1", "=STOVE.BOILFORECAST(A1:A31;B1:B31;95;20;\"all\")");
    sheet.formula("D2", "=STOVE.BOILFORECAST(A1:A31;B1:B31;95)");
    EXPECT_NEAR(number(sheet.value("D1")), 20.34, 0.1); // half a kelvin below
    EXPECT_GT(number(sheet.value("E1")), 0.1);
    EXPECT_LT(number(sheet.value("E1")), 0.5);
    EXPECT_EQ(sheet.value("D2"), sheet.value("D1"));
}

TEST_F(Calc, ListsTheFindingsOfALogDownTheRows) {
    sheet.formulas("A1", heating(31));
    sheet.number("B6", 110);
    sheet.number("A13", 10);
    sheet.array_formula("D1:E4", "=STOVE.LOGCHECK(A1:A31;B1:B31;95;5000;20)");
    sheet.formula("G1", "=STOVE.LOGCHECK(A1:A31;B1:B31;95;5000;20)");
    auto const list = sheet.values("D1:E4");
    EXPECT_NE(std::get<std::string>(list[0][0]).find("no pot jumps"), std::string::npos);
    EXPECT_EQ(list[0][1], CellValue(6.0));
    EXPECT_NE(std::get<std::string>(list[1][0]).find("runs backwards"), std::string::npos);
    EXPECT_EQ(list[1][1], CellValue(13.0));
    EXPECT_EQ(list[2][0], CellValue(not_available)); // below the end of a list
    EXPECT_EQ(sheet.value("G1"), list[0][0]);

    sheet.formulas("A1", heating(31));
    sheet.array_formula("I1:J1", "=STOVE.LOGCHECK(A1:A31;B1:B31;95;5000;20)");
    EXPECT_EQ(sheet.value("I1"), CellValue(std::string("nothing to remark")));
    EXPECT_EQ(sheet.value("J1"), CellValue(std::string()));
}

TEST_F(Calc, TakesAnEmptyCellInALogForNoReading) {
    sheet.formulas("A1", heating(31));
    std::vector<std::string> const formulas{"=STOVE.TIMEAT(A1:A31;B1:B31;50)", "=STOVE.BOILTIME(A1:A31;B1:B31;95)",
                                            "=STOVE.HEATINGRATE(A1:A31;B1:B31;0;20)"};
    auto const whole = evaluate(formulas);
    for (char const* cell : {"A4", "B9", "B10", "A20", "B20"})
        sheet.formula(cell, "");
    auto const with_gaps = evaluate(formulas);
    for (std::size_t i = 0; i < formulas.size(); ++i)
        EXPECT_NEAR(number(with_gaps[i]), number(whole[i]), i == 1 ? 0.01 : 1e-9)
            << formulas[i]; // fewer readings tell a boil
    EXPECT_EQ(evaluate("=STOVE.LOGCHECK(A1:A31;B1:B31)"), CellValue(std::string("A temperature without a time.")));
}

TEST_F(Calc, TellsATextInALogFromAHeading) {
    sheet.formulas("A1", {{"min", "°C"}});
    sheet.formulas("A2", heating(31));
    EXPECT_NEAR(number(evaluate("=STOVE.TIMEAT(A1:A32;B1:B32;50)")), 10, 1e-9);
    sheet.text("B9", "---");
    EXPECT_EQ(evaluate("=STOVE.TIMEAT(A1:A32;B1:B32;50)"), CellValue(not_a_value));
    EXPECT_EQ(evaluate("=STOVE.EXPLAIN(\"TIMEAT\";A1:A32;B1:B32;50)"),
              CellValue(std::string("row 9 of temperatures is the text \"---\"; a number is needed.")));
    EXPECT_EQ(evaluate("=STOVE.LOGCHECK(A1:A32;B1:B32)"),
              CellValue(std::string("\"---\" is a text, not a temperature.")));
    sheet.formula("B9", "=1/0");
    EXPECT_EQ(evaluate("=STOVE.TIMEAT(A1:A32;B1:B32;50)"), CellValue(CellError{504})); // Calc's own, whatever we do
}

TEST_F(Calc, AnswersForWholeColumnsInAboutASecond) {
    sheet.formulas("A1", {{"min", "°C"}});
    sheet.formulas("A2", heating(31));
    for (std::string const call :
         {"TIMEAT(A:A;B:B;50)", "BOILTIME(A:A;B:B;95)", "HEATINGRATE(A:A;B:B;0;20)", "HEATGAIN(A:A;B:B;5000)"}) {
        std::string of_range = call;
        of_range.replace(of_range.find("A:A;B:B"), 7, "A1:A32;B1:B32");
        double const expected = number(evaluate("=STOVE." + of_range));
        auto const start = std::chrono::steady_clock::now();
        EXPECT_EQ(number(evaluate("=STOVE." + call)), expected) << call;
        std::chrono::duration<double> const taken = std::chrono::steady_clock::now() - start;
        std::printf("%s: %.2f s\n", call.c_str(), taken.count());
        EXPECT_LT(taken.count(), 10) << call; // a busy machine is no failure; a second is what a quiet one takes
    }
    EXPECT_EQ(evaluate("=STOVE.LOGCHECK(A:A;B:B;95)"), CellValue(std::string("nothing to remark")));
}

TEST_F(Calc, AnswersForAHundredThousandReadings) {
    constexpr int readings = 100000;
    sheet.formula("A1", "=(ROW()-1)/2500"); // forty minutes
    sheet.formula("B1", "=MIN(20+3*A1;95)");
    sheet.fill_down("A1:B" + std::to_string(readings));
    std::string const log = "A1:A" + std::to_string(readings) + ";B1:B" + std::to_string(readings);
    EXPECT_NEAR(number(evaluate("=STOVE.TIMEAT(" + log + ";50)")), 10, 1e-9);
    EXPECT_NEAR(number(evaluate("=STOVE.BOILTIME(" + log + ";95)")), 24.8333, 0.03);
    EXPECT_NEAR(number(evaluate("=STOVE.HEATINGRATE(" + log + ";0;20)")), 3, 1e-10);
    EXPECT_NEAR(number(evaluate("=STOVE.HEATGAIN(" + log + ";5000;30;80)")), 1.0461592, 5e-8);
    EXPECT_EQ(evaluate("=STOVE.LOGCHECK(" + log + ";95)"), CellValue(std::string("nothing to remark")));
}

TEST_F(Calc, NamesTheRowOfASlipInALog) {
    sheet.formulas("A1", heating(31));
    sheet.number("A8", 6);
    EXPECT_EQ(evaluate("=STOVE.BOILTIME(A1:A31;B1:B31;95)"), CellValue(not_a_result));
    EXPECT_EQ(evaluate("=STOVE.EXPLAIN(\"BOILTIME\";A1:A31;B1:B31;95)"),
              CellValue(std::string("The time in row 8 is the same as that of the reading before it. STOVE.LOGCHECK "
                                    "lists such slips.")));
}

} // namespace hearthcell::tests
