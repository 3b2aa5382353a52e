#include "support/asking.hpp"

#include "functions/kernels/times/minutes.hpp"

#include <chrono>

namespace hearthcell::tests {
namespace {

double minutes_in(Value const& time) {
    return number(ask("MINUTES", {time}));
}
double minutes_in(Value const& time, std::string const& typed) {
    return number(ask("MINUTES", {time, typed}));
}
Reason reason_in(Value const& time) {
    return failure_in(ask("MINUTES", {time})).reason;
}
Reason reason_in(Value const& time, std::string const& typed) {
    return failure_in(ask("MINUTES", {time, typed})).reason;
}

/// As Calc stores it.
double calc_time(int hours, int minutes, int seconds) {
    return (hours * 3600.0 + minutes * 60 + seconds) / 86400;
}

TEST(Minutes, TakesNumbersBelowHalfADayAsTimesOfCalc) {
    EXPECT_EQ(minutes_in(0.0), 0);
    EXPECT_EQ(minutes_in(calc_time(0, 31, 40)), 31 + 40 / 60.0);
    EXPECT_EQ(minutes_in(calc_time(11, 59, 59)), 719 + 59 / 60.0);
}

TEST(Minutes, TakesEveryWholeSecondOfADayToTheLastBit) {
    for (int second = 0; second < 86400; ++second)
        ASSERT_EQ(minutes_in(second / 86400.0, "hh:mm"), second / 60.0) << second;
}

TEST(Minutes, TakesNumbersFromThreeOnAsMinutes) {
    EXPECT_EQ(minutes_in(3.0), 3);
    EXPECT_EQ(minutes_in(31.7), 31.7);
    EXPECT_EQ(minutes_in(14400.0), 14400);
}

TEST(Minutes, RefusesNumbersThatMayBeEither) {
    EXPECT_EQ(reason_in(0.5), Reason::time_of_either_kind);
    EXPECT_EQ(reason_in(calc_time(14, 30, 0)), Reason::time_of_either_kind);
    EXPECT_EQ(reason_in(calc_time(31, 40, 0)), Reason::time_of_either_kind); // 31:40 typed into a cell
    EXPECT_EQ(reason_in(2.999), Reason::time_of_either_kind);
}

TEST(Minutes, TakesNumbersAsTheyAreSaidToBeTyped) {
    EXPECT_EQ(minutes_in(calc_time(31, 40, 0), "mm:ss"), 31 + 40 / 60.0);
    EXPECT_EQ(minutes_in(calc_time(5, 7, 0), "mm:ss"), 5 + 7 / 60.0);
    EXPECT_EQ(minutes_in(calc_time(14, 30, 0), "hh:mm"), 870);
    EXPECT_EQ(minutes_in(calc_time(26, 30, 0), "HH:MM"), 1590);
    EXPECT_EQ(minutes_in(0.5, "minutes"), 0.5);
    EXPECT_EQ(minutes_in(1.325, "minutes"), 1.325);
    EXPECT_EQ(reason_in(1.0, "somehow"), Reason::unknown_name);
}

TEST(Minutes, RefusesMinutesAndSecondsThatHaveSecondsOfTheirOwn) {
    // 1:00:30 typed below 59:30 is stored as it is meant; read as mm:ss it would be a minute.
    EXPECT_EQ(reason_in(calc_time(1, 0, 30), "mm:ss"), Reason::not_minutes_and_seconds);
    for (int seconds = 0; seconds < 7200; ++seconds) // typed as mm:ss, stored as hh:mm
        ASSERT_EQ(minutes_in(calc_time(seconds / 60, seconds % 60, 0), "mm:ss"), seconds / 60.0) << seconds;
}

TEST(Minutes, RefusesNegativeAndEndlessTimes) {
    EXPECT_EQ(reason_in(-0.01), Reason::time_out_of_range);
    EXPECT_EQ(reason_in(-5.0), Reason::time_out_of_range);
    EXPECT_EQ(reason_in(14400.5), Reason::time_out_of_range);
    EXPECT_EQ(reason_in(45000.6), Reason::time_out_of_range); // a date with a time
    EXPECT_EQ(reason_in(45000.6, "hh:mm"), Reason::time_out_of_range);
    EXPECT_EQ(reason_in(std::string("300:00:00")), Reason::time_out_of_range);
}

TEST(Minutes, NamesTheTimeAsWhatIsWrong) {
    for (Failure const& why :
         {failure_in(ask("MINUTES", {0.5})), failure_in(ask("MINUTES", {-5.0})),
          failure_in(ask("MINUTES", {std::string("soon")})), failure_in(ask("MINUTES", {std::string("1:75")})),
          failure_in(ask("MINUTES", {std::string("1h75")})),
          failure_in(ask("MINUTES", {calc_time(1, 0, 30), std::string("mm:ss")}))})
        EXPECT_EQ(why.argument, 0U) << int(why.reason);
}

TEST(Minutes, TakesAMillionthOfASecondForRounding) {
    EXPECT_EQ(minutes_in((100 + 0.99e-6) / 86400), 100 / 60.0);
    EXPECT_EQ(minutes_in((100 - 0.99e-6) / 86400), 100 / 60.0);
    EXPECT_NE(minutes_in((100 + 1.005e-6) / 86400), 100 / 60.0);
}

TEST(Minutes, LetsTheLargestNumberOfAColumnDecideForAll) {
    Block const minutes = block(ask("MINUTES", {column({0.0, 0.25, 0.5, 1.0, 2.5, 30.0})}));
    EXPECT_EQ(minutes.numbers, (std::vector<double>{0, 0.25, 0.5, 1, 2.5, 30}));
    Block const days = block(ask("MINUTES", {column({0.0, calc_time(0, 0, 10), calc_time(0, 31, 40)})}));
    EXPECT_EQ(days.numbers, (std::vector<double>{0, 10 / 60.0, 31 + 40 / 60.0}));
    // mm:ss that Calc took as hh:mm all the way: each number but the zero is refused
    Block const either = block(ask("MINUTES", {column({0.0, calc_time(5, 0, 0), calc_time(31, 40, 0)})}));
    EXPECT_EQ(either.numbers[0], 0);
    EXPECT_EQ(failure_of(either.numbers[1]).reason, Reason::time_of_either_kind);
    EXPECT_EQ(failure_of(either.numbers[2]).reason, Reason::time_of_either_kind);
}

TEST(Minutes, KeepsShapeBlanksAndErrorsInTheirPlaces) {
    for (bool const upright : {true, false}) {
        std::vector<Value> const cells{
            std::string("0:00"), empty, std::string("soon"), calc_time(0, 1, 30), std::string("12'45\""), -1.0, empty};
        Block const result = block(ask("MINUTES", {upright ? column(cells) : row(cells)}));
        EXPECT_EQ(result.rows, upright ? 7U : 1U);
        EXPECT_EQ(result.columns, upright ? 1U : 7U);
        EXPECT_TRUE(result.texts.empty());
        EXPECT_EQ(result.numbers[0], 0);
        EXPECT_TRUE(is_absent(result.numbers[1]));
        EXPECT_EQ(failure_of(result.numbers[2]).reason, Reason::time_unclear);
        EXPECT_EQ(result.numbers[3], 1.5);
        EXPECT_EQ(result.numbers[4], 12.75);
        EXPECT_EQ(failure_of(result.numbers[5]).reason, Reason::time_out_of_range);
        EXPECT_TRUE(is_absent(result.numbers[6]));
    }
    EXPECT_EQ(failure_in(ask("MINUTES", {square({1.0, 2.0, 3.0, 4.0})})).reason, Reason::block_for_column);
}

TEST(Minutes, CutsTheBlankEndOfAWholeColumnOff) {
    std::vector<Value> cells{0.01, empty, 0.02};
    cells.resize(1048576);
    Block const result = block(ask("MINUTES", {column(cells)}));
    EXPECT_EQ(result.rows, 3 + most_blanks_at_the_end);
    EXPECT_EQ(result.columns, 1U);
    EXPECT_EQ(result.numbers.size(), result.rows);
    EXPECT_EQ(result.numbers[2], 28.8);
    Block const sideways = block(ask("MINUTES", {row(cells)}));
    EXPECT_EQ(sideways.columns, 3 + most_blanks_at_the_end);
    EXPECT_EQ(sideways.rows, 1U);
    EXPECT_EQ(block(ask("MINUTES", {column(std::vector<Value>(20000))})).rows, most_blanks_at_the_end);
    Block const two = block(ask("MINUTES", {row({5.0, 6.0})}));
    EXPECT_EQ(two.rows, 1U);
    EXPECT_EQ(two.columns, 2U);
}

TEST(Minutes, TakesAMillionRowsInLinearTime) {
    auto const seconds = [](std::size_t rows) {
        std::vector<Value> cells;
        for (std::size_t i = 0; i < rows; ++i)
            cells.push_back(i % 2 == 0 ? Value(std::string("12'45\"")) : Value(0.01));
        Value const all = column(cells);
        auto const start = std::chrono::steady_clock::now();
        EXPECT_EQ(block(ask("MINUTES", {all})).numbers.back(), 14.4);
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    double const tenth = seconds(100000), whole = seconds(1000000);
    EXPECT_LT(whole, 40 * tenth); // a squared time would be a hundredfold
    EXPECT_LT(whole, 5);
}

} // namespace
} // namespace hearthcell::tests
