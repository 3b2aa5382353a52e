// The template for the log of a thermometer, filled with the log of the demonstration, which is made of the heating
// model C dT/dt = P - UA (T - air) with noise: what the template finds is set against the model itself.

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

#include <chrono>
#include <cmath>

namespace hearthcell::tests {
namespace {

/// What the readings were made of, as sample-sheets/demo/logger-import.json says.
constexpr double capacity = 15450, power = 880, loss = 3, air = 16, start = 14.5; // J/K, W, W/K, °C, °C

double minutes_to(double temperature) {
    return -capacity / loss * std::log((power - loss * (temperature - air)) / (power - loss * (start - air))) / 60;
}

constexpr int first = 9, last = 3008; // rows of the log of the demonstration
constexpr double step = 0.0125;       // min from one reading to the next

office::TextRows empty_rows(int count) {
    return {std::size_t(count), {"", ""}};
}

/// Typing thousands of readings takes a second, so it is done once.
class LoggerTemplate : public testing::Test {
protected:
    static void SetUpTestSuite() {
        Document workbook = Document::open(office_with_package(), template_file("en", "logger-import"));
        fill(workbook, demo_data("logger-import"));
        workbook.save(filled());
    }
    static void TearDownTestSuite() { std::filesystem::remove(filled()); }
    static std::filesystem::path filled() { return scratch_folder() / "logger.ods"; }

    std::string state() { return readings.shown("A4"); }
    std::string errors() { return errors_on(workbook, 0) + errors_on(workbook, 1); }

    /// Writes the times anew, each as `written` makes it of its minutes.
    template <class Written> void rewrite_times(Written written) {
        office::TextRows rows;
        for (int i = 0; i <= last - first; ++i)
            rows.push_back({written(i * step)});
        readings.formulas("A" + std::to_string(first), rows);
    }

