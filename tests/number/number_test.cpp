// What the numbers of every kernel rest on: failures carried in a NaN, whole powers, the cube root.

#include "functions/number/powers.hpp"
#include "functions/number/reason.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace hearthcell::tests {
namespace {

std::uint64_t bits_of(double number) {
    return std::bit_cast<std::uint64_t>(number);
}

TEST(Failure, IsAQuietNanWithItsReasonAndArgumentInFixedBits) {
    // What a saved sheet's error and the LibreOffice side rest on: bits 32 to 39, 40 to 44, 45 to 50, and a free word.
    double const number = failure(Reason::text_for_number, 3);
    EXPECT_TRUE(std::isnan(number));
    EXPECT_EQ(bits_of(number), 0x7FFA'C302'0000'0000);
    EXPECT_EQ(failure_of(number).reason, Reason::text_for_number);
    EXPECT_EQ(failure_of(number).argument, 3U);
    EXPECT_EQ(failure_of(failure(Reason::absent)).argument, no_argument);
    EXPECT_TRUE(failed(number));
    EXPECT_FALSE(is_absent(number));
    EXPECT_TRUE(is_absent(absent));
    EXPECT_FALSE(failed(absent));
}

TEST(Failure, IsNoOtherNumber) {
    std::uint64_t const sound = bits_of(failure(Reason::internal));
    for (std::uint64_t const bits :
         {bits_of(0), bits_of(1e300), bits_of(std::numeric_limits<double>::infinity()),
          bits_of(std::numeric_limits<double>::quiet_NaN()), sound | 1, sound | std::uint64_t{1} << 63,
          sound + (std::uint64_t{1} << 32),  // a reason that there is not
          sound ^ std::uint64_t{1} << 45}) { // another signature
        EXPECT_EQ(failure_of(std::bit_cast<double>(bits)).reason, Reason::none) << bits;
        EXPECT_FALSE(failed(std::bit_cast<double>(bits)));
    }
}

TEST(Power, IsTheWholePower) {
    EXPECT_EQ(power<1>(3.0), 3);
    EXPECT_EQ(power<2>(3.0), 9);
    EXPECT_EQ(power<5>(3.0), 243);
    EXPECT_EQ(power<6>(3.0), 729);
    EXPECT_EQ(power<7>(-2.0), -128);
    EXPECT_EQ(power<31>(2.0), 0x1p31);
}

TEST(CubeRoot, IsTheNearestDouble) {
    // Against the C library with 64 bits of mantissa, whose own last bit is a thousandth of a double's.
    for (double x = 1e-6; x < 1e6; x *= 1.001) {
        double const root = cube_root(x), last_bit = std::nextafter(root, 1e9) - root;
        ASSERT_LE(std::abs(double(root - cbrtl(x))), 0.501 * last_bit) << x;
    }
}

} // namespace
} // namespace hearthcell::tests
