#include "functions/kernels/typed_time.hpp"

#include <gtest/gtest.h>

#include <cstdlib>
#include <locale>

namespace hearthcell::tests {
namespace {

struct Row {
    char const* text;
    double minutes;
};

void expect_minutes(std::initializer_list<Row> rows, Typed typed) {
    for (Row const& row : rows)
        EXPECT_DOUBLE_EQ(minutes_of(row.text, typed), row.minutes) << row.text;
}

void expect_reason(std::initializer_list<char const*> texts, Typed typed, Reason reason) {
    for (char const* text : texts)
        EXPECT_EQ(failure_of(minutes_of(text, typed)).reason, reason) << text;
}

TEST(TypedTime, ReadsEveryCommonWayToWriteIt) {
    expect_minutes({{"25:30", 25.5},
                    {"0:00", 0},
                    {"90:00", 90},
                    {"5:07", 5 + 7 / 60.0},
                    {"25:30,5", 25.5 + 0.5 / 60},
                    {"25:30.5", 25.5 + 0.5 / 60},
                    {"1:05:30", 65.5},
                    {"01:05:30.0", 65.5},
                    {"100:00:00", 6000},
                    {"17'06\"", 17.1},
                    {"17’06”", 17.1},
                    {"17′06″", 17.1},
                    {"17´06´´", 17.1},
                    {"17'06''", 17.1},
                    {"17'06", 17.1},
                    {"5'", 5},
                    {"5\"", 5 / 60.0},
                    {"17m06s", 17.1},
                    {"17m6s", 17.1},
                    {"17 min 6 s", 17.1},
                    {"17 min. 6 sec.", 17.1},
                    {"17\u00A0min 6\u202Fs", 17.1},
                    {"17 MIN 6 SEC", 17.1},
                    {"17 minutes 6 seconds", 17.1},
                    {"17m06", 17.1},
                    {"1 h 5 min", 65},
                    {"1 h 5 min 30 s", 65.5},
                    {"1h05", 65},
                    {"1H05", 65},
                    {"2 hours", 120},
                    {"1 hr 30 s", 60.5},
                    {"1.5 h", 90},
                    {"1,5h", 90},
                    {"90 s", 1.5},
                    {"90.6 s", 1.51},
                    {"17 min 6.6 s", 17.11},
                    {"25 min", 25},
                    {"25.5 min", 25.5},
                    {"25,5", 25.5},
                    {"25.5", 25.5},
                    {"0.25", 0.25}, // typed as a text it is no time of Calc
                    {"25", 25},
                    {"2 hr. 5 min.", 125},
                    {"123456789", 123456789},
                    {"123456789,123456789", 123456789.123456789},
                    {"  25:30\t", 25.5}},
                   Typed::as_it_stands);
}

TEST(TypedTime, RefusesWhatCanBeReadInSeveralWaysOrInNone) {
    expect_reason({"",
                   " ",
                   "1.05.30",
                   "1,234.5",
                   "1.234,5",
                   "25:3",
                   "8:5",
                   "1h5",
                   "17'6",
                   "1:05:3",
                   "1:5:30",
                   ":30",
                   "25:",
                   "1:05:",
                   "1:2:03:04",
                   "1.5:30",
                   "1.5 h 30 min",
                   "6 s 17 min",
                   "17 min 6 min",
                   "1h05:30",
                   "17'06\"5",
                   "-5:00",
                   "+5",
                   "25.",
                   ".5",
                   "25:30 PM",
                   "5 days",
                   "noon",
                   "min",
                   "25 30",
                   "1e3",
                   "0x10",
                   "inf",
                   "nan",
                   "12:30:15:00",
                   "12345678901",
                   "1 h 5 min 6 s 7",
                   "２５:30",
                   "25:30\n",
                   "25{30",
                   "5 h.",
                   "17 m. 6 s.",
                   "1234567890",
                   "1.1234567890",
                   "::30",
                   "1:h",
                   "1:05 30 15",
                   "1:05:30 15"},
                  Typed::as_it_stands, Reason::time_unclear);
}

TEST(TypedTime, RefusesMoreThan59BehindALargerUnit) {
    expect_reason({"1:75", "1:60", "1:60:00", "1:00:60", "17m60s", "17m75s", "1h60", "1h75", "1 h 90 min"},
                  Typed::as_it_stands, Reason::time_part_too_large);
}

TEST(TypedTime, TakesOneColonAsItWasTyped) {
    EXPECT_EQ(minutes_of("1:05", Typed::as_it_stands), 65 / 60.0);
    EXPECT_EQ(minutes_of("1:05", Typed::minutes_and_seconds), 65 / 60.0);
    EXPECT_EQ(minutes_of("1:05", Typed::hours_and_minutes), 65);
    EXPECT_EQ(minutes_of("25:30", Typed::hours_and_minutes), 1530);
    expect_reason({"1:05"}, Typed::minutes, Reason::time_unclear);
    EXPECT_EQ(minutes_of("25.5", Typed::minutes), 25.5);
    expect_reason({"25.5", "25"}, Typed::minutes_and_seconds, Reason::time_unclear); // 25.50 may be 25:50
    expect_reason({"25.5", "25"}, Typed::hours_and_minutes, Reason::time_unclear);
}

TEST(TypedTime, ReadsUnitsAlikeHoweverItWasTyped) {
    for (Typed typed : {Typed::as_it_stands, Typed::minutes_and_seconds, Typed::hours_and_minutes, Typed::minutes})
        expect_minutes({{"17 min 6 s", 17.1}, {"1:05:30", 65.5}, {"1h05", 65}, {"17'06\"", 17.1}}, typed);
}

TEST(TypedTime, DoesNotDependOnTheLocale) {
    // What a host application may have set. Where the German one is not installed, the classic one proves nothing, so
    // that the grouping and the decimal comma are set by hand for C++ streams, too.
    struct Comma : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
    };
    std::locale const before = std::locale::global(std::locale(std::locale::classic(), new Comma));
    std::string const c_before = std::setlocale(LC_ALL, nullptr);
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    expect_minutes({{"25,5", 25.5}, {"25.5", 25.5}, {"17 min 6.6 s", 17.11}}, Typed::as_it_stands);
    std::setlocale(LC_ALL, c_before.c_str());
    std::locale::global(before);
}

} // namespace
} // namespace hearthcell::tests