    Document workbook = Document::open(office_with_package(), filled(), office::Access::read_write);
    Sheet readings = workbook.sheet(0), boil = workbook.sheet(1);
};

} // namespace

TEST_F(LoggerTemplate, FindsTheBoilAndThePowerOfTheModelThatTheLogWasMadeOf) {
    EXPECT_EQ(state(), "Readings: 2999, from minute 0 to minute 37.5.");
    // 1240 m in the standard atmosphere, IAPWS-IF97: 95.8503 °C, computed with python3-iapws.
    EXPECT_NEAR(number(boil.value("B20")), 95.8503, 1e-3);
    // The boil begins 0.5 K below the plateau; 0.1 K of noise are two seconds of the heating.
    EXPECT_NEAR(number(boil.value("B23")), minutes_to(95.85 - 0.5), 0.05);
    double const from = number(boil.value("B24")), to = number(boil.value("B25"));
    EXPECT_NEAR(from, start + 0.3 * (95.85 - start), 0.2); // the log starts within the noise of 14.5 °C
    EXPECT_NEAR(to, start + 0.8 * (95.85 - start), 0.2);
    double const rate = (to - from) / (minutes_to(to) - minutes_to(from));
    EXPECT_NEAR(number(boil.value("B26")), rate, 0.02);
    // 3.6 kg of water of 4.184 kJ/(kg K) between 39 and 80 °C (IAPWS SR6-08), without the pot.
    EXPECT_NEAR(number(boil.value("B28")), 3.6 * 4.184 * rate / 60, 0.01);
    EXPECT_EQ(boil.shown("B29"), ""); // a log that boils needs no forecast
    EXPECT_EQ(errors(), "");
}

TEST_F(LoggerTemplate, CountsTheHeatOfThePotWhereMassAndMaterialAreGiven) {
    double const without = number(boil.value("B28"));
    boil.number("B14", 500);
    EXPECT_EQ(boil.shown("D15"), "to be filled in");
    EXPECT_EQ(boil.shown("B28"), "");
    boil.text("B15", "aluminium");
    EXPECT_NEAR(number(boil.value("B27")), 448.5, 1e-9); // 500 g of 0.897 J/(g K)
    EXPECT_NEAR(number(boil.value("B28")) / without, 1 + 448.5 / (3600 * 4.184), 1e-4);
}

TEST_F(LoggerTemplate, ListsWhatTheLogCheckRemarksWithTheRowsOfTheSheet) {
    EXPECT_NE(boil.shown("F23").find("A reading of 28.5 °C"), std::string::npos);
    EXPECT_EQ(boil.value("G23"), CellValue(709.0));
    EXPECT_EQ(boil.shown("F24"), "A time without a temperature.");
    EXPECT_EQ(boil.value("G24"), CellValue(1509.0));
    EXPECT_EQ(boil.shown("F25"), "");
    boil.formula("B12", "");
    EXPECT_EQ(boil.shown("F23"), "");
    EXPECT_EQ(boil.shown("F35"), "The log check waits for altitude, mass of the water and temperature of the air.");
}

TEST_F(LoggerTemplate, SaysHowManyRemarksItHasNoRoomFor) {
    for (int row = 100; row < 120; ++row)
        readings.formula("B" + std::to_string(10 * row), "");
    EXPECT_EQ(boil.shown("F35"), "Further remarks: 10"); // 20 rows without a temperature and the two of before, less 12
}

TEST_F(LoggerTemplate, ReadsTimesInEveryWayThatItOffers) {
    double const expected = number(boil.value("B23"));
    double const rounding = 1e-3; // the plateau is read by the minute, whose last reading depends on the last digit
    rewrite_times([](double minutes) { return std::to_string(minutes * 60); });
    readings.text("F7", "seconds");
    EXPECT_NEAR(number(boil.value("B23")), expected, rounding);
    rewrite_times([](double minutes) { return "=0.6+" + std::to_string(minutes) + "/1440"; }); // from 14:24 on
    readings.text("F7", "clock times");
    EXPECT_NEAR(number(readings.value("C9")), 864, 1e-6);
    EXPECT_NEAR(number(boil.value("B23")), expected, rounding);
    rewrite_times([](double minutes) { return "=45000.6+" + std::to_string(minutes) + "/1440"; });
    readings.text("F7", "date and time");
    EXPECT_NEAR(number(readings.value("C9")), 864, 1e-4); // a date leaves fewer digits for the time
    EXPECT_NEAR(number(boil.value("B23")), expected, rounding);
    // 26:45 typed for 26 min 45 s is 26 h 45 min to Calc. Two readings have the same second: no log.
    rewrite_times([](double minutes) { return "=" + std::to_string(int(minutes * 60)) + "/1440"; });
    readings.text("F7", "minutes and seconds");
    EXPECT_NEAR(number(readings.value("C3008")), 2249 / 60.0, 1e-9);
    EXPECT_EQ(boil.value("B23"), CellValue(not_a_result));
    rewrite_times([](double minutes) { return "'" + std::to_string(int(minutes)) + " min"; }); // texts
    readings.text("F7", "minutes");
    EXPECT_EQ(readings.value("C3008"), CellValue(37.0));
}

TEST_F(LoggerTemplate, TakesHeadingsAboveTheFirstReadingForNoReadings) {
    double const expected = number(boil.value("B23"));
    readings.text("A9", "time of logger");
    readings.text("B9", "probe 1");
    EXPECT_EQ(state(), "Readings: 2998, from minute 0 to minute 37.5.");
    EXPECT_NEAR(number(boil.value("B23")), expected - step, 0.01);
    EXPECT_EQ(errors(), "");
}

TEST_F(LoggerTemplate, ShowsHowWellTheBoilIsKnownAndTheReadingsAboutIt) {
    EXPECT_TRUE(boil.shown("D23").starts_with("± 0.")) << boil.shown("D23");
    double const at = number(readings.value("F42"));
    EXPECT_LE(number(readings.value("F43")), at);
    EXPECT_GE(number(readings.value("F44")), at);
    EXPECT_NEAR(number(readings.value("F44")) - number(readings.value("F43")), step, 2 * step);
    boil.number("B16", 95.2); // measured that day
    EXPECT_EQ(number(boil.value("B20")), 95.2);
}

TEST_F(LoggerTemplate, TakesTheLightingOfTheFireAsTheTimesAreWritten) {
    double const expected = number(boil.value("B23"));
    boil.number("B13", 2);
    EXPECT_NEAR(number(boil.value("B23")), expected - 2, 0.01);
    rewrite_times([](double minutes) { return "=0.6+" + std::to_string(minutes) + "/1440"; });
    readings.text("F7", "clock times");
    boil.formula("B13", "=0.6+2/1440");
    EXPECT_NEAR(number(boil.value("B23")), expected - 2, 0.01);
    rewrite_times([](double minutes) { return "=45000.6+" + std::to_string(minutes) + "/1440"; });
    readings.text("F7", "date and time");
    boil.formula("B13", "=45000.6+2/1440");
    EXPECT_NEAR(number(boil.value("B23")), expected - 2, 0.01);
    rewrite_times([](double minutes) { return std::to_string(minutes * 60); });
    readings.text("F7", "seconds");
    boil.number("B13", 120);
    EXPECT_NEAR(number(boil.value("B23")), expected - 2, 0.01);
}

TEST_F(LoggerTemplate, CountsNumbersWithAnotherDecimalSignAsTexts) {
    readings.text("B9", "19,3"); // above the first number, where headings stand, too
    readings.text("B20", "19,4");
    EXPECT_EQ(readings.value("F20"), CellValue(2.0));
    EXPECT_EQ(readings.value("F21"), CellValue(9.0));
    EXPECT_NE(state().find("Temperatures that are texts: 2, the first in row 9"), std::string::npos) << state();
}

TEST_F(LoggerTemplate, ForecastsTheBoilOfALogThatStopsEarly) {
    readings.formulas("A1529", empty_rows(1480)); // 19 minutes are left
    EXPECT_EQ(boil.value("B23"), CellValue(not_available));
    EXPECT_NE(boil.shown("B34").find("The log neither reaches the boiling point"), std::string::npos);
    EXPECT_NEAR(number(boil.value("B29")), minutes_to(95.8503 - 0.5), 2 * number(boil.value("B30")));
    EXPECT_GT(number(boil.value("B30")), 0.1);
    EXPECT_LT(number(boil.value("B30")), 1);
}

TEST_F(LoggerTemplate, SaysInWordsWhatIsNoNumber) {
    readings.text("B500", "---");
    EXPECT_EQ(state(), "Temperatures that are texts: 1, the first in row 500. A number is needed.");
    EXPECT_EQ(boil.value("B23"), CellValue(not_a_value));
    EXPECT_NE(boil.shown("B34").find("row 500"), std::string::npos);
    readings.number("B500", 35);
    readings.text("A600", "soon");
    EXPECT_EQ(state(),
              "Times that cannot be read: 1, the first in row 600. Is the way they are written chosen rightly?");
    EXPECT_EQ(readings.value("C600"), CellValue(not_a_value));
    EXPECT_EQ(boil.shown("B23"), "");
    readings.number("A600", 7.3875);
    boil.text("B9", "high");
    EXPECT_EQ(boil.shown("D9"), "a number is needed, not a text.");
    EXPECT_EQ(boil.value("B20"), CellValue(not_a_value));
}

TEST_F(LoggerTemplate, SaysInWordsThatReadingsAreTooFewOrTooMany) {
    readings.number("A10009", 31);
    EXPECT_NE(state().find("longer than this sheet: 1 filled cells below row 10008"), std::string::npos);
    readings.formula("A10009", "");
    readings.formulas("A13", empty_rows(2996));
    EXPECT_EQ(state(), "Too few readings: 4. At least 5 are needed, each with a time and a temperature.");
    EXPECT_EQ(boil.shown("B23"), "");
    EXPECT_EQ(errors(), "");
    for (int row = 9; row < 13; ++row)
        readings.text("B" + std::to_string(row), "20,1°");
    EXPECT_NE(state().find("The temperatures are texts"), std::string::npos);
}

TEST_F(LoggerTemplate, IsQuickWithTenThousandReadings) {
    office::TextRows rows;
    for (int i = 0; i < 10000; ++i)
        rows.push_back({std::to_string(i / 60.0), std::to_string(std::min(20 + i / 60.0, 95.0))});
    readings.formulas("A9", rows);
    auto const begin = std::chrono::steady_clock::now();
    workbook.recalculate();
    EXPECT_NEAR(number(boil.value("B23")), 74.5, 0.05); // 1 K a minute to half a kelvin below 95 °C
    std::chrono::duration<double> const taken = std::chrono::steady_clock::now() - begin;
    std::printf("10000 readings: %.2f s\n", taken.count());
    EXPECT_LT(taken.count(), 10); // a busy machine is no failure
}

} // namespace hearthcell::tests
