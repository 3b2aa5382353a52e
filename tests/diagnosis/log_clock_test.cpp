// The limits of what LOGCHECK finds about the clock of a log: just this side of each, and just beyond.

#include "findings.hpp"

namespace hearthcell::tests {
namespace {

/// A temperature that stays, so that nothing but the clock can be remarked.
LogColumns steady(Readings const& minutes) {
    return {minutes, Readings(minutes.size(), 50)};
}

/// Six readings so many minutes apart that rise by so many kelvin in all.
std::vector<Finding> slow(double step, double rise) {
    return check(
        {every(step, 6), {20, 20 + rise / 5, 20 + 2 * rise / 5, 20 + 3 * rise / 5, 20 + 4 * rise / 5, 20 + rise}});
}

/// What the clock alone is said to be in the row.
void expect_words(Readings const& minutes, std::string_view words) {
    EXPECT_EQ(listed(check(steady(minutes))), std::string(words) + "\n");
}

} // namespace

TEST(LogClock, TakesASlowHeatingForMinutesAndSecondsFromAQuarterOfAnHourAStepOn) {
    expect_only(slow(15, 20), "stored as hours and minutes: the log would last 1.25 min", 0);
    expect_nothing(slow(14.9, 20));
    expect_nothing(slow(15, 19.5));
    expect_nothing(slow(15, 22.5)); // 0.3 K/min, which a large pot on a small fire can do
}

TEST(LogClock, TakesAHeatingForPartsOfADayBeyond40KelvinsAMinute) {
    Readings const minutes{0, 0.5, 1, 1.5};
    expect_nothing(check({minutes, {20, 40, 60, 80}}));
    expect_only(check({minutes, {20, 40.5, 61, 81.5}}), "the log would last 36 min", 0);
}

TEST(LogClock, TakesALogOfLessThanAMinuteForPartsOfADay) {
    expect_nothing(check(steady({0, 1})));
    expect_only(check(steady({0, 0.99})), "parts of a day", 0);
    expect_only(check(steady({45000.5, 45000.9})), "parts of a day", 0);
}

TEST(LogClock, FindsAGapFromTwoAndAHalfUsualStepsOn) {
    Readings const minutes = every(1, 21);
    expect_nothing(check(steady(with(minutes, {22.5, 23.5, 24.5}))));
    expect_only(check(steady(with(minutes, {22.515, 23.5, 24.5}))), "No reading for", 22);
}

TEST(LogClock, FindsAGapFromAMinuteMoreThanTheUsualStepOn) {
    Readings const minutes = every(0.25, 21); // to 5
    expect_nothing(check(steady(with(minutes, {6.24, 6.5, 6.75}))));
    expect_only(check(steady(with(minutes, {6.25, 6.5, 6.75}))), "No reading for 1.25 min", 22);
}

TEST(LogClock, CallsAStepUsualThatNineInTenDoNotExceed) {
    // 100 steps of 1, eleven of 2, one of 2.75.
    Readings minutes = every(1, 101);
    for (int i = 0; i < 11; ++i)
        minutes.push_back(minutes.back() + 2);
    expect_only(check(steady(with(minutes, {124.75}))), "No reading for 2.75 min", 113);
}

TEST(LogClock, GoesByTheMiddleStep) {
    // 51 steps of 1 and 50 of 2, then one more: the middle one of all is of 1 min.
    Readings minutes = every(1, 52);
    for (int i = 0; i < 50; ++i)
        minutes.push_back(minutes.back() + 2);
    expect_only(check(steady(with(minutes, {157}))), "where one usually comes after 1 min", 103);
    // A last time must be meant to come within three steps.
    expect_words(with(minutes, {153, 147.5}), "104: The time runs backwards, from 153 to 147.5 min.");
}

TEST(LogClock, GuessesTheLastTimeWithinThreeSteps) {
    LogColumns log = heating();
    log.minutes[28] = 28 / 24.0;
    expect_only(check(log, known), "minutes and seconds stored as hours and minutes? 28 min would fit", 29);
    expect_only(check(steady(with(every(1, 11), {2.5}))), "did the minutes lose a digit? 12.5 min would fit", 12);
    expect_words(with(every(1, 11), {3}), "12: The time runs backwards, from 10 to 3 min.");
}

TEST(LogClock, GuessesNothingWhereNoTimeRunsForwards) {
    expect_words({5, 5, 0.25}, "2: The time 5 min is repeated.\n3: The time runs backwards, from 5 to 0.25 min.");
}

TEST(LogClock, FindsTheFirstTimeTooLate) {
    LogColumns log = heating();
    log.minutes[0] = 30; // 0:30
    expect_only(check(log, known),
                "The time 30 min stands before 1 min: minutes and seconds stored as hours and minutes? 0.5 min would "
                "fit.",
                1);
}

TEST(LogClock, FindsTheLastTimeButOneTooLate) {
    LogColumns log = heating();
    log.minutes[27] = 40;
    expect_only(check(log, known), "The time 40 min stands before 28 min.", 28);
}

TEST(LogClock, BlamesATimeThatTheNextButOneHasCaughtUpWithOnTheNext) {
    LogColumns log = heating();
    log.minutes[9] = 10.5;
    expect_only(check(log, known), "The time runs backwards, from 10.5 to 10 min.", 11);
}

TEST(LogClock, FindsEachDigitThatMinutesCanLose) {
    Readings const minutes = every(4, 16);
    for (double const lost : {10.0, 20.0, 30.0, 40.0, 50.0})
        for (std::size_t i = 0; i < minutes.size(); ++i) {
            LogColumns log = steady(minutes);
            for (double& minute : log.minutes)
                minute += 1.5;
            double const meant = log.minutes[i];
            if (meant - lost < 1 || meant - lost >= 10) // typed with one digit
                continue;
            log.minutes[i] -= lost;
            expect_only(check(log), "did the minutes lose a digit? " + std::to_string(int(meant)) + ".5 min would fit",
                        unsigned(i + 1));
        }
}

TEST(LogClock, GuessesNoTimeThatWouldRepeatANeighbour) {
    expect_words({0, 5, 10, 15, 20, 10, 25}, "6: The time runs backwards, from 20 to 10 min.");     // 20
    expect_words({0, 5, 10, 15, 20, 15, 25}, "6: The time runs backwards, from 20 to 15 min.");     // 25
    expect_words({0, 6, 12, 18, 24, 1, 30.5, 36}, "6: The time runs backwards, from 24 to 1 min."); // 1 × 24
    expect_words({4, 10, 16, 22, 1, 24, 30}, "5: The time runs backwards, from 22 to 1 min.");      // 1 × 24
}

TEST(LogClock, GuessesNoFurtherDaysInAColumnOfDays) {
    LogColumns log = heating();
    log.minutes[15] = 15.5 / 24;
    for (double& minute : log.minutes)
        minute /= 1440;
    std::vector<Finding> const findings = check(log, known);
    ASSERT_EQ(findings.size(), 2U) << listed(findings);
    EXPECT_EQ(findings[1].words, "The time runs backwards, from 14 to 0.65 min.");
}

TEST(LogClock, LooksFiveRowsAheadForATimeThatCatchesUp) {
    Readings const minutes = every(1, 21);
    std::vector<Finding> findings = check(steady(with(minutes, {10, 11, 12, 13, 14, 21, 22, 23})));
    EXPECT_EQ(findings[0].words, "The time runs backwards, from 20 to 10 min.") << listed(findings);
    EXPECT_EQ(findings.size(), 5U);
    findings = check(steady(with(minutes, {10, 11, 12, 13, 14, 15, 21, 22, 23})));
    EXPECT_EQ(findings[0].words, "The time runs backwards, from 20 to 10 min; does a second log start here?")
        << listed(findings);
}

TEST(LogClock, StartsASecondLogWhereItsTimesGoOn) {
    LogColumns log = heating();
    LogColumns second = heating();
    second.minutes[1] = 0;
    log.minutes.insert(log.minutes.end(), second.minutes.begin(), second.minutes.end());
    log.temperatures.insert(log.temperatures.end(), second.temperatures.begin(), second.temperatures.end());
    std::vector<Finding> const findings = check(log, known);
    ASSERT_GE(findings.size(), 2U);
    EXPECT_EQ(findings[0].row, 30U);
    EXPECT_EQ(findings[0].words, "The time runs backwards, from 28 to 0 min.");
    EXPECT_EQ(findings[1].row, 31U);
    EXPECT_EQ(findings[1].words, "The time runs backwards, from 28 to 0 min; does a second log start here?");
}

TEST(LogClock, RemarksNoGapThatSlipsExplain) {
    LogColumns log = heating();
    for (std::size_t i : {11U, 12U, 13U, 14U})
        log.minutes[i] = 6;
    std::vector<Finding> const findings = check(log, known);
    EXPECT_EQ(findings.size(), 4U) << listed(findings);
    for (Finding const& finding : findings)
        EXPECT_EQ(finding.words, "The time runs backwards, from 10 to 6 min.");
    expect_only(check(steady(with(every(1, 11), {20 / 24.0, 21, 22}))), "20 min would fit", 12);
}

TEST(LogClock, RemarksAGapRightAfterASlip) {
    LogColumns log = heating();
    log.minutes[15] = 15 / 24.0;
    for (Readings* readings : {&log.minutes, &log.temperatures})
        readings->erase(readings->begin() + 16, readings->begin() + 20);
    std::vector<Finding> const findings = check(log, known);
    ASSERT_EQ(findings.size(), 2U) << listed(findings);
    EXPECT_EQ(findings[0].row, 16U);
    EXPECT_NE(findings[0].words.find("15 min would fit"), std::string::npos);
    EXPECT_EQ(findings[1].row, 17U);
    EXPECT_NE(findings[1].words.find("No reading for 5 min"), std::string::npos);
}

} // namespace hearthcell::tests
