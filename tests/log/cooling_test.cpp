#include "logs.hpp"

#include "functions/kernels/boil_time.hpp"
#include "functions/kernels/log/heat_loss.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

constexpr double water = 5000, pot_capacity = 450; // g, J/K

/// Cooling with a constant capacity: that of the water between 90 and 60 °C, as HEATLOSS will find it.
LogColumns cooling_log(double loss, double step, double& until_60) {
    double const capacity = kernels::water_capacity(water, 60.0, 90.0) + pot_capacity;
    until_60 = capacity / loss * std::log(70.0 / 40) / 60;
    LogColumns log;
    for (double minute = 0; minute <= until_60 + 1e-9; minute += step) {
        log.minutes.push_back(minute);
        log.temperatures.push_back(20 + 70 * std::exp(-loss * minute * 60 / capacity));
    }
    return log;
}

} // namespace

TEST(HeatLoss, IsThatOfTwoReadings) {
    // 21454.5 J/K × ln(70/60)/1200 s, computed apart.
    EXPECT_NEAR(number_of(call_log("HEATLOSS", {{0, 20}, {90, 80}}, {water, 20.0, pot_capacity})), 2.7560, 5e-5);
}

TEST(HeatLoss, RecoversTheTruth) {
    for (double const loss : {0.5, 2.0, 5.0, 12.0}) {
        double until = 0;
        LogColumns const log = cooling_log(loss, 0.5, until);
        // The last reading may stand up to half a minute before 60 °C; the capacity hardly moves with that.
        EXPECT_NEAR(number_of(call_log("HEATLOSS", log, {water, 20.0, pot_capacity})), loss, 1e-4 * loss);
    }
}

TEST(HeatLoss, HasNoBiasInNoise) {
    Random random(21);
    double until = 0, sum = 0, squares = 0;
    LogColumns const clean = cooling_log(5, 1, until);
    constexpr int logs = 300;
    for (int i = 0; i < logs; ++i) {
        LogColumns log = clean;
        add_noise(log, 0.5, random);
        double const off = number_of(call_log("HEATLOSS", log, {water, 20.0, pot_capacity})) - 5;
        sum += off;
        squares += off * off;
    }
    double const mean = sum / logs, deviation = std::sqrt(squares / logs);
    std::printf("mean %.5f, deviation %.5f W/K\n", mean, deviation);
    EXPECT_LT(std::abs(mean), 4 * deviation / std::sqrt(double(logs)));
}

TEST(HeatLoss, IsFoundInACoolingThatHasEnded) {
    // 20 + 75 exp(-4 · 60 t/8850), 2000 g, 450 J/K, every 10 min: 3.99 W/K from the first four hours and from ten.
    for (double const until : {240.0, 600.0, 1200.0}) {
        LogColumns log;
        for (double minute = 0; minute <= until; minute += 10) {
            log.minutes.push_back(minute);
            log.temperatures.push_back(20 + 75 * std::exp(-4 * 60 * minute / 8850));
        }
        round_to(log, 0.1);
        EXPECT_NEAR(number_of(call_log("HEATLOSS", log, {2000.0, 20.0, 450.0})), 3.99, 0.01) << until;
    }
}

TEST(HeatLoss, TellsAnUncertaintyThatHolds) {
    Random random(23);
    double until = 0;
    LogColumns const clean = cooling_log(5, 1, until);
    constexpr int logs = 500;
    int within = 0;
    for (int i = 0; i < logs; ++i) {
        LogColumns log = clean;
        add_noise(log, random.uniform(0.1, 0.5), random);
        Block const block = std::get<Block>(call_log("HEATLOSS", log, {water, 20.0, pot_capacity}));
        within += std::abs(block.numbers.at(0) - 5) <= 2 * block.numbers.at(1) ? 1 : 0;
    }
    std::printf("within two standard uncertainties %.3f\n", double(within) / logs);
    EXPECT_GE(within, 0.93 * logs);
    EXPECT_LE(within, 0.98 * logs);
}

