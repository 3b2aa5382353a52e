#include "logs.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr double boiling_point = 94.983; // at 1500 m

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

TEST(BoilTime, FindsTheBoilWhereTheThermometerIsRight) {
    // A straight line across the bend at the boil is out by half a step at most.
    for (double const step : {1 / 60.0, 0.25, 1.0, 2.0})
        EXPECT_NEAR(number_of(call_log("BOILTIME", boiling_log(step, 0), {boiling_point})), truth(), 0.52 * step)
            << "every " << step << " min";
}

TEST(BoilTime, FindsThePlateauOfAThermometerThatIsOut) {
    // The error of the thermometer must not move the boil, neither below nor above, up to the 3 K that are promised.
    for (double const offset : {-2.9, -2.0, -1.0, -0.6, -0.5, -0.4, 0.4, 0.5, 1.0, 2.9})
        EXPECT_NEAR(number_of(call_log("BOILTIME", boiling_log(0.5, offset), {boiling_point})), truth(), 0.02)
            << offset << " K";
    EXPECT_EQ(reason_of(call_log("BOILTIME", boiling_log(0.5, -3.2), {boiling_point})), Reason::no_boil_found);
}

TEST(BoilTime, FindsItInNoise) {
    Random random(5);
    double sum = 0, worst = 0;
    constexpr int logs = 300;
    for (int i = 0; i < logs; ++i) {
        LogColumns log = boiling_log(i % 2 == 0 ? 1 / 12.0 : 0.5, random.uniform(-2.5, 1));
        add_noise(log, random.uniform(0, 0.2), random);
        round_to(log, 0.1);
        double const off = number_of(call_log("BOILTIME", log, {boiling_point})) - truth();
        sum += off;
        worst = std::max(worst, std::abs(off));
    }
    std::printf("mean error %.3f min, worst %.2f min\n", sum / logs, worst);
    EXPECT_LT(std::abs(sum / logs), 0.05);
    EXPECT_LT(worst, 1);
}

TEST(BoilTime, StandsAnOvershoot) {
    // A probe near the bottom reads 1.5 K too much as the boil sets in and settles within four minutes.
    LogColumns log = boiling_log(0.25, 0);
    for (std::size_t i = 0; i < log.minutes.size(); ++i)
        if (double const after = log.minutes[i] - truth(0); after > 0)
            log.temperatures[i] += 1.5 * std::exp(-after);
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point})), truth(), 0.1);
}

TEST(BoilTime, PassesAStallBelowTheBoil) {
    // The fire flags for five minutes at 93 °C: flat and within 3 K, but the boil comes later.
    LogColumns log;
    for (int i = 0; i <= 160; ++i) {
        double const minute = i * 0.25;
        log.minutes.push_back(minute);
        log.temperatures.push_back(minute < 20   ? 33 + 3 * minute
                                   : minute < 25 ? 93
                                                 : std::min(93 + 3 * (minute - 25), boiling_point));
    }
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point})), 25 + (boiling_point - 0.5 - 93) / 3, 0.01);
}

TEST(BoilTime, IsNotFooledByASpike) {
    LogColumns log = boiling_log(0.5, 0);
    log.temperatures[10] = 99;
    log.temperatures[30] = 96;
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point})), truth(), 0.01);
}

TEST(BoilTime, CountsFromTheStartMinute) {
    LogColumns log = boiling_log(0.5, 0);
    for (double& minute : log.minutes)
        minute += 12;
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point})), truth(), 0.01);
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point, Value(), 15.0})), truth() - 3, 0.01);
    EXPECT_NEAR(number_of(call_log("BOILTIME", log, {boiling_point, Value(), 10.0})), truth() + 2, 0.01);
    EXPECT_EQ(reason_of(call_log("BOILTIME", log, {boiling_point, Value(), 36.0})), Reason::boils_from_start);
}

TEST(BoilTime, WantsTheBoilToHold) {
    Pot const pot;
    double const boil = pot.minutes_to(boiling_point);
    LogColumns const short_log = log_of(pot, 0.25, boil + 1, boiling_point);
    EXPECT_EQ(reason_of(call_log("BOILTIME", short_log, {boiling_point})), Reason::boil_not_held);
    EXPECT_NEAR(number_of(call_log("BOILTIME", short_log, {boiling_point, Value(), Value(), 0.5})), truth(), 0.01);
    EXPECT_NEAR(number_of(call_log("BOILTIME", log_of(pot, 0.25, boil + 0.2, boiling_point),
                                   {boiling_point, Value(), Value(), 0.0})),
                truth(), 0.01);
}

TEST(BoilTime, WantsTheBoilToHoldForAsLongAsToldAndNoLonger) {
    // 34.5 + 3 t passes 94.5 °C, half a kelvin below the boil, at minute 20.
    LogColumns log;
    for (int minute = 0; minute <= 22; ++minute) {
        log.minutes.push_back(minute);
        log.temperatures.push_back(std::min(34.5 + 3 * minute, 95.0));
    }
    EXPECT_DOUBLE_EQ(number_of(call_log("BOILTIME", log, {95.0})), 20);
    log.minutes.back() = 21.99;
    EXPECT_EQ(reason_of(call_log("BOILTIME", log, {95.0})), Reason::boil_not_held);
}

TEST(BoilTime, WantsTwoReadingsFromTheStartMinuteOn) {
    LogColumns const log = boiling_log(0.5, 0);
    double const last = log.minutes.back();
    EXPECT_EQ(reason_of(call_log("BOILTIME", log, {boiling_point, Value(), last})), Reason::too_few_readings);
    EXPECT_EQ(reason_of(call_log("BOILTIME", log, {boiling_point, Value(), last - 0.5})), Reason::boils_from_start);
}

TEST(BoilTime, TakesAWiderToleranceForARollingBoil) {
    EXPECT_NEAR(number_of(call_log("BOILTIME", boiling_log(0.5, 0), {boiling_point, 2.0})), truth(2), 0.01);
}

TEST(BoilTime, FindsNoBoilInALogThatStopsEarly) {
    EXPECT_EQ(reason_of(call_log("BOILTIME", log_of(Pot(), 0.5, 19), {boiling_point})), Reason::no_boil_found);
}

} // namespace hearthcell::tests
