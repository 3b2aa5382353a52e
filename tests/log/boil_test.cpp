#include "logs.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr double boiling_point = 94.983; // at 1500 m

struct BoilTime {
    double minutes, uncertainty, earliest, latest;
};
BoilTime boil_of(Outcome const& outcome) {
    Block const* const block = std::get_if<Block>(&outcome);
    if (block == nullptr) {
        ADD_FAILURE() << "no boil: reason " << int(reason_of(outcome));
        return {};
    }
    return {block->numbers.at(0), block->numbers.at(1), block->numbers.at(2), block->numbers.at(3)};
}
BoilTime boil_of(LogColumns const& log, std::vector<Value> more) {
    return boil_of(call_log("BOILTIME", log, std::move(more)));
}
Reason refused(LogColumns const& log, std::vector<Value> more) {
    return reason_of(call_log("BOILTIME", log, std::move(more)));
}

/// Readings every so many minutes from 0 on.
LogColumns notes(double step, Readings temperatures) {
    return {every(step, int(temperatures.size())), std::move(temperatures)};
}
/// Of temperatures by the minute.
template <class At> LogColumns notes_of(double step, double until, At at) {
    LogColumns log;
    for (double minute = 0; minute <= until + 1e-9; minute += step) {
        log.minutes.push_back(minute);
        log.temperatures.push_back(at(minute));
    }
    return log;
}

LogColumns boiling_log(double step, double offset) {
    Pot const pot;
    LogColumns log = log_of(pot, step, pot.minutes_to(boiling_point) + 10, boiling_point);
    for (double& temperature : log.temperatures)
        temperature += offset;
    return log;
}
double truth(double tolerance = 0.5) {
    return Pot().minutes_to(boiling_point - tolerance);
}

} // namespace

TEST(BoilTime, IsCarriedOnFromTheHeatingHoweverFarApartTheReadingsAre) {
    for (double const step : {1 / 60.0, 0.25, 1.0, 2.0, 5.0}) {
        BoilTime const boil = boil_of(boiling_log(step, 0), {boiling_point});
        EXPECT_NEAR(boil.minutes, truth(), 2 * boil.uncertainty) << "every " << step << " min";
        EXPECT_LT(boil.uncertainty, 0.05 + 0.08 * step);
        EXPECT_LE(boil.earliest, boil.minutes);
        EXPECT_GE(boil.latest, boil.minutes);
        EXPECT_NEAR(boil.latest - boil.earliest, step, 0.01 + 0.2 * step);
    }
}

TEST(BoilTime, TellsTwoVariantsFourMinutesApartByFiveMinuteNotes) {
    // 20 + 3.66 t and 20 + 3.05 t come to 94.5 °C at 20.36 and 24.43 min; a straight line to the plateau tells 1.2
    // apart.
    for (auto const& [rate, boils_at] : {std::pair(3.66, 20.355), std::pair(3.05, 24.426)}) {
        LogColumns log = notes_of(5, 40, [slope = rate](double minute) { return std::min(20 + slope * minute, 95.0); });
        round_to(log, 0.5);
        BoilTime const boil = boil_of(log, {95.0});
        EXPECT_NEAR(boil.minutes, boils_at, 0.15);
        EXPECT_NEAR(boil.minutes, boils_at, 2 * boil.uncertainty);
        EXPECT_LT(boil.uncertainty, 0.5);
    }
}

TEST(BoilTime, FindsTheLevelOfAThermometerThatIsOut) {
    // The error of the thermometer must not move the boil, neither below, up to the 3 K that are promised, nor above.
    for (double const offset : {-2.9, -2.0, -1.0, -0.6, -0.5, -0.4, 0.4, 0.5, 1.0, 2.9, 4.1})
        EXPECT_NEAR(boil_of(boiling_log(0.5, offset), {boiling_point}).minutes, truth(), 0.03) << offset << " K";
    EXPECT_EQ(refused(boiling_log(0.5, -3.2), {boiling_point}), Reason::no_boil_found);
    // 97.8 °C at 1900 m.
    LogColumns const high = notes_of(1, 35, [](double minute) { return std::min(20 + 3.87 * minute, 97.8); });
    EXPECT_NEAR(boil_of(high, {93.65}).minutes, (97.3 - 20) / 3.87, 0.03);
}

