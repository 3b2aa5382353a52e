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

constexpr double boiling_point = 95, mark = 0.5; // the forecast is that of BOILTIME's own mark

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
    return {pot, log, pot.minutes_to(boiling_point - mark)};
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
    EXPECT_GE(share, 0.95); // these fires do not wander, and the probe is right: the uncertainty holds more
    EXPECT_LT(std::abs(bias), 0.01);
}

TEST(BoilForecast, IsThatOfTheModelForASteadyFire) {
    for (double const loss : {0.0, 2.0, 5.0, 10.0, 15.0})
        for (double const last : {80.0, 90.0}) {
            Pot const pot{.loss = loss};
            auto const [minutes, uncertainty] =
                forecast_of(call_log("BOILFORECAST", log_of(pot, 0.5, pot.minutes_to(last)), {boiling_point}));
            EXPECT_NEAR(minutes, pot.minutes_to(boiling_point - mark), uncertainty) << loss << " W/K";
            EXPECT_LT(uncertainty, 0.04 * minutes);
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
    auto const [minutes, uncertainty] = forecast_of(call_log("BOILFORECAST", log, {boiling_point}));
    EXPECT_NEAR(minutes, pot.minutes_to(boiling_point - mark) + 5, uncertainty);
}

TEST(BoilForecast, GrowsItsUncertaintyWithTheWanderingOfTheFire) {
    Pot const pot;
    LogColumns const steady = log_of(pot, 0.1, pot.minutes_to(80));
    LogColumns wavering = steady;
    for (std::size_t i = 0; i < wavering.minutes.size(); ++i)
        wavering.temperatures[i] += 1.5 * std::sin(wavering.minutes[i]);
    EXPECT_GT(forecast_of(call_log("BOILFORECAST", wavering, {boiling_point})).uncertainty,
              2 * forecast_of(call_log("BOILFORECAST", steady, {boiling_point})).uncertainty);
}

TEST(BoilForecast, HoldsAProbeThatIsOut) {
    // 0.4 K at 3.2 K/min, whatever else is known.
    Pot const pot;
    EXPECT_GT(forecast_of(call_log("BOILFORECAST", log_of(pot, 0.1, pot.minutes_to(94)), {boiling_point})).uncertainty,
              0.4 / 3.3);
}

TEST(BoilForecast, HardlyMindsAWildReading) {
    Pot const pot;
    LogColumns log = log_of(pot, 0.5, pot.minutes_to(85));
    Given2 const clean = forecast_of(call_log("BOILFORECAST", log, {boiling_point}));
    for (double const off : {-20.0, -6.0, 4.0, 6.0, 20.0}) {
        LogColumns wild = log;
        wild.temperatures[24] += off;
        Given2 const found = forecast_of(call_log("BOILFORECAST", wild, {boiling_point}));
        EXPECT_LT(found.uncertainty, 1.5 * clean.uncertainty) << off;
        EXPECT_NEAR(found.minutes, clean.minutes, clean.uncertainty) << off;
    }
}

TEST(BoilForecast, AnswersNotesEveryTwoMinutes) {
    Pot const pot;
    auto const [minutes, uncertainty] =
        forecast_of(call_log("BOILFORECAST", log_of(pot, 2, pot.minutes_to(85)), {boiling_point}));
    EXPECT_NEAR(minutes, pot.minutes_to(boiling_point - mark), uncertainty);
}

TEST(BoilForecast, RefusesWhatNobodyCouldForecast) {
    Pot const pot;
    auto const refused = [](LogColumns const& log) {
        return reason_of(call_log("BOILFORECAST", log, {boiling_point}));
    };
    EXPECT_EQ(refused(log_of(pot, 0.5, 1.2)), Reason::not_heating);                     // a rise of 4 K
    EXPECT_EQ(refused(log_of(pot, 8, pot.minutes_to(60))), Reason::too_few_readings);   // two readings
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
    LogColumns weak; // with little loss it would take all day
    for (int i = 0; i <= 10; ++i) {
        weak.minutes.push_back(2.5 * i);
        weak.temperatures.push_back(20 + 0.45 * 2.5 * i);
    }
    EXPECT_EQ(refused(weak), Reason::forecast_never_boils);
}

TEST(BoilForecast, WantsARiseOfFiveKelvins) {
    LogColumns log;
    for (int i = 0; i <= 10; ++i) {
        log.minutes.push_back(i);
        log.temperatures.push_back(20 + 0.5 * i);
    }
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {boiling_point})), Reason::forecast_never_boils);
    log.temperatures.back() -= 0.01;
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {boiling_point})), Reason::not_heating);
}

TEST(BoilForecast, ReachesAsFarBeyondTheLastReadingAsTheReadingsThemselves) {
    // 60 + 2 t to minute 10: ten minutes more lead to 100 °C, a little later over a fire that loses heat.
    LogColumns log;
    for (int i = 0; i <= 40; ++i) {
        log.minutes.push_back(i * 0.25);
        log.temperatures.push_back(60 + 2 * i * 0.25);
    }
    auto const [minutes, uncertainty] = forecast_of(call_log("BOILFORECAST", log, {98.0}));
    EXPECT_NEAR(minutes, 18.75, uncertainty);
    EXPECT_EQ(reason_of(call_log("BOILFORECAST", log, {100.6})), Reason::forecast_too_far);
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
