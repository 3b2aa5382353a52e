// The limits of what LOGCHECK finds about the temperatures of a log: just this side of each, and just beyond.

#include "findings.hpp"

#include "functions/diagnosis/log_check.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

/// A reading a minute.
LogColumns every_minute(Readings const& temperatures) {
    return {every(1, int(temperatures.size())), temperatures};
}
std::vector<Finding> of(Readings const& temperatures, std::vector<Value> more = {}) {
    return check(every_minute(temperatures), std::move(more));
}

/// So many readings that waver by a tenth of a kelvin to either side. Of a normal distribution the middle one of the
/// absolute deviations is 0.6745 standard deviations, and that of a - 2 b + c is sqrt(6) times that of a reading.
Readings wavering(double about, int count) {
    Readings readings;
    for (int i = 0; i < count; ++i)
        readings.push_back(about + (i % 2 == 0 ? 0.1 : -0.1));
    return readings;
}
double const noise = 0.4 / 0.6745 / std::sqrt(6.0);

constexpr double kelvin = 273.15;

/// Readings that rise by so much a minute from the first to the last, then the last one so many times in all.
Readings stuck(double first, double rise, double last, int times) {
    Readings readings;
    for (int i = 0; std::abs(first + i * rise - last) > std::abs(rise) / 2; ++i)
        readings.push_back(first + i * rise);
    readings.insert(readings.end(), std::size_t(times), last);
    return readings;
}

bool is_unit(std::vector<Finding> const& findings, std::string const& unit) {
    return findings[0].row == 0 && findings[0].words.starts_with("The temperatures look like " + unit);
}

} // namespace

TEST(LogLimits, AllowOneAndAHalfKelvinsAboveTheBoilingPoint) {
    expect_nothing(of(Readings(10, 96.5), {95.0}));
    expect_only(of(Readings(10, 96.51), {95.0}), "Up to 96.5 °C in 10 readings from here", 1);
    expect_nothing(of(Readings(10, 103)));
    expect_only(of(Readings(10, 103.1)), "where water boils at 101.5 °C at most", 1);
}

TEST(LogLimits, AllowThreeTimesTheNoiseMoreAboveTheBoilingPoint) {
    Readings const boiling = wavering(95, 20);
    expect_nothing(of(with(boiling, {96.5 + 3 * noise - 1e-3, 95}), {95.0}));
    expect_only(of(with(boiling, {96.5 + 3 * noise + 1e-3, 95}), {95.0}), "Up to 97.2 °C, where", 21);
}

TEST(LogLimits, MeasureTheNoiseFromNineReadingsOn) {
    std::vector<kernels::Reading> log;
    for (double const temperature : wavering(50, 9))
        log.push_back({double(log.size()), temperature, 0});
    EXPECT_NEAR(diagnosis::noise_of(log), noise, 1e-12);
    log[4].temperature = 99; // which is wild, and alone cannot decide
    EXPECT_NEAR(diagnosis::noise_of(log), noise, 1e-12);
    log.pop_back();
    EXPECT_EQ(diagnosis::noise_of(log), 0);
}

TEST(LogLimits, AllowARiseThatEightKilowattsGiveToHalfAUsualPotAndTwoKelvins) {
    double const most = 8 / (4.186 * 2.5) * 60 + 2;
    Readings const before(5, 35);
    expect_nothing(of(with(before, Readings(3, 35 + most - 0.01))));
    expect_only(of(with(before, Readings(3, 35 + most + 0.01))), "A jump to 82.9 °C, 47.9 K above", 6);
}

TEST(LogLimits, AllowAFallThatAQuarterOfThatPowerTakesAndTwoKelvins) {
    double const most = 8 / (4.186 * 2.5) * 60 / 4 + 2;
    Readings const before(5, 80);
    expect_nothing(of(with(before, Readings(3, 80 - most + 0.01))));
    expect_only(of(with(before, Readings(3, 80 - most - 0.01))), "A jump to 66.5 °C, 13.5 K below", 6);
}

