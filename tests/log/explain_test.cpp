#include "logs.hpp"

namespace hearthcell::tests {
namespace {

bool has(std::string const& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}
#define EXPECT_SAYS(text, part) EXPECT_TRUE(has(text, part)) << (text)

LogColumns boiling_log(double offset = 0) {
    LogColumns log = log_of(Pot(), 0.5, 30, 95);
    for (double& temperature : log.temperatures)
        temperature += offset;
    return log;
}

} // namespace

TEST(ExplainOfALog, SaysHowFarThePlateauIsFromTheBoilingPoint) {
    std::string const low = explained("BOILTIME", boiling_log(-1.4), {95.0});
    EXPECT_SAYS(low, "Fine: minutes to the boil 20.3");
    EXPECT_SAYS(low, "settle at 93.6 °C, 1.4 K below the boiling point: the probe reads low by that much");
    EXPECT_SAYS(explained("BOILTIME", boiling_log(1.4), {95.0}), "settle at 96.4 °C, 1.4 K above the boiling point");
    std::string const right = explained("BOILTIME", boiling_log(), {95.0});
    EXPECT_FALSE(has(right, "settle")) << right;
    LogColumns const short_log = log_of(Pot(), 0.25, 21, 95);
    EXPECT_SAYS(explained("BOILTIME", short_log, {95.0, Value(), Value(), 0.0}), "no plateau");
}

TEST(ExplainOfALog, NamesTheRowOfASlip) {
    LogColumns log = boiling_log();
    log.minutes[7] = log.minutes[6];
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "The time in row 8 is the same as that of the reading before it");
    log.minutes[7] = 1;
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "The time in row 8 is before that of the reading before it");
    log = boiling_log();
    log.temperatures[9] = 180;
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "temperatures in row 10 is 180, outside -10 to 120 °C");
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "180 °F would be 82.2222 °C");
}

TEST(ExplainOfALog, RecognisesTimesOfCalc) {
    LogColumns log = boiling_log();
    for (double& minute : log.minutes)
        minute /= 1440;
    EXPECT_SAYS(explained("BOILTIME", log, {95.0}), "Times of Calc are parts of a day: multiply by 1440");
}

TEST(ExplainOfALog, SaysWhatAForecastRestsOn) {
    Pot const pot;
    std::string const text = explained("BOILFORECAST", log_of(pot, 0.5, 15), {95.0, 20.0});
    EXPECT_SAYS(text, "Forecast 5.5 min and 18.1 K beyond the last reading"); // 20.502 - 15 min, 95 - 76.94 °C
    EXPECT_SAYS(text, "More than 5 K are still to go");
    EXPECT_SAYS(text, "At the boil 25 % of the heat would be lost to the air."); // 5 W/K × 75 K of 1500 W
    EXPECT_SAYS(explained("BOILFORECAST", log_of(pot, 0.5, 15), {76.0}), "Use STOVE.BOILTIME.");
    LogColumns const fire{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {20, 23, 26, 29, 32, 35, 38, 41, 44, 47}};
    EXPECT_SAYS(explained("BOILFORECAST", fire, {95.0}), "nobody can say when");
}

TEST(ExplainOfALog, SeesNoLossToTheAirWhereTheHeatingSpeedsUpALittle) {
    auto const log_of_heating = [](double start, double rate, double rise_of_rate) {
        LogColumns log;
        for (double minute = 0; minute <= 18; ++minute) {
            log.minutes.push_back(minute);
            log.temperatures.push_back(start + rate * minute + rise_of_rate / 2 * minute * minute);
        }
        return log;
    };
    // Cold water; and warm water over a weak fire, where the model would see less power than is lost.
    for (std::string const& text : {explained("BOILFORECAST", log_of_heating(20, 3, 0.02), {95.0, 20.0}),
                                    explained("BOILFORECAST", log_of_heating(80, 0.4, 0.004), {90.0, 20.0})}) {
        EXPECT_SAYS(text, "The heating does not slow down, so that no loss to the air can be seen.");
        EXPECT_FALSE(has(text, "At the boil")) << text;
    }
}

TEST(ExplainOfALog, SaysWhichStretchAHeatGainIsOf) {
    EXPECT_SAYS(explained("HEATGAIN", boiling_log(), {5000.0}), "readings between 42.5 and 80 °C");
}

TEST(ExplainOfALog, WarnsOfACrossingAtTheVeryEnd) {
    EXPECT_SAYS(explained("TIMEAT", {{22, 24}, {93.2, 95.4}}, {94.983}), "The log ends there");
    EXPECT_FALSE(has(explained("TIMEAT", boiling_log(), {80.0}), "The log ends there"));
}

TEST(ExplainOfALog, WarnsOfALineThatIsNone) {
    EXPECT_SAYS(explained("HEATINGRATE", boiling_log()), "no straight line");
    EXPECT_SAYS(explained("HEATINGRATE", boiling_log(), {3.0, 9.0}),
                "From 13 readings; they scatter about the line by 0");
}

TEST(ExplainOfALog, WarnsOfACoolingFromTheBoil) {
    std::string const text = explained("HEATLOSS", {{0, 20}, {90, 80}}, {5000.0, 20.0});
    EXPECT_SAYS(text, "A cooling from 90 to 80 °C.");
    EXPECT_SAYS(text, "Two readings only");
    EXPECT_SAYS(text, "Without a lid");
}

} // namespace hearthcell::tests