TEST(HeatLoss, RefusesALogThatDoesNotJustCool) {
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 5, 10, 15}, {20, 40, 60, 80}}, {water, 20.0})),
              Reason::warms_before_cooling);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 5, 10, 20, 30}, {80, 92, 95, 85, 75}}, {water, 20.0})),
              Reason::warms_before_cooling);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20}, {30, 28, 27}}, {water, 40.0})), Reason::air_not_below);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20}, {30, 32, 31.5}}, {water, 30.5})), Reason::air_not_below);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20}, {80, 80, 80.5}}, {water, 20.0})), Reason::not_cooling);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20}, {80, 80, 80}}, {water, 20.0})), Reason::not_cooling);
}

TEST(HeatLoss, AllowsARiseOfTwoKelvinsBeforeTheCooling) {
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 5, 10, 20, 30}, {80, 82, 82, 75, 70}}, {water, 20.0})), Reason::none);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 5, 10, 20, 30}, {80, 82.5, 82.5, 75, 70}}, {water, 20.0})),
              Reason::warms_before_cooling);
}

TEST(HeatLoss, IsKnownHoweverNearTheWaterIsToTheAir) {
    // 2 ln(0.6/0.4) over ten minutes of the capacity at 30 °C, by hand; the readings follow an exponential.
    LogColumns const log{{0, 5, 10}, {30.6, 30 + std::sqrt(0.24), 30.4}};
    double const capacity = kernels::water_capacity(water, 30.4, 30.6);
    EXPECT_NEAR(number_of(call_log("HEATLOSS", log, {water, 30.0})), capacity * std::log(1.5) / 600, 1e-9);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20}, {31, 30, 29}}, {water, 30.0})), Reason::air_not_below);
}

TEST(HeatLoss, IsNoneWhereTheReadingsFallInTheLastDigitOnly) {
    double const warm = 38.619403839111328;
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{1, 2, 3, 4, 5}, {warm, warm, warm, warm, std::nextafter(warm, 0)}},
                                 {water, 16.5})),
              Reason::not_cooling);
}

TEST(HeatLoss, IsNotToldWhereTheFitDoesNotSettle) {
    // Gauss' and Newton's steps wander on these for hundreds of times; where they stood after thirty was no heat loss.
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20, 30}, {38, 20, 28, 25}}, {water, 20.0})),
              Reason::cooling_unsettled);
    EXPECT_EQ(reason_of(call_log("HEATLOSS", {{0, 10, 20, 30, 40}, {35, 20, 27, 23, 20}}, {water, 20.0})),
              Reason::cooling_unsettled);
}

TEST(HeatLoss, TellsHowTheReadingsScatter) {
    auto const scatter = [](std::vector<kernels::Reading> const& log) {
        return kernels::heat_loss(log, {water, 20, 0}).scatter;
    };
    EXPECT_EQ(scatter({{0, 90, 1}, {20, 80, 2}}), 0);
    // scipy 1.10.1, optimize.curve_fit of 20 + a exp(-k t).
    EXPECT_NEAR(scatter({{0, 90, 1}, {10, 86, 2}, {20, 80, 3}}), 0.9718451337, 1e-6);
    EXPECT_NEAR(scatter({{0, 90, 1}, {10, 86, 2}, {20, 80, 3}, {30, 76, 4}}), 0.6871993467, 1e-6);
}

TEST(HeatGain, IsTheSlopeTimesTheHeatCapacity) {
    // 3 K/min, 5000 g, 30 to 80 °C: computed apart with IAPWS SR6-08.
    LogColumns log;
    for (int minute = 0; minute <= 25; ++minute) {
        log.minutes.push_back(minute);
        log.temperatures.push_back(20 + 3.0 * minute);
    }
    EXPECT_NEAR(number_of(call_log("HEATGAIN", log, {water, 30.0, 80.0})), 1.0461592, 5e-8);
    EXPECT_NEAR(number_of(call_log("HEATGAIN", log, {water, 30.0, 80.0, pot_capacity})), 1.0686592, 5e-8);
}

