// Households, and readings that check points correct: against NIST's certified line, numpy, and by hand.

#include "support/calls.hpp"
#include "support/norris.hpp"
#include "support/published_table.hpp"

#include <gtest/gtest.h>

#include <array>

namespace hearthcell::tests {
namespace {

constexpr std::string_view factors = "FAO guidelines for woodfuel surveys, from memory: 0.5, 0.8, 1, 0.8";
PublishedTable const adults{
    {"STANDARDADULTS", {1, 0, 0, 0}, {0.5, 1e-15}, factors},
    {"STANDARDADULTS", {0, 1, 0, 0}, {0.8, 1e-15}, factors},
    {"STANDARDADULTS", {0, 0, 1, 0}, {1, 0}, factors},
    {"STANDARDADULTS", {0, 0, 0, 1}, {0.8, 1e-15}, factors},
    {"STANDARDADULTS", {4, 2, 2, 0}, {5.6, 1e-14}, "By hand"},
    {"STANDARDADULTS", {0, 0, 0, 0}, {Error::number}, "Nobody"},
};

TEST(StandardAdults, CountEachByAgeAndSex) {
    adults.check();
}

PublishedTable const fuel_of_households{
    {"FUELPERSTANDARDADULT", {30000, 3, 5}, {2000, 1e-12}, "By hand"},
    {"FUELPERSTANDARDADULT", {21400, 3, 4.9}, {1455.7823, half(1e-4)}, "By hand"},
    {"FUELPERSTANDARDADULT", {14000, 7, 4}, {500, 1e-12}, "By hand"},
    {"FUELPERSTANDARDADULT", {30000, 0, 5}, {Error::number}, "An empty cell"},
};

TEST(FuelPerStandardAdult, IsFuelByDaysAndAdults) {
    fuel_of_households.check();
}

constexpr std::array ice_and_steam{0.4, 94.9}, their_truth{0.0, 93.7};
constexpr std::array weights_read{0.0, 502.0, 1003.0, 2006.0}, weights{0.0, 500.0, 1000.0, 2000.0};
constexpr std::array read_twice{500.0, 502.0}, one_weight{500.0, 500.0}, two_weights{500.0, 1000.0};
constexpr std::array read_alike{500.0, 500.0}, mixed_up{1000.0, 500.0};
constexpr std::array three{1.0, 2.0, 3.0};
constexpr std::array gap{0.4, blank, 94.9}, gap_of_truth{0.0, 21.6, 93.7};
constexpr std::array nothing{blank, blank};
PublishedTable const corrected{
    {"CORRECTEDREADING", {94.2, 93.0, 93.6}, {94.8, 1e-12}, "0.6 K low in boiling water, by hand"},
    {"CORRECTEDREADING", {47.65, ice_and_steam, their_truth}, {46.85, 1e-12}, "Halfway between two points, by hand"},
    {"CORRECTEDREADING", {1504, weights_read, weights}, {1499.43018, half(1e-5)}, "numpy.polyfit"},
    {"CORRECTEDREADING",
     {700, read_twice, one_weight},
     {699, 1e-12},
     "One weight, read twice: the mean offset, by hand"},
    {"CORRECTEDREADING", {47.65, gap, gap_of_truth}, {46.85, 1e-12}, "A point of which one half is missing is none"},
    {"CORRECTEDREADING", {46.85, gap_of_truth, gap}, {47.65, 1e-12}, "The other half, too"},
    {"CORRECTEDREADING", {0, three, three}, {0, 1e-12}, "An instrument that is right, by hand"},
    {"CORRECTEDREADING", {700, read_alike, two_weights}, {Error::number}, "Two truths, one reading"},
    {"CORRECTEDREADING", {700, mixed_up, two_weights}, {Error::number}, "The more there is, the less it reads"},
    {"CORRECTEDREADING", {10, three, three}, {Error::not_available}, "Three and a half spans beyond"},
    {"CORRECTEDREADING", {10, nothing, two_weights}, {Error::not_available}, "No check point"},
    {"CORRECTEDREADING", {10, three, two_weights}, {Error::value}, "Columns of two lengths"},
};

TEST(CorrectedReading, LiesOnTheLineOfTheCheckPoints) {
    corrected.check();
}

TEST(CorrectedReading, FitsTheNorrisSetOfNistToItsCertifiedDigits) {
    std::array<double, std::size(norris::points)> indicated{}, truth{};
    for (std::size_t i = 0; i < indicated.size(); ++i) {
        truth[i] = norris::points[i][0];
        indicated[i] = norris::points[i][1];
    }
    for (double const reading : {0.0, 0.5, 448.2, 999.0, 2000.0})
        EXPECT_NEAR(number("CORRECTEDREADING", {reading, indicated, truth}),
                    norris::intercept + norris::slope * reading, 2e-12 + 1e-13 * reading);
}

TEST(CorrectedReading, IsBelievedToThreeSpansBeyondTheCheckPoints) {
    EXPECT_NEAR(number("CORRECTEDREADING", {9, three, three}), 9, 1e-12);
    EXPECT_NEAR(number("CORRECTEDREADING", {-5, three, three}), -5, 1e-12);
    EXPECT_EQ(reason("CORRECTEDREADING", {9.1, three, three}), Reason::far_from_check_points);
    EXPECT_EQ(reason("CORRECTEDREADING", {-5.1, three, three}), Reason::far_from_check_points);
}

} // namespace
} // namespace hearthcell::tests
