#include "logs.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

struct Given2 {
    double minutes, uncertainty;
};

Given2 forecast_of(Outcome const& outcome) {
    Block const* block = std::get_if<Block>(&outcome);
    if (block == nullptr) {
        ADD_FAILURE() << "no forecast: reason " << int(reason_of(outcome));
        return {};
    }
    return {block->numbers.at(0), block->numbers.at(1)};
}

constexpr double boiling_point = 95;

/// A log of any pot that stops 5 to 20 K before the boil.
struct Stopped {
    Pot pot;
    LogColumns log;
    double truth;
};
Stopped stopped_log(Random& random) {
    Pot const pot = Pot::any(random);
    double const last = boiling_point - random.uniform(5, 20);
    LogColumns log = log_of(pot, random.uniform(0.1, 1), pot.minutes_to(last));
    add_noise(log, random.uniform(0.05, 0.3), random);
    return {pot, log, pot.minutes_to(boiling_point)};
}

} // namespace

TEST(BoilForecast, RecoversTheTruthFromAThousandNoisyLogs) {
    Random random(20260101);
    constexpr int logs = 1000;
    int answered = 0, contained = 0;
    double sum_of_normed = 0, sum_of_squares = 0, sum_of_shares = 0;
    for (int i = 0; i < logs; ++i) {
        Stopped const stopped = stopped_log(random);
        Outcome const outcome = call_log("BOILFORECAST", stopped.log, {boiling_point});
        if (!std::holds_alternative<Block>(outcome))
            continue;
        auto const [minutes, uncertainty] = forecast_of(outcome);
        double const off = (minutes - stopped.truth) / uncertainty;
        ++answered;
        // 95 % limits: 1.96 standard uncertainties, which count the few readings in already.
        contained += std::abs(off) <= 1.96 ? 1 : 0;
        sum_of_normed += off;
        sum_of_squares += off * off;
        sum_of_shares += (minutes - stopped.truth) / stopped.truth;
    }
    double const share = double(contained) / answered, bias = sum_of_shares / answered;
    std::printf("answered %d, contained %.3f, mean of (forecast - truth)/u %.3f, its standard deviation %.3f, "
                "mean relative error %.5f\n",
                answered, share, sum_of_normed / answered, std::sqrt(sum_of_squares / answered), bias);
    EXPECT_GE(answered, 950);
    EXPECT_GE(share, 0.92);
    EXPECT_LE(share, 0.98);
    EXPECT_LT(std::abs(bias), 0.005);
    EXPECT_LT(std::abs(sum_of_normed / answered), 0.15); // a thousand logs show 0.03 by chance
}

TEST(BoilForecast, IsExactWithoutNoise) {
    for (double const loss : {0.0, 2.0, 5.0, 10.0}) {
        Pot const pot{.loss = loss};
        Outcome const outcome = call_log("BOILFORECAST", log_of(pot, 0.5, pot.minutes_to(80)), {boiling_point});
        EXPECT_NEAR(forecast_of(outcome).minutes, pot.minutes_to(boiling_point), 1e-8) << loss << " W/K";
        EXPECT_LT(forecast_of(outcome).uncertainty, 1e-6);
    }
}

TEST(BoilForecast, CountsFromTheFirstReadingAndNotFromAnyZero) {
    Pot const pot;
    LogColumns log = log_of(pot, 0.5, pot.minutes_to(80));
    double const at_zero = forecast_of(call_log("BOILFORECAST", log, {boiling_point})).minutes;
    for (double& minute : log.minutes)
        minute += 512;
    EXPECT_NEAR(forecast_of(call_log("BOILFORECAST", log, {boiling_point})).minutes, at_zero, 1e-8);
}

TEST(BoilForecast, IsNotMisledByMinutesBeforeTheFireCatches) {
    // Five minutes before the fire catches, then a steady fire: those minutes are no part of the model.
    Pot const pot;
    LogColumns log;
    for (int i = 0; i < 45; ++i) {
        double const minute = i * 0.5;
        log.minutes.push_back(minute);
        log.temperatures.push_back(minute < 5 ? pot.start : pot.at(minute - 5));
    }
    EXPECT_NEAR(forecast_of(call_log("BOILFORECAST", log, {boiling_point})).minutes, pot.minutes_to(boiling_point) + 5,
                1e-7);
}

