// Columns as sheets hand them over: rows and columns, gaps, headings, texts, whole columns, slips of the clock.

#include "logs.hpp"

namespace hearthcell::tests {
namespace {

struct Call {
    std::string_view function;
    std::vector<Value> more;
};
std::vector<Call> computing_calls() {
    return {{"TIMEAT", {80.0}},     {"BOILTIME", {95.0}},     {"HEATINGRATE", {}},
            {"HEATGAIN", {5000.0}}, {"BOILFORECAST", {95.0}}, {"HEATLOSS", {5000.0, 20.0}}};
}

/// A log that the function can answer.
LogColumns log_for(std::string_view function) {
    Pot const pot;
    if (function == "HEATLOSS")
        return {{0, 5, 10, 15}, {90, 85, 81, 77}};
    return log_of(pot, 0.5, function == "BOILFORECAST" ? 17 : 30, 95);
}

Outcome called(Call const& call_to_make, Value times, Value temperatures) {
    std::vector<Value> values{std::move(times), std::move(temperatures)};
    values.insert(values.end(), call_to_make.more.begin(), call_to_make.more.end());
    return call(*find_function(call_to_make.function), values);
}

/// A number, or the first of a block.
double first_number(Outcome const& outcome) {
    Block const* block = std::get_if<Block>(&outcome);
    return block != nullptr ? block->numbers[0] : number_of(outcome);
}

} // namespace

TEST(LogColumns, StandInRowsAsInColumns) {
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        double const expected = first_number(called(one, column(log.minutes), column(log.temperatures)));
        EXPECT_EQ(first_number(called(one, row(log.minutes), row(log.temperatures))), expected) << one.function;
        EXPECT_EQ(first_number(called(one, row(log.minutes), column(log.temperatures))), expected) << one.function;
        EXPECT_EQ(reason_of(called(one, Block{2, 2, {1, 2, 3, 4}, {}}, column(log.temperatures))),
                  Reason::block_for_column);
    }
}

TEST(LogColumns, MayHoldGapsAndBlanksAnywhere) {
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        LogColumns spaced;
        for (std::size_t i = 0; i < log.minutes.size(); ++i) {
            spaced.minutes.insert(spaced.minutes.end(), {nothing, log.minutes[i], log.minutes[i] + 0.1, nothing});
            spaced.temperatures.insert(spaced.temperatures.end(), {nothing, log.temperatures[i], nothing, 61});
        }
        EXPECT_EQ(first_number(called(one, column(spaced.minutes), column(spaced.temperatures))),
                  first_number(called(one, column(log.minutes), column(log.temperatures))))
            << one.function;
    }
}

TEST(LogColumns, MayStandUnderAHeadingInAWholeColumn) {
    constexpr std::size_t rows_of_a_sheet = 1048576;
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        Block times{rows_of_a_sheet, 1, Readings(rows_of_a_sheet, nothing), {{1, "time"}, {2, "min"}}};
        Block temperatures{rows_of_a_sheet, 1, Readings(rows_of_a_sheet, nothing), {{1, "water"}, {2, "°C"}}};
        for (std::size_t place : {1U, 2U})
            times.numbers[place] = temperatures.numbers[place] = text_in_block;
        std::ranges::copy(log.minutes, times.numbers.begin() + 3);
        std::ranges::copy(log.temperatures, temperatures.numbers.begin() + 3);
        EXPECT_EQ(first_number(called(one, times, temperatures)),
                  first_number(called(one, column(log.minutes), column(log.temperatures))))
            << one.function;
    }
}

TEST(LogColumns, RefuseATextBelowTheFirstNumberAndATextAlone) {
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        Block temperatures = column(log.temperatures);
        temperatures.numbers[2] = text_in_block;
        temperatures.texts = {{2, "---"}};
        Outcome const outcome = called(one, column(log.minutes), temperatures);
        EXPECT_EQ(reason_of(outcome), Reason::text_for_number) << one.function;
        EXPECT_EQ(row_of(outcome), 3U);
        EXPECT_EQ(reason_of(called(one, std::string("abc"), column(log.temperatures))), Reason::text_for_number);
    }
}

