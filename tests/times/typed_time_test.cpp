#include "functions/kernels/times/typed_time.hpp"

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
    expect_minutes({{"31:40", 31 + 40 / 60.0},
                    {"0:00", 0},
                    {"90:00", 90},
                    {"5:07", 5 + 7 / 60.0},
                    {"31:40,5", 31 + 40.5 / 60},
                    {"31:40.5", 31 + 40.5 / 60},
                    {"1:08:20", 68 + 20 / 60.0},
                    {"01:08:20.0", 68 + 20 / 60.0},
                    {"100:00:00", 6000},
                    {"12'45\"", 12.75},
                    {"12’45”", 12.75},
                    {"12′45″", 12.75},
                    {"12´45´´", 12.75},
                    {"12'45''", 12.75},
                    {"12'45", 12.75},
                    {"12'05\"", 12 + 5 / 60.0},
                    {"5'", 5},
                    {"5\"", 5 / 60.0},
                    {"12m45s", 12.75},
                    {"12m5s", 12 + 5 / 60.0},
                    {"12 min 45 s", 12.75},
                    {"12 min. 45 sec.", 12.75},
                    {"12\u00A0min 45\u202Fs", 12.75},
                    {"12 MIN 45 SEC", 12.75},
                    {"12 minutes 45 seconds", 12.75},
                    {"12m45", 12.75},
                    {"1 h 8 min", 68},
                    {"1 h 8 min 20 s", 68 + 20 / 60.0},
                    {"1h08", 68},
                    {"1H08", 68},
                    {"2 hours", 120},
                    {"1 hr 30 s", 60.5},
                    {"1.5 h", 90},
                    {"1,5h", 90},
                    {"90 s", 1.5},
                    {"90.6 s", 1.51},
                    {"12 min 45.6 s", 12.76},
                    {"31 min", 31},
                    {"31.7 min", 31.7},
                    {"31,7", 31.7},
                    {"31.7", 31.7},
                    {"0.25", 0.25}, // typed as a text it is no time of Calc
                    {"31", 31},
                    {"2 hr. 5 min.", 125},
                    {"123456789", 123456789},
                    {"123456789,123456789", 123456789.123456789},
                    {"  31:40\t", 31 + 40 / 60.0}},
                   Typed::as_it_stands);
}

TEST(TypedTime, RefusesWhatCanBeReadInSeveralWaysOrInNone) {
    expect_reason({"",
                   " ",
                   "1.08.20",
                   "1,234.5",
                   "1.234,5",
                   "31:4",
                   "8:5",
                   "1h5",
                   "12'4",
                   "1:08:2",
                   "1:5:30",
                   ":30",
                   "31:",
                   "1:08:",
                   "1:2:03:04",
                   "1.5:30",
                   "1.5 h 30 min",
                   "45 s 12 min",
                   "12 min 45 min",
                   "1h08:20",
                   "12'45\"5",
                   "-5:00",
                   "+5",
                   "31.",
                   ".5",
                   "31:40 PM",
                   "5 days",
                   "noon",
                   "min",
                   "31 40",
                   "1e3",
                   "0x10",
                   "inf",
                   "nan",
                   "12:30:15:00",
                   "12345678901",
                   "1 h 8 min 20 s 7",
                   "３１:40",
                   "31:40\n",
                   "31{40",
                   "5 h.",
                   "12 m. 45 s.",
                   "1234567890",
                   "1.1234567890",
                   "::30",
                   "1:h",
                   "1:08 20 15",
                   "1:08:20 15"},
                  Typed::as_it_stands, Reason::time_unclear);
}

TEST(TypedTime, RefusesMoreThan59BehindALargerUnit) {
    expect_reason({"1:75", "1:60", "1:60:00", "1:00:60", "12m60s", "12m75s", "1h60", "1h75", "1 h 90 min"},
                  Typed::as_it_stands, Reason::time_part_too_large);
}

TEST(TypedTime, TakesOneColonAsItWasTyped) {
    EXPECT_EQ(minutes_of("1:08", Typed::as_it_stands), 68 / 60.0);
    EXPECT_EQ(minutes_of("1:08", Typed::minutes_and_seconds), 68 / 60.0);
    EXPECT_EQ(minutes_of("1:08", Typed::hours_and_minutes), 68);
    EXPECT_EQ(minutes_of("31:40", Typed::hours_and_minutes), 1900);
    expect_reason({"1:08"}, Typed::minutes, Reason::time_unclear);
    EXPECT_EQ(minutes_of("31.7", Typed::minutes), 31.7);
    expect_reason({"31.4", "31"}, Typed::minutes_and_seconds, Reason::time_unclear); // 31.4 may be 31:40
    expect_reason({"31.4", "31"}, Typed::hours_and_minutes, Reason::time_unclear);
}

TEST(TypedTime, ReadsUnitsAlikeHoweverItWasTyped) {
    for (Typed typed : {Typed::as_it_stands, Typed::minutes_and_seconds, Typed::hours_and_minutes, Typed::minutes})
        expect_minutes({{"12 min 45 s", 12.75}, {"1:08:20", 68 + 20 / 60.0}, {"1h08", 68}, {"12'45\"", 12.75}}, typed);
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
    expect_minutes({{"31,7", 31.7}, {"31.7", 31.7}, {"12 min 45.6 s", 12.76}}, Typed::as_it_stands);
    std::setlocale(LC_ALL, c_before.c_str());
    std::locale::global(before);
}

} // namespace
} // namespace hearthcell::tests
