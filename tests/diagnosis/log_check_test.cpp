#include "findings.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr double boiling_point = 95;

/// A log as a test gives it, and what a tester knows of it.
struct Clean {
    LogColumns log;
    std::vector<Value> more; ///< boiling point, water mass, air
};

/// Any pot, a reading every second to every two minutes, some noise, a display of a tenth; boiling, stopped early or
/// cooling.
Clean clean_log(Random& random) {
    Pot const pot = Pot::any(random);
    double const step = std::vector{1 / 60.0, 1 / 12.0, 0.25, 0.5, 1.0, 2.0}[random.below(6)];
    double const end = pot.minutes_to(boiling_point) * random.uniform(0.6, 1.4);
    LogColumns log = log_of(pot, step, std::max(end, 8 * step), boiling_point);
    if (random.below(5) == 0) { // a cooling: the fire is out
        for (std::size_t i = 0; i < log.minutes.size(); ++i)
            log.temperatures[i] = pot.air + (92 - pot.air) * std::exp(-log.minutes[i] / 150);
    }
    add_noise(log, random.uniform(0, 0.3), random);
    round_to(log, 0.1);
    double const mass = (pot.capacity - 200) / 4.19; // a little more than there was
    bool const told = random.below(2) == 0;
    return {log, told ? std::vector<Value>{boiling_point, mass, pot.air} : std::vector<Value>{}};
}

} // namespace

TEST(LogCheck, RaisesNoFalseAlarmOnAThousandCleanLogs) {
    Random random(77);
    int alarms = 0;
    for (int i = 0; i < 1000; ++i) {
        Clean const clean = clean_log(random);
        std::vector<Finding> const findings = check(clean.log, clean.more);
        if (findings.size() != 1 || findings[0].words != "nothing to remark") {
            ++alarms;
            ADD_FAILURE() << "log " << i << ":\n" << listed(findings);
        }
    }
    EXPECT_EQ(alarms, 0);
}

TEST(LogCheck, FindsATimeRepeatedOrRunningBackwards) {
    for (std::size_t i = 1; i < heating().minutes.size(); ++i) {
        LogColumns log = heating();
        log.minutes[i] = log.minutes[i - 1];
        expect_only(check(log, known), "is repeated", unsigned(i + 1));
        if (i < 2 || i + 1 == log.minutes.size())
            continue;
        log.minutes[i] = log.minutes[i - 2] + 0.3;
        expect_only(check(log, known), "runs backwards", unsigned(i + 1));
    }
}

TEST(LogCheck, FindsMinutesThatLostADigit) {
    // 8:40 after 16:30: every four minutes.
    LogColumns log = log_of(Pot(), 4, 26, boiling_point);
    for (double& minute : log.minutes)
        minute += 0.5;
    log.minutes[5] -= 10; // 20.5 → 10.5
    expect_only(check(log, known), "did the minutes lose a digit? 20.5 min would fit", 6);
}

TEST(LogCheck, FindsOneTimeStoredAsHoursAndMinutes) {
    LogColumns log = heating();
    for (double& minute : log.minutes)
        minute += 0.5;
    log.minutes[15] = 15.5 / 24; // 15:30 typed into a column of minutes
    expect_only(check(log, known), "minutes and seconds stored as hours and minutes? 15.5 min would fit", 16);
    log.minutes[15] = 15.5 * 60; // the same turned into minutes
    expect_only(check(log, known), "minutes and seconds stored as hours and minutes? 15.5 min would fit", 16);
    log.minutes[15] = 15.5 / 1440; // 0:15:30
    expect_only(check(log, known), "a time of Calc? 15.5 min would fit", 16);
}

TEST(LogCheck, FindsAWholeLogInAnotherUnitOfTime) {
    auto const scaled = [](double factor) {
        LogColumns log = heating();
        for (double& minute : log.minutes)
            minute *= factor;
        return check(log, known);
    };
    expect_only(scaled(1 / 1440.0), "times of Calc, parts of a day", 0);
    expect_only(scaled(1 / 24.0), "stored as hours and minutes: the log would last 28 min", 0); // up to 28:00
    expect_only(scaled(60), "stored as hours and minutes: the log would last 28 min", 0);
    LogColumns log = heating();
    log.minutes.resize(18);
    log.temperatures.resize(18);
    for (double& minute : log.minutes)
        minute /= 24; // up to 17:00, less than a day
    expect_only(check(log, known), "stored as hours and minutes: the log would last 17 min", 0);
}