TEST(LogColumns, AreRefusedWithTheRowWhereTheClockSlips) {
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        Outcome outcome;
        for (std::size_t place : {std::size_t(1), std::size_t(3), log.minutes.size() - 1}) {
            Readings repeated = log.minutes;
            repeated[place] = repeated[place - 1];
            outcome = called(one, column(repeated), column(log.temperatures));
            EXPECT_EQ(reason_of(outcome), Reason::time_repeated) << one.function;
            EXPECT_EQ(row_of(outcome), place + 1);
        }
        Readings backwards = log.minutes;
        backwards[3] = backwards[1];
        outcome = called(one, column(backwards), column(log.temperatures));
        EXPECT_EQ(reason_of(outcome), Reason::time_backwards) << one.function;
        EXPECT_EQ(row_of(outcome), 4U);
    }
}

TEST(LogColumns, AreRefusedWhereTheyCannotBeALog) {
    for (Call const& one : computing_calls()) {
        LogColumns const log = log_for(one.function);
        Readings days = log.minutes, shorter = log.minutes, hot = log.temperatures;
        for (double& minute : days)
            minute = 45000.4 + minute / 1440;
        shorter.pop_back();
        hot[1] = 211; // °F
        EXPECT_EQ(reason_of(called(one, column(days), column(log.temperatures))), Reason::log_within_a_minute);
        EXPECT_EQ(reason_of(called(one, column(shorter), column(log.temperatures))), Reason::log_columns_differ);
        EXPECT_EQ(reason_of(called(one, column(log.minutes), column(hot))), Reason::out_of_range);
        EXPECT_EQ(row_of(called(one, column(log.minutes), column(hot))), 2U);
        EXPECT_EQ(reason_of(called(one, 1.0, 20.0)), Reason::too_few_readings);
        EXPECT_EQ(reason_of(called(one, column({nothing, nothing}), column({20, 30}))), Reason::too_few_readings);
    }
}

TEST(LogColumns, AreALogFromAMinuteOn) {
    EXPECT_EQ(number_of(call_log("HEATINGRATE", {{5, 6}, {20, 23}})), 3);
    EXPECT_EQ(reason_of(call_log("HEATINGRATE", {{5, 5.99}, {20, 23}})), Reason::log_within_a_minute);
}

TEST(LogColumns, AreAnsweredOrRefusedWhateverTheyHold) {
    Random random(2718);
    int answered = 0;
    for (int i = 0; i < 5000; ++i) {
        LogColumns log;
        double minute = 0, temperature = random.uniform(5, 95);
        for (std::size_t left = 1 + random.below(40); left > 0; --left) {
            minute += random.below(3) == 0 ? random.uniform(0, 0.05) : random.uniform(0, 5);
            temperature += random.uniform(-3, 6);
            log.minutes.push_back(random.below(30) == 0 ? nothing : minute);
            log.temperatures.push_back(random.below(20) == 0 ? random.uniform(-9, 119)
                                                             : std::min(temperature, random.uniform(93, 97)));
        }
        for (Call const& one : computing_calls()) {
            Outcome const outcome = called(one, column(log.minutes), column(log.temperatures));
            if (Block const* block = std::get_if<Block>(&outcome)) {
                EXPECT_GT(block->numbers[1], 0);
            } else if (double const* number = std::get_if<double>(&outcome)) {
                bool const is_time = one.function == "TIMEAT" || one.function == "BOILTIME";
                EXPECT_TRUE(!is_time || (*number >= 0 && *number <= minute)) << one.function << " " << *number;
                EXPECT_EQ(*number, *number);
            }
            answered += reason_of(outcome) == Reason::none ? 1 : 0;
            EXPECT_FALSE(explained(one.function, log, one.more).empty());
        }
        Reason const why = reason_of(call_log("LOGCHECK", log));
        EXPECT_TRUE(why == Reason::none || why == Reason::no_rows) << int(why);
    }
    EXPECT_GT(answered, 5000);
}

} // namespace hearthcell::tests