TEST(BoilForecast, GrowsItsUncertaintyWhereResidualsHangTogether) {
    Pot const pot;
    LogColumns fine = log_of(pot, 0.1, pot.minutes_to(80)), wavering = fine;
    Random random(7);
    add_noise(fine, 0.2, random);
    double drift = 0; // the same deviation, but each reading remembers nine tenths of the one before
    for (double& temperature : wavering.temperatures) {
        drift = 0.9 * drift + 0.2 * std::sqrt(1 - 0.81) * random.normal();
        temperature += drift;
    }
    EXPECT_GT(forecast_of(call_log("BOILFORECAST", wavering, {boiling_point})).uncertainty,
              2 * forecast_of(call_log("BOILFORECAST", fine, {boiling_point})).uncertainty);
}

TEST(BoilForecast, RefusesWhatNobodyCouldForecast) {
    Pot const pot;
    auto const refused = [](LogColumns const& log) {
        return reason_of(call_log("BOILFORECAST", log, {boiling_point}));
    };
    EXPECT_EQ(refused(log_of(pot, 0.5, 1.2)), Reason::not_heating);                     // a rise of 4 K
    EXPECT_EQ(refused(log_of(pot, 3, pot.minutes_to(70))), Reason::too_few_readings);   // six readings
    EXPECT_EQ(refused(log_of(pot, 0.5, pot.minutes_to(45))), Reason::forecast_too_far); // fifty kelvins ahead
    EXPECT_EQ(refused(log_of(pot, 0.5, 30, boiling_point)), Reason::log_boils_already);
    // 1500 W against 20 W/K: it settles at 95 °C exactly, and at 85 °C with 23 W/K.
    EXPECT_EQ(refused(log_of({.loss = 23}, 0.5, 50)), Reason::forecast_never_boils);
    Random random(3);
    LogColumns scattered = log_of(pot, 1, pot.minutes_to(70));
    add_noise(scattered, 6, random);
    EXPECT_EQ(refused(scattered), Reason::forecast_uncertain);
    LogColumns faster;
    for (int i = 0; i < 30; ++i) {
        faster.minutes.push_back(i);
        faster.temperatures.push_back(20 + 0.06 * i * i);
    }
    EXPECT_EQ(refused(faster), Reason::heating_speeds_up);
    EXPECT_EQ(refused({{0, 10, 20}, {90, 80, 72}}), Reason::not_heating);
}

TEST(BoilForecast, AgreesWithScipyInTheUncertaintyOfTheFit) {
    // scipy 1.10.1: optimize.curve_fit of s - a exp(-k t) to the readings from a fifth of the rise on, and its
    // covariance carried to the boil to first order; times the standard deviation of Student's t with n - 3 degrees of
    // freedom, and by (1 + r)/(1 - r) where the correlation r of neighbours is above 2/sqrt(n). Readings invented.
    LogColumns log{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9}, {20.0, 29.7, 38.5, 46.3, 54.1, 60.9, 67.1, 73.2, 78.3, 83.3}};
    Given2 forecast = forecast_of(call_log("BOILFORECAST", log, {boiling_point}));
    EXPECT_NEAR(forecast.minutes, 11.7683748325, 1e-8); // n 8, r -0.65
    EXPECT_NEAR(forecast.uncertainty, 0.1156444750, 1e-8);

    log = {{}, {20.1, 23.6, 26.8, 29.5, 33.1, 36.1, 38.7, 41.8, 44.5, 47.1, 49.6, 52.2,
                54.2, 56.6, 58.8, 61.3, 63.3, 65.3, 67.1, 69.1, 71.1, 72.8, 75.1, 76.8,
                77.3, 78.9, 81.0, 82.5, 84.2, 85.6, 87.6, 88.0, 89.4, 91.3, 92.3, 93.4}};
    for (std::size_t i = 0; i < log.temperatures.size(); ++i)
        log.minutes.push_back(double(i) / 2);
    forecast = forecast_of(call_log("BOILFORECAST", log, {boiling_point}));
    EXPECT_NEAR(forecast.minutes, 18.2021887074, 1e-8); // n 31, r 0.14: no more than chance
    EXPECT_NEAR(forecast.uncertainty, 0.0723168048, 1e-8);

    log.temperatures = {20.0, 23.5, 26.8, 29.8, 33.0, 36.1, 38.9, 41.8, 44.5, 47.2, 49.7, 52.2,
                        54.5, 56.8, 59.0, 61.2, 63.4, 65.4, 67.3, 69.2, 71.0, 72.8, 74.8, 76.6,
                        77.9, 79.2, 80.8, 82.3, 83.8, 85.3, 87.0, 88.1, 89.4, 90.9, 92.2, 93.4};
    forecast = forecast_of(call_log("BOILFORECAST", log, {boiling_point}));
    EXPECT_NEAR(forecast.minutes, 18.3236352939, 1e-8); // n 31, r 0.61
    EXPECT_NEAR(forecast.uncertainty, 0.0899469905, 1e-8);
}