TEST(LogLimits, AllowSixTimesTheNoiseMoreToAJump) {
    double const most = 8 / (4.186 * 2.5) * 60 + 2 + 6 * noise;
    Readings const before = wavering(35, 20); // the last one at 34.9
    expect_nothing(of(with(before, Readings(3, 34.9 + most - 0.01))));
    expect_only(of(with(before, Readings(3, 34.9 + most + 0.01))), "A jump to", 21);
}

TEST(LogLimits, TakeALogForAnotherUnitWhereItsTopIsNotBeyondThreeKelvinsAboveTheBoilingPoint) {
    double const boils_at = (371 - kelvin) - 3;
    EXPECT_TRUE(is_unit(of(Readings(10, 371), {boils_at}), "kelvin"));
    EXPECT_FALSE(is_unit(of(Readings(10, 371), {boils_at - 0.01}), "kelvin"));
    expect_only(of(Readings(10, 260)), "Up to 260 °C", 1); // in no unit
}

TEST(LogLimits, TakeALogForFahrenheitFrom122On) {
    expect_only(of(Readings(10, 122)), "look like °F: 122 would be 50 °C", 0);
    expect_only(of(Readings(10, 121.9)), "Up to 121.9 °C", 1);
}

TEST(LogLimits, TakeALogForAnotherUnitWhereFourInFiveReadingsCouldBeOfWater) {
    // Six readings of lukewarm water, one at either end of what water reads, and two that are nothing.
    auto const log = [](double usual, double low, double high) {
        return of({usual, low, 500, usual, usual, high, usual, usual, 500, usual});
    };
    EXPECT_TRUE(is_unit(log(300, 268, 380), "kelvin"));
    EXPECT_FALSE(is_unit(log(300, 267.9, 380), "kelvin"));
    EXPECT_FALSE(is_unit(log(300, 268, 380.1), "kelvin"));
    EXPECT_TRUE(is_unit(log(150, 30, 225), "°F"));
    EXPECT_FALSE(is_unit(log(150, 29.9, 225), "°F"));
    EXPECT_FALSE(is_unit(log(150, 30, 225.1), "°F"));
}

TEST(LogLimits, TakeNoLogForAnotherUnitThatWouldStartFrozen) {
    auto const from = [](double first) {
        Readings temperatures;
        for (int i = 0; i < 10; ++i)
            temperatures.push_back(first + 6 * i);
        return of(temperatures);
    };
    ASSERT_EQ(270.15 - kelvin, -3);
    EXPECT_TRUE(is_unit(from(270.2), "kelvin"));
    EXPECT_FALSE(is_unit(from(270.15), "kelvin"));
}

TEST(LogLimits, TakeAReadingForAnotherUnitThatThenGoesOnWithinFourKelvins) {
    auto const log = [](double one) { return of({50, 50, 50, 50, one + kelvin, 50, 50, 50}); };
    expect_only(log(54), "327.2 looks like kelvin: it would be 54 °C", 5);
    expect_only(log(46), "319.2 looks like kelvin: it would be 46 °C", 5);
    expect_only(log(54.1), "K above its neighbours", 5);
    expect_only(log(45.9), "K above its neighbours", 5);
}

TEST(LogLimits, TakeAReadingForAnotherUnitThatThenGoesOnWithinOneAndAHalfSteps) {
    auto const log = [](double one) { return of({20, 24, 28, 32, 36, one + kelvin, 44, 48}); };
    expect_only(log(42), "looks like kelvin: it would be 42 °C", 6);
    expect_only(log(42.03), "K above its neighbours", 6);
    // Of six steps the middle one, upwards, is the first, 10 K.
    expect_only(of({20, 30, 31, 32, 33, 43 + kelvin, 44}), "looks like kelvin: it would be 43 °C", 6);
}

TEST(LogLimits, TakeNoReadingForAnotherUnitThatWouldBeFrozen) {
    auto const log = [](double one) { return of({1, 1, 1, 1, one, 1, 1, 1}, {Value(), 8000.0}); };
    expect_only(log(28), "28 looks like °F: it would be -2.2 °C", 5);
    expect_only(log(26), "A reading of 26 °C stands 25 K above its neighbours", 5);
}