TEST(HeatGain, HasNoBiasWhereNoiseWaversAboutTheEndsOfTheStretch) {
    // Picking readings by their own temperature would flatten the line by ten times the bias that is allowed here.
    Random random(22);
    double sum = 0;
    constexpr int logs = 200;
    for (int i = 0; i < logs; ++i) {
        LogColumns log;
        for (int k = 0; k < 1500; ++k) {
            log.minutes.push_back(k / 60.0);
            log.temperatures.push_back(20 + 3 * k / 60.0 + 0.5 * random.normal());
        }
        sum += number_of(call_log("HEATGAIN", log, {water, 60.0, 75.0})) / (3 * 5 * 4.1885 / 60);
    }
    std::printf("mean relative heat gain %.4f\n", sum / logs);
    EXPECT_NEAR(sum / logs, 1, 0.003);
}

TEST(HeatGain, TakesItsStretchFromTheRise) {
    // 60 to 95 °C: 80 % of the rise is 88 °C, but it ends 10 K below the top. 30 % is 70.5 °C.
    LogColumns log;
    for (int i = 0; i <= 60; ++i) {
        log.minutes.push_back(i * 0.5);
        log.temperatures.push_back(std::min(60 + 1.75 * i * 0.5, 95.0));
    }
    double const given = number_of(call_log("HEATGAIN", log, {water, 70.5, 85.0}));
    EXPECT_NEAR(number_of(call_log("HEATGAIN", log, {water})), given, 1e-12);
    EXPECT_NEAR(given, 1.75 / 60 * kernels::water_capacity(water, 70.5, 85.0) / 1000, 1e-12);
}

TEST(HeatGain, RefusesAStretchThatTheLogDoesNotCover) {
    LogColumns const log{{0, 5, 10, 15, 20, 25}, {20, 35, 50, 65, 80, 95}};
    auto const refused = [&](double from, double to) {
        return reason_of(call_log("HEATGAIN", log, {water, from, to}));
    };
    EXPECT_EQ(refused(10, 80), Reason::stretch_not_covered);
    EXPECT_EQ(refused(30, 99), Reason::stretch_not_covered);
    EXPECT_EQ(refused(80, 30), Reason::to_not_above_from);
    EXPECT_EQ(refused(50, 50), Reason::to_not_above_from);
    EXPECT_EQ(refused(36, 49), Reason::too_few_readings);
    EXPECT_EQ(refused(36, 66), Reason::too_few_readings); // two readings
    EXPECT_EQ(refused(34, 66), Reason::none);             // three
    EXPECT_EQ(reason_of(call_log("HEATGAIN", log, {water, 90.0})), Reason::stretch_not_covered);
    EXPECT_EQ(reason_of(call_log("HEATGAIN", log, {water, Value(), 30.0})), Reason::stretch_not_covered);
    EXPECT_EQ(refused(30, 80), Reason::none);
    EXPECT_EQ(reason_of(call_log("HEATGAIN", {{0, 5, 10}, {20, 22, 24}}, {water})), Reason::stretch_not_covered);
}

TEST(HeatGain, AllowsALogThatStartsAKelvinAboveTheStretch) {
    LogColumns log{{0, 5, 10, 15, 20}, {31, 46, 61, 76, 91}};
    EXPECT_EQ(reason_of(call_log("HEATGAIN", log, {water, 30.0, 80.0})), Reason::none);
    log.temperatures.front() = 31.5;
    EXPECT_EQ(reason_of(call_log("HEATGAIN", log, {water, 30.0, 80.0})), Reason::stretch_not_covered);
}

} // namespace hearthcell::tests