TEST(BoilForecast, RestsOnTheReadingsFromAFifthOfTheRiseOn) {
    // 20 + 6 t: a fifth of the rise to 80 °C is passed at 32 °C exactly, and eight readings are just enough.
    LogColumns log;
    for (int const minute : {0, 1, 2, 4, 5, 6, 7, 8, 9, 10}) {
        log.minutes.push_back(minute);
        log.temperatures.push_back(20 + 6 * minute);
    }
    EXPECT_NEAR(forecast_of(call_log("BOILFORECAST", log, {boiling_point})).minutes, 12.5, 1e-9);
    log.temperatures[2] -= 0.01;
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {boiling_point})), Reason::too_few_readings);
}

TEST(BoilForecast, WantsARiseOfFiveKelvins) {
    LogColumns log;
    for (int i = 0; i <= 10; ++i) {
        log.minutes.push_back(i);
        log.temperatures.push_back(20 + 0.5 * i);
    }
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {boiling_point})), Reason::forecast_too_far);
    log.temperatures.back() -= 0.01;
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {boiling_point})), Reason::not_heating);
}

TEST(BoilForecast, ReachesAsFarBeyondTheLastReadingAsTheReadingsThemselves) {
    // 60 + 2 t to minute 10, from minute 2 on: eight minutes more lead to 96 °C.
    LogColumns log;
    for (int i = 0; i <= 40; ++i) {
        log.minutes.push_back(i * 0.25);
        log.temperatures.push_back(60 + 2 * i * 0.25);
    }
    EXPECT_NEAR(forecast_of(call_log("BOILFORECAST", log, {95.9})).minutes, 17.95, 1e-9);
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {96.1})), Reason::forecast_too_far);
}

TEST(BoilForecast, IsRefusedFromAnUncertaintyOfATenthOn) {
    // The same noise, made larger until the forecast is refused.
    Pot const pot;
    double low = 0, high = 6, share = 0;
    for (int i = 0; i < 40; ++i) {
        double const deviation = (low + high) / 2;
        LogColumns log = log_of(pot, 1, pot.minutes_to(70));
        Random random(3);
        add_noise(log, deviation, random);
        Outcome const outcome = call_log("BOILFORECAST", log, {boiling_point});
        bool const answered = std::holds_alternative<Block>(outcome);
        if (answered)
            share = forecast_of(outcome).uncertainty / forecast_of(outcome).minutes;
        else
            EXPECT_EQ(reason_of(outcome), Reason::forecast_uncertain);
        (answered ? low : high) = deviation;
    }
    EXPECT_LE(share, 0.1);
    EXPECT_NEAR(share, 0.1, 1e-6);
}

TEST(BoilForecast, NeverComesWhereTheHeatingHasSettledLongSince) {
    // 1500 W against 23 W/K for three hours: at the middle of the readings nothing rises any more.
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log_of({.loss = 23}, 0.5, 180), {boiling_point})),
              Reason::forecast_never_boils);
}

} // namespace hearthcell::tests
