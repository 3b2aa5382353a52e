// The heating model and what it rests on, taken by themselves.

#include "functions/kernels/log/heating_model.hpp"

#include "functions/kernels/log/forecast.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace hearthcell::tests {
namespace {

using kernels::HeatingFit;
using kernels::Matrix3;
using kernels::Reading;

/// 41 readings of the model itself, half a minute apart from minute 3 on.
std::vector<Reading> log_of(double level, double rate, double decay) {
    std::vector<Reading> log;
    for (int i = 0; i <= 40; ++i) {
        double const u = i / 20.0 - 1;
        double const shape = decay == 0 ? u : (1 - std::exp(-decay * u)) / decay;
        log.push_back({3 + i / 2.0, level + rate * shape, unsigned(i + 1)});
    }
    return log;
}

} // namespace

TEST(HeatingModel, IsFoundWhereReadingsFollowIt) {
    for (double const decay : {-2.9, -1.0, -0.01, 0.0, 0.01, 0.7, 3.0, 5.9}) {
        HeatingFit const fit = kernels::fit_heating(log_of(60, 5, decay));
        EXPECT_TRUE(fit.sound) << decay;
        EXPECT_EQ(fit.middle, 13);
        EXPECT_EQ(fit.half, 10);
        EXPECT_NEAR(fit.level, 60, 1e-8) << decay;
        EXPECT_NEAR(fit.rate, 5, 1e-8) << decay;
        EXPECT_NEAR(fit.decay, decay, 1e-8);
    }
}

TEST(HeatingModel, IsNotSoundBeyondItsBounds) {
    for (double const decay : {-3.1, 6.1, 6.5})
        EXPECT_FALSE(kernels::fit_heating(log_of(60, 5, decay)).sound) << decay;
}

TEST(HeatingModel, HasNoCurveThroughReadingsThatStay) {
    HeatingFit const fit = kernels::fit_heating(log_of(60, 0, 0));
    EXPECT_FALSE(fit.sound);
    EXPECT_EQ(fit.level, 60);
    EXPECT_EQ(fit.neighbours, 0);
}

TEST(HeatingModel, TakesItsSlopeByTheDecayFromASeriesNearZero) {
    // Against the closed form with 64 bits of mantissa, on both sides of where the series takes over.
    for (double const u : {-1.0, -0.3, 0.5, 1.0})
        for (double decay = 1e-3; decay < 6; decay *= 1.07)
            for (double const signed_decay : {decay, -decay}) {
                long double const x = static_cast<long double>(signed_decay) * u;
                long double const exact = u * u * ((std::exp(-x) * (1 + x) - 1) / (x * x));
                bool const is_series = std::abs(signed_decay * u) < 0.02;
                EXPECT_NEAR(kernels::heating::shape_by_decay(u, signed_decay), double(exact),
                            (is_series ? 1e-13 : 1e-12) * std::max(1.0, std::abs(double(exact))))
                    << u << " " << signed_decay;
            }
    EXPECT_EQ(kernels::heating::shape_by_decay(0.5, 0), -0.125);
}

TEST(HeatingModel, InvertsAMatrix) {
    // The inverse of a Vandermonde product, in whole numbers; by hand.
    Matrix3 const given{{{3, 3, 5}, {3, 5, 9}, {5, 9, 17}}};
    Matrix3 inverse{};
    ASSERT_TRUE(kernels::heating::invert(given, inverse));
    Matrix3 const expected{{{1, -1.5, 0.5}, {-1.5, 6.5, -3}, {0.5, -3, 1.5}}};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            EXPECT_NEAR(inverse[i][j], expected[i][j], 1e-13) << i << j;
}

TEST(HeatingModel, CallsAMatrixSingularWhoseRestIsRounding) {
    Matrix3 inverse{};
    auto const inverts = [&](double rest) {
        return kernels::heating::invert({{{1, 1, 0}, {1, 1 + rest, 0}, {0, 0, 1}}}, inverse);
    };
    EXPECT_TRUE(inverts(1.005e-12));
    EXPECT_FALSE(inverts(0.995e-12));
    EXPECT_FALSE(kernels::heating::invert(Matrix3{}, inverse));
}

TEST(SpeedingUp, IsSaidWhereItIsLargerThanItsUncertaintyAndAFifth) {
    auto const speeds_up = [](double decay, double uncertainty) {
        HeatingFit fit{.decay = decay, .variance = 1};
        fit.inverse[2][2] = uncertainty * uncertainty;
        return kernels::speeds_up(fit);
    };
    EXPECT_TRUE(speeds_up(-0.125, 0.04)); // three times 0.04 is 0.12
    EXPECT_FALSE(speeds_up(-0.125, 0.042));
    EXPECT_FALSE(speeds_up(-0.09375, 0.03125)); // just three times as much
    EXPECT_TRUE(speeds_up(-0.0935, 0.001));     // e^0.187 is 1.206
    EXPECT_FALSE(speeds_up(-0.09, 0.001));      // e^0.18 is 1.197
    EXPECT_FALSE(speeds_up(1, 0.001));
}

} // namespace hearthcell::tests
