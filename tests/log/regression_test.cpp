#include "logs.hpp"

#include "functions/kernels/log/line.hpp"
#include "support/norris.hpp"

namespace hearthcell::tests {

using kernels::Reading;
using namespace norris;

TEST(HeatingRate, FitsTheNorrisSetOfNistToItsCertifiedDigits) {
    std::vector<Reading> readings;
    for (auto const& [y, x] : points)
        readings.push_back({x, y, 0});
    kernels::Line const line = kernels::fit_line(readings);
    EXPECT_NEAR(line.slope, slope, 1e-14 * 5);
    EXPECT_NEAR(line.temperature - line.slope * line.minute, intercept, 1e-12);
    EXPECT_NEAR(line.scatter, residual_deviation, 1e-12);
    EXPECT_NEAR(line.slope_uncertainty, slope_deviation, 1e-15);
}

TEST(HeatingRate, FitsTheNorrisSetThroughTheFunctionItself) {
    // A log runs forwards: sorted by x. The two readings at 0.3 are parted by 1e-9 min, which moves the slope by less
    // than 1e-12; y is divided by ten to fit into the range of a thermometer.
    std::vector<Reading> readings;
    for (auto const& [y, x] : points)
        readings.push_back({x, y / 10, 0});
    std::ranges::sort(readings, {}, &Reading::minute);
    LogColumns log;
    for (Reading const& reading : readings) {
        bool const again = !log.minutes.empty() && reading.minute == log.minutes.back();
        log.minutes.push_back(reading.minute + (again ? 1e-9 : 0));
        log.temperatures.push_back(reading.temperature);
    }
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log)), slope / 10, 1e-12);
}

TEST(HeatingRate, FitsAnIntercept) {
    // A line through the origin would have a slope of 3.71 here.
    LogColumns const log{{1, 2, 3, 4}, {4, 8, 11, 14}};
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log)), 3.3, 1e-14); // by hand: 16.5/5
}

TEST(HeatingRate, AgreesWithRsLmOnItsSetAnscombe) {
    // R's data set anscombe, x1 to x3 sorted; slopes by R 4.2 coef(lm(y ~ x)), 15 digits.
    Readings const x{4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14};
    EXPECT_NEAR(
        number_of(call_log("HEATINGRATE", {x, {4.26, 5.68, 7.24, 4.82, 6.95, 8.81, 8.04, 8.33, 10.84, 7.58, 9.96}})),
        0.500090909090909, 2e-15);
    EXPECT_NEAR(
        number_of(call_log("HEATINGRATE", {x, {3.10, 4.74, 6.13, 7.26, 8.14, 8.77, 9.14, 9.26, 9.13, 8.74, 8.10}})),
        0.500000000000000, 2e-15);
    EXPECT_NEAR(
        number_of(call_log("HEATINGRATE", {x, {5.39, 5.73, 6.08, 6.42, 6.77, 7.11, 7.46, 7.81, 8.15, 12.74, 8.84}})),
        0.499727272727273, 2e-15);
}

TEST(HeatingRate, KeepsItsDigitsWhereTimesShareALargePart) {
    // Exactly representable: T = 20 + i/1024 at 900000 + i/8 min. A sum of raw squares would lose eleven digits.
    LogColumns log;
    for (int i = 0; i < 1000; ++i) {
        log.minutes.push_back(900000 + i / 8.0);
        log.temperatures.push_back(20 + i / 1024.0);
    }
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log)), 8 / 1024.0, 1e-15);
}

TEST(HeatingRate, TakesTheReadingsOfItsStretchOnly) {
    LogColumns const log{{0, 1, 2, 3, 4, 5}, {90, 20, 23, 26, 29, 90}};
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log, {1.0, 4.0})), 3, 1e-14);
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log, {0.5, 4.9})), 3, 1e-14);
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log, {1.5, 3.5})), 3, 1e-14); // two readings
    EXPECT_EQ(reason_of(call_log("HEATINGRATE", log, {4.0, 1.0})), Reason::to_not_above_from);
    EXPECT_EQ(reason_of(call_log("HEATINGRATE", log, {2.0, 2.0})), Reason::to_not_above_from);
    EXPECT_EQ(reason_of(call_log("HEATINGRATE", log, {7.0})), Reason::too_few_readings);
    EXPECT_EQ(reason_of(call_log("HEATINGRATE", log, {1.1, 1.9})), Reason::too_few_readings);
}

TEST(HeatingRate, TakesALogFromItsStartOrToItsEndWhereOneMinuteIsLeftOut) {
    LogColumns const log{{0, 1, 2, 3, 4, 5}, {10, 14, 18, 26, 29, 32}};
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log, {Value(), 2.0})), 4, 1e-14);
    EXPECT_NEAR(number_of(call_log("HEATINGRATE", log, {3.0})), 3, 1e-14);
}

TEST(HeatingRate, ScattersFromThreeReadingsOn) {
    // Residuals 1/3, -2/3, 1/3 of one degree of freedom, by hand.
    std::vector<Reading> readings{{0, 0, 1}, {1, 0, 2}, {2, 2, 3}};
    kernels::Line const line = kernels::fit_line(readings);
    EXPECT_NEAR(line.scatter, std::sqrt(6) / 3, 1e-15);
    EXPECT_NEAR(line.slope_uncertainty, std::sqrt(6) / 3 / std::sqrt(2), 1e-15);
    readings.pop_back();
    EXPECT_EQ(kernels::fit_line(readings).scatter, 0);
}

} // namespace hearthcell::tests