TEST(LogLimits, TakeFiveEqualReadingsForStuck) {
    Readings const after{38, 41, 44};
    expect_only(of(with(stuck(20, 3, 35, 5), after)), "for 4 min, where it changed by 3 K/min before", 6);
    expect_nothing(of(with(stuck(20, 3, 35, 4), after)));
    expect_only(of({20, 26, 26, 26, 26, 26, 32, 38}), "stays at 26 °C for 4 min", 2); // from the second reading on
}

TEST(LogLimits, TakeReadingsForStuckWhereTheyShouldHaveChangedByMoreThanOneAndAHalfKelvins) {
    expect_nothing(of(stuck(20, 0.375, 23, 5)));
    expect_only(of(stuck(20, 0.3775, 23.02, 5)), "for 4 min", 9);
}

TEST(LogLimits, TakeReadingsForStuckWhereTheyShouldHaveChangedByMoreThanTwoAndAHalfStepsOfTheDisplay) {
    auto const log = [](double step) {
        LogColumns readings = every_minute({20, 21, 22, 23, 24, 25, 26, 27});
        for (int i = 1; i <= 4; ++i) {
            readings.minutes.push_back(7 + i * step);
            readings.temperatures.push_back(27);
        }
        return check(readings);
    };
    expect_nothing(log(0.625));
    expect_only(log(0.63), "for 2.52 min, where it changed by 1 K/min before", 8);
}

TEST(LogLimits, TakeTheSmallestDifferenceForTheStepOfTheDisplay) {
    // Two minutes at 33 °C after 3 K/min: more than two and a half steps of 1 K, the first, and less than those of 3 K.
    LogColumns log = every_minute({20, 21, 24, 27, 30, 33});
    for (int i = 1; i <= 4; ++i) {
        log.minutes.push_back(5 + i * 0.5);
        log.temperatures.push_back(33);
    }
    expect_only(check(log), "for 2 min, where it changed by 3 K/min before", 6);
}

TEST(LogLimits, TakeThePaceBeforeAStuckReadingFromThreeMinutes) {
    expect_nothing(of({20, 30, 40, 40.3, 40.6, 40.9, 40.9, 40.9, 40.9, 40.9, 41.2, 41.5}));
    expect_only(of({20, 30, 40, 40.9, 40.9, 40.9, 40.9, 40.9, 41.2, 41.5}), "where it changed by 7 K/min before", 4);
}

TEST(LogLimits, TakeASteadyReadingForABoilWithinThreeKelvinsOfTheBoilingPoint) {
    expect_only(of(stuck(74, 3, 92, 5), {95.0}), "settle at 92 °C, 3 K below the boiling point", 7); // not stuck
    expect_only(of(stuck(73.9, 3, 91.9, 5), {95.0}), "stays at 91.9 °C", 7);
    expect_nothing(of(stuck(62, 3, 80, 5))); // where the boiling point is not told
    expect_only(of(stuck(61.9, 3, 79.9, 5)), "stays at 79.9 °C", 7);
    expect_nothing(of(stuck(90, 0.5, 95, 8), {95.0})); // however slowly it came to the boil
    expect_only(of(stuck(96, -1, 93, 5), {95.0}), "changed by -1 K/min before", 4); // it cools
}

TEST(LogLimits, TellWhatIsOddAboutABoil) {
    LogColumns const boil = heating(); // 20.3 min to 94.5 °C
    expect_nothing(check(boil, {95.0}));
    for (double const off : {-2.9, -0.7, 0.7, 1.4}) {
        LogColumns log = boil;
        for (double& temperature : log.temperatures)
            temperature += off;
        std::string const size = off < 0 ? " K below the boiling point" : " K above the boiling point";
        expect_only(check(log, {95.0}), Speaker(Language::english).tenths(std::abs(off)) + size, 22);
    }
    LogColumns seconds = log_of(Pot(), 1 / 6.0, 28, 95); // a logger's, left as minutes
    round_to(seconds, 0.1);
    for (double& minute : seconds.minutes)
        minute *= 60;
    expect_only(check(seconds, {95.0}), "The water boils after 12", 123);
    expect_only(check(seconds), "The water is heated after 11", 115);
    LogColumns flash; // 38 K/min
    for (int i = 0; i <= 20; ++i) {
        flash.minutes.push_back(i * 0.25);
        flash.temperatures.push_back(std::min(20 + 9.5 * i, 95.0));
    }
    expect_only(check(flash, {95.0, 500.0, 20.0, 60.0}), "The water boils after 1.9", 9);
    LogColumns cauldron; // 0.4 K/min, read every minute
    for (int i = 0; i <= 200; ++i) {
        cauldron.minutes.push_back(i);
        cauldron.temperatures.push_back(std::min(20 + 0.4 * i, 95.0));
    }
    expect_only(check(cauldron, {95.0}), "The water boils after 18", 188);
    // Readings a quarter of an hour apart, whose heating hardly tells when it boiled.
    LogColumns const few{{0, 15, 30, 45}, {20, 55, 95, 95}};
    expect_only(check(few, {95.0}), "The readings about the boil lie 15 min apart, so that it is known to ±", 3);
}

