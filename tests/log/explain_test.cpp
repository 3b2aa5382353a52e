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

TEST(ExplainOfALog, SaysWhatABoilTimeRestsOn) {
    std::string const text = explained("BOILTIME", boiling_log(), {95.0});
    EXPECT_SAYS(text, "Fine: minutes 20.3");
    EXPECT_SAYS(text, "Between the readings at 20 and 20.5 min; carried on from the heating: 20.3");
    EXPECT_SAYS(text, "first reached at about 20.49 min, which is what the protocols call the boil (from memory)");
    EXPECT_SAYS(text, "A probe that lags is not in the uncertainty.");
    EXPECT_FALSE(has(text, "settle")) << text;
    EXPECT_SAYS(explained("BOILTIME", {{0, 10, 20, 30}, {20, 95, 95, 95}}, {95.0}), "too few readings before them");
    EXPECT_SAYS(explained("BOILTIME", log_of(Pot(), 0.25, 20.5, 95), {95.0}),
                "The boiling point was reached, not held");
}

TEST(ExplainOfALog, SaysHowFarTheLevelIsFromTheBoilingPoint) {
    std::string const low = explained("BOILTIME", boiling_log(-1.4), {95.0});
    EXPECT_SAYS(low, "Fine: minutes 20.3");
    EXPECT_SAYS(low, "settle at 93.6 °C, 1.4 K below the boiling point: the probe reads low by that much");
    EXPECT_SAYS(explained("BOILTIME", boiling_log(1.4), {95.0}), "settle at 96.4 °C, 1.4 K above the boiling point");
    std::string const far = explained("BOILTIME", boiling_log(-2.4), {95.0});
    EXPECT_SAYS(far,
                "Odd: The readings settle at 92.6 °C, 2.4 K below the boiling point of 95 °C: the pot never boiled");
    EXPECT_FALSE(has(far, "Fine")) << far;
}

TEST(ExplainOfALog, RemarksABoilTimeThatNoPotHas) {
    LogColumns log = boiling_log();
    for (double& minute : log.minutes)
        minute *= 60; // a logger in seconds, left as minutes
    EXPECT_SAYS(explained("BOILTIME", log, {95.0}), "Odd: 12");
    EXPECT_SAYS(explained("BOILTIME", log, {95.0}), "is no usual boil time");
}

TEST(ExplainOfALog, CountsTheBoilsOfALog) {
    LogColumns log = boiling_log();
    std::size_t const once = log.minutes.size();
    for (std::size_t i = 0; i < once; ++i) {
        log.minutes.push_back(log.minutes[i] + 40);
        log.temperatures.push_back(log.temperatures[i]);
    }
    EXPECT_SAYS(explained("BOILTIME", log, {95.0}), "The log boils 2 times; the first boil after the start counts.");
}

TEST(ExplainOfALog, NamesTheRowOfASlip) {
    LogColumns log = boiling_log();
    log.minutes[7] = log.minutes[6];
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "The time in row 8 is the same as that of the reading before it");
    log.minutes[7] = 1;
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "The time in row 8 is before that of the reading before it");
    log = boiling_log();
    log.temperatures[9] = 180;
    EXPECT_SAYS(explained("TIMEAT", log, {80.0}), "row 10 of temperatures is 180, outside -10 to 120 °C");
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
    EXPECT_SAYS(text, "To within 0.5 K of the boiling point: 5.27 min"); // 20.34 - 15 min by the pot's own loss
    EXPECT_SAYS(text, "17.6 K beyond the last reading");                 // 94.5 - 76.94 °C
    EXPECT_SAYS(text, "a probe that is out by 0.4 K; not for a probe that lags");
    EXPECT_SAYS(text, "More than 5 K are still to go");
    EXPECT_SAYS(explained("BOILFORECAST", log_of(pot, 0.5, 15), {76.0}), "Use STOVE.BOILTIME.");
    LogColumns const fire{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {20, 23, 26, 29, 32, 35, 38, 41, 44, 47}};
    EXPECT_SAYS(explained("BOILFORECAST", fire, {95.0}), "nobody can say when");
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
    EXPECT_SAYS(text, "The air counts as exactly known: 2 K more of it would give 2.78 W/K.");
}

} // namespace hearthcell::tests