TEST(BoilTime, HasNoLevelInWaterThatCreeps) {
    for (double const end : {40.0, 45.0, 50.0})
        for (double const step : {0.25, 1.0, 5.0})
            EXPECT_EQ(refused(notes_of(step, end,
                                       [](double minute) {
                                           return minute < 20 ? 20 + 3.5 * minute : 90 + 0.12 * (minute - 20);
                                       }),
                              {95.0}),
                      Reason::no_boil_found)
                << end << " " << step;
}

TEST(BoilTime, IsNotMovedByASimmerHoweverShortTheBoil) {
    // At 95 °C for a minute, then at 92.5 °C: 94.5 is passed at 21.29 min.
    for (double const step : {0.25, 0.5, 1.0}) {
        BoilTime const boil = boil_of(notes_of(step, 40,
                                               [](double minute) {
                                                   double const heating = 20 + 3.5 * minute;
                                                   return heating < 95 ? heating : minute < 22.5 ? 95 : 92.5;
                                               }),
                                      {95.0});
        EXPECT_NEAR(boil.minutes, 74.5 / 3.5, 2 * boil.uncertainty) << step;
        EXPECT_LT(boil.uncertainty, 0.15);
    }
}

TEST(BoilTime, IsReachedHeldOrNot) {
    // The pot is taken off, or the fan turned down, at the boil: within half a kelvin of 93.65 °C.
    BoilTime boil = boil_of(notes(1, {70, 75, 80, 85.5, 91.5, 93.6}), {93.65});
    EXPECT_EQ(boil.earliest, 4);
    EXPECT_EQ(boil.latest, 5);
    EXPECT_NEAR(boil.minutes, 4.3, 0.15);
    boil = boil_of(notes(5, {30, 49, 69, 88, 93.5, 92.1, 92}), {93.65});
    EXPECT_EQ(boil.earliest, 15);
    EXPECT_EQ(boil.latest, 20);
    EXPECT_NEAR(boil.minutes, 16.4, 2 * boil.uncertainty);
    boil = boil_of(notes(1, {70, 75, 80, 85, 89.5, 93.4, 92, 92, 92, 92, 92}), {93.65});
    EXPECT_EQ(boil.latest, 5);
    EXPECT_GT(boil.uncertainty, 0.08); // the boiling point alone tells the level
    EXPECT_EQ(refused(notes(1, {70, 75, 80, 85, 89.5, 93.1, 92, 91, 90}), {93.65}), Reason::no_boil_found);
}

TEST(BoilTime, IsTheFirstOfTwoBoils) {
    LogColumns const twice =
        notes_of(1, 70, [](double minute) { return std::min(20 + 3.5 * std::fmod(minute, 35), 95.0); });
    EXPECT_NEAR(boil_of(twice, {95.0}).minutes, 74.5 / 3.5, 0.1);
    EXPECT_NEAR(boil_of(twice, {95.0, Value(), 35.0}).minutes, 74.5 / 3.5, 0.1);
}

TEST(BoilTime, CountsAnOvershootForTheBoilAsWellAsForTheProbe) {
    // A probe near the bottom reads 1.5 K too much as the boil sets in and settles within four minutes; a boil and a
    // simmer look alike.
    LogColumns log = boiling_log(0.25, 0);
    for (std::size_t i = 0; i < log.minutes.size(); ++i)
        if (double const after = log.minutes[i] - truth(0); after > 0)
            log.temperatures[i] += 1.5 * std::exp(-after);
    BoilTime const boil = boil_of(log, {boiling_point});
    EXPECT_NEAR(boil.minutes, truth(), 2 * boil.uncertainty);
    EXPECT_NEAR(boil.minutes, truth(), 0.3);
}

TEST(BoilTime, PassesAStallBelowTheBoil) {
    // The fire flags for five minutes at 93 °C: flat and within 3 K, but the boil comes later.
    LogColumns const log = notes_of(0.25, 40, [](double minute) {
        return minute < 20 ? 33 + 3 * minute : minute < 25 ? 93 : std::min(93 + 3 * (minute - 25), boiling_point);
    });
    EXPECT_NEAR(boil_of(log, {boiling_point}).minutes, 25 + (boiling_point - 0.5 - 93) / 3, 0.05);
}

TEST(BoilTime, IsNotFooledByWildReadings) {
    LogColumns log = boiling_log(0.5, 0);
    log.temperatures[10] = 99;
    log.temperatures[30] = 96;
    log.temperatures[50] = 70;
    EXPECT_NEAR(boil_of(log, {boiling_point}).minutes, truth(), 0.03);
}