TEST(LogLimits, SayOnceThatAllTimesAreTheSame) {
    expect_only(check({{45000, 45000, 45000}, {20, 50, 90}}), "All times are 45000 min", 0);
}

TEST(LogLimits, KnowTheStartWhateverTheFirstReadingAloneSays) {
    auto const start = [](Readings const& temperatures) {
        std::vector<kernels::Reading> log;
        for (double const temperature : temperatures)
            log.push_back({double(log.size()), temperature, 0});
        return diagnosis::start_of(log);
    };
    EXPECT_EQ(start({90, 20}), 90);
    EXPECT_EQ(start({90, 20, 21}), 21);
    EXPECT_EQ(start({19, 20, 21}), 19);
    EXPECT_EQ(start({90, 20, 21, 22}), 21);
}

TEST(LogLimits, WonderAtTheStartOfALogThatRisesBy20Kelvins) {
    expect_only(of({45, 50, 55, 60, 65}), "The log starts at 45 °C, unusual", 1);
    expect_nothing(of({45, 50, 55, 60, 64.9}));
}

TEST(LogLimits, AllowAStartFrom2To40DegreesOrWithinTenKelvinsOfTheAir) {
    auto const from = [](double start, std::vector<Value> more = {}) {
        return of({start, start + 10, start + 20, start + 30}, std::move(more));
    };
    expect_nothing(from(2));
    expect_only(from(1.9), "starts at 1.9 °C, unusual", 1);
    expect_nothing(from(40));
    expect_only(from(40.1), "starts at 40.1 °C, unusual", 1);
    expect_nothing(from(30, {Value(), Value(), 20.0}));
    expect_only(from(30, {Value(), Value(), 19.9}), "starts at 30 °C, 10.1 K above the air", 1);
    expect_nothing(from(30, {Value(), Value(), 40.0}));
    expect_only(from(30, {Value(), Value(), 40.1}), "starts at 30 °C, 10.1 K below the air", 1);
}

TEST(LogLimits, LeaveTwoReadingsToBeChecked) {
    expect_only(check({{0, 2}, {20, 29}}, {Value(), 50000.0}), "A jump to 29 °C", 2);
    // Where a slip leaves one reading there is nothing to compare it with.
    expect_only(check({{8000, 5}, {20, 90}}, {Value(), 5000.0}), "The time 8000 min stands before 5 min.", 1);
}

TEST(LogLimits, KeepTwoHundredFindingsWithoutAWordOfMore) {
    std::vector<Finding> const findings = check(half_empty(400));
    ASSERT_EQ(findings.size(), 200U);
    EXPECT_EQ(findings.back().row, 400U);
}

TEST(LogLimits, BeginWithTheFirstRowThatHoldsBothNumbers) {
    expect_nothing(check({{0, 1, 2}, {nothing, 20, 21}}));
    Block times = column({0, 1, 2, 3});
    times.numbers[2] = text_in_block;
    times.texts = {{2, "soon"}};
    std::vector<Value> const columns{times, column({20, 21, 22, 23})};
    EXPECT_EQ(listed(findings_of(call(*find_function("LOGCHECK"), columns))), "3: \"soon\" is a text, not a time.\n");
}

} // namespace hearthcell::tests
