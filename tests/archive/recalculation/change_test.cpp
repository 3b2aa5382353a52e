// When a result is another one, and when it only looks like one.

#include "extension/archive/recalculation/tally.hpp"

#include <gtest/gtest.h>

namespace {

using namespace hearthcell::archive;

std::optional<ChangeKind> kind(double before, double after) {
    return kind_of_change(Stored{{}, before, false}, after);
}

TEST(Change, InTheLastDigitsIsOneOfItsOwnKind) {
    EXPECT_EQ(kind(31.8, 31.8), std::nullopt);
    EXPECT_EQ(kind(31.8, 31.8 * (1 + 5e-10)), ChangeKind::last_digits);
    EXPECT_EQ(kind(-31.8, -31.8 * (1 - 5e-10)), ChangeKind::last_digits);
    EXPECT_EQ(kind(31.8, 31.8 * (1 + 2e-9)), ChangeKind::number);
    EXPECT_EQ(kind(1e-20, 2e-20), ChangeKind::number) << "a probability may be that small";
}

TEST(Change, IsOfTheLastDigitsWhereTimesOfAClockCancel) {
    EXPECT_EQ(kind(0, 1e-14), ChangeKind::last_digits);
    EXPECT_EQ(kind(1e-14, 0), ChangeKind::last_digits);
    EXPECT_EQ(kind(0, 1e-12), ChangeKind::number);
}

TEST(Change, OfTheLastDigitsIsCountedApart) {
    Change change;
    change.kind = ChangeKind::last_digits;
    change.relative = 1e-12;
    Tally tally;
    tally.count(change);
    EXPECT_EQ(tally.last_digits, 1U);
    EXPECT_EQ(tally.changed(), 0U);
    EXPECT_TRUE(tally.functions.empty());
    Tally both;
    both.add(tally);
    both.add(tally);
    EXPECT_EQ(both.last_digits, 2U);
}

} // namespace