TEST(BoilTime, CountsFromTheStart) {
    LogColumns log = boiling_log(0.5, 0);
    for (double& minute : log.minutes)
        minute += 12;
    EXPECT_NEAR(boil_of(log, {boiling_point}).minutes, truth(), 0.03);
    EXPECT_NEAR(boil_of(log, {boiling_point, Value(), 15.0}).minutes, truth() - 3, 0.03);
    EXPECT_NEAR(boil_of(log, {boiling_point, Value(), 10.0}).minutes, truth() + 2, 0.03);
    EXPECT_EQ(refused(log, {boiling_point, Value(), 36.0}), Reason::boils_from_start);
}

TEST(BoilTime, TakesATimeOfCalcForTheStartOfALogByTheClock) {
    // From 9:14 to 9:54; lit at 9:17, which Calc keeps as a part of a day.
    LogColumns log = boiling_log(1, 0);
    for (double& minute : log.minutes)
        minute += 554;
    double const by_minute = boil_of(log, {boiling_point, Value(), 557.0}).minutes;
    EXPECT_NEAR(by_minute, truth() - 3, 0.05);
    EXPECT_NEAR(boil_of(log, {boiling_point, Value(), 557 / 1440.0}).minutes, by_minute, 1e-9);
    for (char const* const typed : {"9:17", "09:17"})
        EXPECT_NEAR(boil_of(log, {boiling_point, Value(), std::string(typed)}).minutes, by_minute, 1e-9);
    for (char const* const typed : {"9.17", "9:75"})
        EXPECT_EQ(refused(log, {boiling_point, Value(), std::string(typed)}), Reason::text_for_number);
    EXPECT_EQ(refused(log, {boiling_point, Value(), 3.0}), Reason::start_outside_log);
    EXPECT_EQ(refused(log, {boiling_point, Value(), 700.0}), Reason::start_outside_log);
    EXPECT_NEAR(boil_of(log, {boiling_point, Value(), 500.0}).minutes, truth() + 54, 0.05); // an hour before
    EXPECT_EQ(refused(log, {boiling_point, Value(), 493.0}), Reason::start_outside_log);
}

TEST(BoilTime, TellsTheTwoReadingsWhereNothingTellsTheHeating) {
    BoilTime const boil = boil_of(notes(10, {20, 95, 95, 95}), {95.0});
    EXPECT_EQ(boil.earliest, 0);
    EXPECT_EQ(boil.latest, 10);
    EXPECT_NEAR(boil.uncertainty, 10 / std::sqrt(12.0), 0.2);
}

TEST(BoilTime, WantsTwoReadingsFromTheStartOn) {
    LogColumns const log = boiling_log(0.5, 0);
    double const last = log.minutes.back();
    EXPECT_EQ(refused(log, {boiling_point, Value(), last}), Reason::too_few_readings);
    EXPECT_EQ(refused(log, {boiling_point, Value(), last - 0.5}), Reason::boils_from_start);
}

TEST(BoilTime, TakesAWiderToleranceForARollingBoil) {
    EXPECT_NEAR(boil_of(boiling_log(0.5, 0), {boiling_point, 2.0}).minutes, truth(2), 0.03);
}

TEST(BoilTime, FindsNoBoilInALogThatStopsEarly) {
    EXPECT_EQ(refused(log_of(Pot(), 0.5, 19), {boiling_point}), Reason::no_boil_found);
}

TEST(BoilTime, IsFoundAmongManyReadingsThatMayBeOnEitherSideOfIt) {
    // A weak fire, 0.4 K/min, read every two seconds with a scatter of 0.3 K.
    LogColumns log = notes_of(1 / 30.0, 60, [](double minute) { return std::min(80 + 0.4 * minute, 95.0); });
    Random random(11);
    add_noise(log, 0.3, random);
    BoilTime const boil = boil_of(log, {95.0});
    EXPECT_NEAR(boil.minutes, 14.5 / 0.4, 2 * boil.uncertainty);
    EXPECT_LT(boil.uncertainty, 0.8);
}

TEST(BoilTime, LooksForALevelForAsLongAsTold) {
    // A stall of three minutes at 93 °C, where the log ends: a level within 3 K, but not for five minutes.
    LogColumns const log = notes_of(0.5, 23.5, [](double minute) { return std::min(33 + 3 * minute, 93.0); });
    EXPECT_EQ(reason_of(call_log("BOILTIME", log, {95.0})), Reason::none);
    EXPECT_EQ(refused(log, {95.0, Value(), Value(), 5.0}), Reason::no_boil_found);
}

} // namespace hearthcell::tests
