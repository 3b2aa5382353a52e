#include "accuracy.hpp"

#include <cmath>

namespace hearthcell::tests {
namespace {

void expect_as_wanted(AccuracyRow const& row, Accuracy const& found) {
    std::printf("%-75s %6.3f %6.3f %5.1f %% %5.1f %%\n", row.log.data(), found.bias, found.rms, 100 * found.within,
                100 * found.answered);
    EXPECT_LE(std::abs(found.bias), row.wanted.bias) << row.log;
    EXPECT_LE(found.rms, row.wanted.rms) << row.log;
    EXPECT_GE(found.within, row.wanted.within) << row.log;
    EXPECT_GE(found.answered, row.wanted.answered) << row.log;
}

} // namespace

TEST(Accuracy, OfTheBoilTimeHoldsOnTheNotesOfEveryBench) {
    for (AccuracyRow const& row : boils())
        expect_as_wanted(row, accuracy_of_boils(row.bench));
}

TEST(Accuracy, OfTheForecastHoldsForAFireThatWanders) {
    for (AccuracyRow const& row : forecasts())
        expect_as_wanted(row, accuracy_of_forecasts(row.bench));
}

TEST(Accuracy, IsOfLogsThatAreTheSameInEveryRun) {
    Random one(7), other(7);
    SimulatedBoil const first = simulate({.wild = 0.1}, one), second = simulate({.wild = 0.1}, other);
    EXPECT_EQ(first.truth, second.truth);
    ASSERT_EQ(first.log.size(), second.log.size());
    for (std::size_t i = 0; i < first.log.size(); ++i)
        EXPECT_EQ(first.log[i].temperature, second.log[i].temperature);
}

} // namespace hearthcell::tests
