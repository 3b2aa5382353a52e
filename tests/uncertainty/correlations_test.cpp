#include "functions/uncertainty/correlations.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests {
namespace {

Block square(std::vector<double> const& numbers, std::size_t side) {
    return {side, side, numbers, {}};
}

TEST(Correlations, TakeHalfAMatrixForTheWhole) {
    Correlations const read =
        read_correlations(square({absent, 0.5, absent, absent, 1, -0.2, absent, absent, absent}, 3), 3);
    EXPECT_EQ(read.failure.reason, Reason::none);
    EXPECT_EQ(read.coefficients, (std::vector<double>{1, 0.5, 0, 0.5, 1, -0.2, 0, -0.2, 1}));
}

TEST(Correlations, SayWhichCoefficientIsWrong) {
    Correlations const self = read_correlations(square({1, 0, 0, 0.9}, 2), 2);
    EXPECT_EQ(self.failure.reason, Reason::correlation_with_itself);
    EXPECT_EQ(self.failure.row, 4U);
    Correlations const differ = read_correlations(square({1, 0.5, 0.4, 1}, 2), 2);
    EXPECT_EQ(differ.failure.reason, Reason::correlations_not_symmetric);
    EXPECT_EQ(differ.failure.row, 2U);
    EXPECT_EQ(read_correlations(square({1, 0, 0, 1}, 2), 3).failure.reason, Reason::correlations_not_square);
    EXPECT_EQ(read_correlations({2, 3, {1, 0, 0, 0, 1, 0}, {}}, 2).failure.reason, Reason::correlations_not_square);
    EXPECT_EQ(read_correlations({1, 4, {1, 0, 0, 1}, {}}, 2).failure.reason, Reason::correlations_not_square);
}

TEST(Correlations, DoNotMindTheLastDigits) {
    Correlations const read = read_correlations(square({1 - 1e-16, 0.1 + 0.2, 0.3, 1 + 2e-16}, 2), 2);
    EXPECT_EQ(read.failure.reason, Reason::none);
    EXPECT_EQ(read.coefficients[0], 1);
    EXPECT_EQ(read.coefficients[1], read.coefficients[2]);
    EXPECT_EQ(read.coefficients[3], 1);
    EXPECT_EQ(read_correlations(square({1, 0.3, 0.300001, 1}, 2), 2).failure.reason,
              Reason::correlations_not_symmetric);
}

TEST(Correlations, MustNotContradictOneAnother) {
    // Smallest eigenvalue of three equal coefficients r is 1 + 2 r for r < 0: the limit is -0.5.
    auto const equal = [](double r) { return std::vector<double>{1, r, r, r, 1, r, r, r, 1}; };
    EXPECT_TRUE(can_be_together(equal(-0.5), 3));
    EXPECT_TRUE(can_be_together(equal(-0.5004), 3)); // within the rounding of three digits
    EXPECT_FALSE(can_be_together(equal(-0.51), 3));
    EXPECT_TRUE(can_be_together(equal(1), 3));
    EXPECT_FALSE(can_be_together(std::vector<double>{1, 0.9, 0.9, 0.9, 1, -0.9, 0.9, -0.9, 1}, 3));
}

TEST(Correlations, AreTakenAsTheGuidePrintsThem) {
    // JCGM 100, H.2: rounded to two digits.
    EXPECT_TRUE(can_be_together(std::vector<double>{1, -0.36, 0.86, -0.36, 1, -0.65, 0.86, -0.65, 1}, 3));
}

} // namespace
} // namespace hearthcell::tests