TEST(LogCheck, FindsSlipsInALogOfCalcTimesToo) {
    LogColumns log = heating();
    log.temperatures[10] = 100;
    for (double& minute : log.minutes)
        minute = 45000.4 + minute / 1440; // with its date
    std::vector<Finding> const findings = check(log, known);
    ASSERT_EQ(findings.size(), 2U) << listed(findings);
    EXPECT_EQ(findings[0].row, 0U);
    EXPECT_EQ(findings[1].row, 11U);
}

TEST(LogCheck, FindsReadingsInFahrenheitOrKelvin) {
    for (std::size_t i = 0; i < 28; ++i) {
        LogColumns log = heating();
        log.temperatures[i] = log.temperatures[i] * 1.8 + 32;
        expect_only(check(log, known), "looks like °F", unsigned(i + 1));
        log = heating();
        log.temperatures[i] += 273.15;
        expect_only(check(log, known), "looks like kelvin", unsigned(i + 1));
    }
    LogColumns log = heating();
    for (std::size_t i = 12; i < 18; ++i)
        log.temperatures[i] = log.temperatures[i] * 1.8 + 32;
    expect_only(check(log, known), "like the 5 after it, looks like °F", 13);
}

TEST(LogCheck, FindsAWholeLogInFahrenheitOrKelvin) {
    LogColumns fahrenheit = heating(), kelvin = heating();
    for (double& temperature : fahrenheit.temperatures)
        temperature = temperature * 1.8 + 32;
    for (double& temperature : kelvin.temperatures)
        temperature += 273.15;
    expect_only(check(fahrenheit, known), "The temperatures look like °F: 203 would be 95 °C", 0);
    expect_only(check(kelvin, known), "The temperatures look like kelvin: 368.2 would be 95 °C", 0);
    expect_only(check(fahrenheit), "look like °F", 0);
    expect_only(check(kelvin), "look like kelvin", 0);
}

TEST(LogCheck, FindsReadingsAboveTheBoilingPoint) {
    LogColumns log = heating();
    for (std::size_t i = 22; i < log.minutes.size(); ++i)
        log.temperatures[i] += 2;
    expect_only(check(log, known), "Up to 97 °C in 7 readings from here, where water boils at 95 °C at most", 23);
    expect_only(check(log), "nothing to remark", 0); // as it might be at sea level
    for (std::size_t i = 22; i < log.minutes.size(); ++i)
        log.temperatures[i] += 7;
    expect_only(check(log), "Up to 104 °C", 23);
}

TEST(LogCheck, FindsAJumpThatNoPotMakes) {
    for (double const jump : {-30.0, 34.0}) {
        for (std::size_t i = 1; i < 19; ++i) {
            LogColumns log = heating();
            log.temperatures[i] += jump;
            expect_only(check(log, known), "no pot jumps like that", unsigned(i + 1));
        }
    }
    LogColumns log = heating(); // a litre of cold water
    for (std::size_t i = 16; i < log.minutes.size(); ++i)
        log.temperatures[i] -= 18;
    log.temperatures.resize(21); // before the boil
    log.minutes.resize(21);
    expect_only(check(log, known), "Was water added or the probe moved?", 17);
}

TEST(LogCheck, JudgesAJumpByMassAndLargestPower) {
    // 12 K in half a minute: 20 kJ/K × 24 K/min = 8.4 kW for 5 kg, but 1.7 kW for 1 kg.
    LogColumns const log{{0, 0.5, 1, 1.5, 2, 2.5, 3}, {20, 20.1, 20.2, 32.2, 32.3, 32.4, 32.5}};
    EXPECT_EQ(check(log, {boiling_point, 1000.0, 20.0})[0].words, "nothing to remark");
    expect_only(check(log, {boiling_point, 8000.0, 20.0}), "no pot jumps", 4);
    expect_only(check(log, {boiling_point, 1000.0, 20.0, 1.0}), "no pot jumps", 4);
}

TEST(LogCheck, FindsAGap) {
    for (std::size_t i = 2; i < 22; ++i) {
        LogColumns log = heating();
        log.minutes.erase(log.minutes.begin() + std::ptrdiff_t(i), log.minutes.begin() + std::ptrdiff_t(i + 4));
        log.temperatures.erase(log.temperatures.begin() + std::ptrdiff_t(i),
                               log.temperatures.begin() + std::ptrdiff_t(i + 4));
        expect_only(check(log, known), "No reading for 5 min before this one, where one usually comes after 1 min",
                    unsigned(i + 1));
    }
}

