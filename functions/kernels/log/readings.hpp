#pragma once
// The readings of a log: times in min and temperatures in °C from two columns, as the computing functions take them.
// A row in which only one of the two is filled in is no reading; STOVE.LOGCHECK remarks it. Texts above the first
// number (a heading) are none either. Time and memory go with the rows and the readings, so that whole columns of a
// sheet do.

#include "functions/contract/values.hpp"

#include <algorithm>
#include <limits>
#include <span>

namespace hearthcell::kernels {

struct Reading {
    double minute = 0, temperature = 0;
    unsigned row = 0; ///< of the columns, counted from 1
};
using Log = std::span<Reading const>;

/// A log whose times run forwards; or why it is none.
struct Readings {
    std::vector<Reading> log;
    Failure failure;
};

/// Whether a place of a column holds a number: neither empty nor the text of a heading.
inline bool is_number(double reading) {
    return reading == reading; // NaN is not
}

inline Failure check_times(Log log) {
    for (std::size_t i = 1; i < log.size(); ++i) {
        if (log[i].minute == log[i - 1].minute)
            return {Reason::time_repeated, no_argument, log[i].row};
        if (log[i].minute < log[i - 1].minute)
            return {Reason::time_backwards, no_argument, log[i].row};
    }
    // No log of a pot is that short, while hours of a Calc time, a part of a day, are.
    return {log.back().minute - log.front().minute < 1 ? Reason::log_within_a_minute : Reason::none};
}

inline constexpr std::size_t usual_length = 256; // a whole column is mostly empty

inline Readings read_log(Block const& times, Block const& temperatures) {
    Readings result;
    if (times.numbers.size() != temperatures.numbers.size()) {
        result.failure = {Reason::log_columns_differ};
        return result;
    }
    result.log.reserve(std::min(times.numbers.size(), usual_length));
    auto const is_reading = [&](std::size_t i) {
        return is_number(times.numbers[i]) && is_number(temperatures.numbers[i]);
    };
    for (std::size_t i = 0; i < times.numbers.size(); ++i)
        if (is_reading(i))
            result.log.push_back({times.numbers[i], temperatures.numbers[i], unsigned(i + 1)});
    result.failure = result.log.size() < 2 ? Failure{Reason::too_few_readings} : check_times(result.log);
    return result;
}

/// The readings from one minute to another, both included.
inline Log between(Log log, double from, double to) {
    auto const first = std::ranges::lower_bound(log, from, {}, [](Reading const& reading) { return reading.minute; });
    auto const last = std::ranges::upper_bound(log, to, {}, [](Reading const& reading) { return reading.minute; });
    return first < last ? Log(first, last) : Log();
}

/// The middle one of three: a single wild reading never is.
inline double middle(double a, double b, double c) {
    return std::max(std::min(a, b), std::min(std::max(a, b), c));
}

/// The highest temperature that does not stand alone.
inline double highest(Log log) {
    if (log.size() < 3)
        return std::max(log.front().temperature, log.back().temperature);
    double result = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 2; i < log.size(); ++i)
        result = std::max(result, middle(log[i - 2].temperature, log[i - 1].temperature, log[i].temperature));
    // A log that still rises as it ends has its highest reading last, without a witness but the one before it.
    double const before = log[log.size() - 2].temperature;
    return std::max(result, std::min(log.back().temperature, before + (before - log[log.size() - 3].temperature)));
}

} // namespace hearthcell::kernels
