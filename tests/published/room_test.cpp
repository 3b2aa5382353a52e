// A room that fills: against the differential equation itself, and against the balance of what went in and out.

#include "reference.hpp"

#include "support/calls.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

PublishedTable const rooms{
    {"ROOMCONCENTRATION", {500, 30, 15, 45, omitted, omitted, "in the long run"}, {66.667, half(1e-3)}, "By hand"},
    {"ROOMCONCENTRATION", {500, 30, 15, 45}, {66.66579951, half(1e-8)}, "scipy.integrate.solve_ivp, DOP853"},
    {"ROOMCONCENTRATION", {500, 30, 15, 45, 0, 1, "mean"}, {60.74081782, half(1e-8)}, "scipy.integrate, as above"},
    {"ROOMCONCENTRATION", {40, 30, 0.05, 10}, {13.27793178, half(1e-8)}, "scipy.integrate, hardly any draught"},
    {"ROOMCONCENTRATION",
     {500, 30, 1e-300, 45, omitted, omitted, "in the long run"},
     {Error::number},
     "No air holds it"},
    {"ROOMCONCENTRATION", {320, 24, 0, 30, 3}, {403, 1e-12}, "3 + 320 × 30/24, by hand"},
    {"ROOMCONCENTRATION", {320, 24, 0, 30, 3, 1, "mean"}, {203, 1e-12}, "3 + 320 × 30/24/2, by hand"},
    {"ROOMCONCENTRATION", {320, 24, 0, 30, 3, 1, "in the long run"}, {Error::not_available}, "It rises on and on"},
};

TEST(Room, FillsAsByHandAndAsIntegrated) {
    rooms.check();
}

double concentration(double changes, double minutes, char const* part) {
    return number("ROOMCONCENTRATION", {8.4, 27, changes, minutes, 1.3, omitted, part});
}

TEST(Room, MeetsTheSolvedEquationFromNoDraughtToAGale) {
    for (Point const& point : reference("room at the end", 100))
        EXPECT_NEAR(concentration(point.input, 40, "at the end"), point.value, 1e-9 * point.value) << point.input;
    for (Point const& point : reference("mean of a room", 100))
        EXPECT_NEAR(concentration(point.input, 40, "mean"), point.value, 1e-9 * point.value) << point.input;
}

TEST(Room, LosesNothingOfWhatIsEmitted) {
    // What went in is still there or was carried off: G t = V (end - background) + q t (mean - background).
    for (double changes = 1e-7; changes < 200; changes *= 1.3)
        for (double const minutes : {0.5, 12.0, 1440.0}) {
            double const there = 27 * (concentration(changes, minutes, "at the end") - 1.3);
            double const gone = changes / 60 * 27 * minutes * (concentration(changes, minutes, "mean") - 1.3);
            EXPECT_NEAR(there + gone, 8.4 * minutes, 1e-11 * 8.4 * minutes) << changes << " 1/h, " << minutes << " min";
        }
}

TEST(Room, SettlesInTheLongRun) {
    EXPECT_NEAR(concentration(15, 1440, "at the end"), concentration(15, 1440, "in the long run"), 1e-12);
    EXPECT_NEAR(number("ROOMCONCENTRATION", {8.4, 27, 15, 60, 1.3, 0.25}) - 1.3,
                0.25 * (concentration(15, 60, "at the end") - 1.3), 1e-14);
}

} // namespace
} // namespace hearthcell::tests