TEST(LogCheck, FindsAStuckReading) {
    for (std::size_t i = 4; i < 13; ++i) {
        LogColumns log = heating();
        for (std::size_t k = 1; k < 6; ++k)
            log.temperatures[i + k] = log.temperatures[i];
        // Six readings stay; then it jumps to where the water really is, which 8 kW could do.
        expect_only(check(log, known), "for 5 min, where it changed by", unsigned(i + 1));
    }
}

TEST(LogCheck, FindsAStartThatIsNotNearTheAir) {
    expect_only(check(heating(), {boiling_point, 5000.0, 33.0}), "starts at 20 °C, 13 K below the air", 1);
    expect_only(check(log_of({.start = 45}, 1, 25, boiling_point)), "starts at 45 °C, unusual", 1);
    expect_only(check(log_of({.start = 45}, 1, 25, boiling_point), known), "25 K above the air", 1);
}

TEST(LogCheck, FindsTextsAndHalfEmptyRowsAndPassesAHeading) {
    LogColumns const log = heating();
    Block times = column(log.minutes), temperatures = column(log.temperatures);
    times.numbers.insert(times.numbers.begin(), text_in_block);
    temperatures.numbers.insert(temperatures.numbers.begin(), text_in_block);
    times.rows = temperatures.rows = times.numbers.size();
    times.texts = {{0, "min"}};
    temperatures.texts = {{0, "°C"}, {7, "---"}};
    temperatures.numbers[7] = text_in_block;
    times.numbers[9] = absent;
    temperatures.numbers[12] = absent;
    std::vector<Finding> const findings =
        findings_of(call(*find_function("LOGCHECK"), std::vector<Value>{times, temperatures}));
    ASSERT_EQ(findings.size(), 3U) << listed(findings);
    EXPECT_EQ(listed(findings), "8: \"---\" is a text, not a temperature.\n10: A temperature without a time.\n"
                                "13: A time without a temperature.\n");
}

TEST(LogCheck, ListsSeveralSlipsInTheOrderOfTheRows) {
    LogColumns log = heating();
    log.temperatures[3] = 110;
    log.minutes[8] = log.minutes[7];
    log.temperatures[12] = 300;
    log.minutes[20] = 1;
    std::vector<Finding> const findings = check(log, known);
    ASSERT_EQ(findings.size(), 4U) << listed(findings);
    EXPECT_EQ(findings[0].row, 4U);
    EXPECT_EQ(findings[1].row, 9U);
    EXPECT_EQ(findings[2].row, 13U);
    EXPECT_EQ(findings[3].row, 21U);
}

TEST(LogCheck, SaysASecondLogOnceAndGoesOnInIt) {
    LogColumns log = heating();
    LogColumns const second = heating();
    log.minutes.insert(log.minutes.end(), second.minutes.begin(), second.minutes.end());
    log.temperatures.insert(log.temperatures.end(), second.temperatures.begin(), second.temperatures.end());
    std::vector<Finding> const findings = check(log, known);
    ASSERT_FALSE(findings.empty());
    EXPECT_NE(findings[0].words.find("does a second log start here?"), std::string::npos) << listed(findings);
    EXPECT_EQ(findings[0].row, 30U);
    EXPECT_LE(findings.size(), 2U) << listed(findings);
}

TEST(LogCheck, StopsAfterTwoHundredFindings) {
    std::vector<Finding> const findings = check(half_empty(1000));
    ASSERT_EQ(findings.size(), 201U);
    EXPECT_EQ(findings[0].row, 2U);
    EXPECT_EQ(findings[200].words, "and 300 more");
}

TEST(LogCheck, NeverFailsOnWhatALogCanHold) {
    EXPECT_EQ(check({{-5, 3, 1e300}, {-40, 1e300, -1e300}}).empty(), false);
    EXPECT_EQ(check({{1}, {20}})[0].words, "nothing to remark");
    EXPECT_EQ(reason_of(call_log("LOGCHECK", {{nothing}, {nothing}})), Reason::no_rows);
    EXPECT_EQ(reason_of(call_log("LOGCHECK", {{1, 2}, {20}})), Reason::log_columns_differ);
}

} // namespace hearthcell::tests
