#pragma once
// STOVE.MINUTES: times however they stand in cells, as minutes.

#include "functions/kernels/times/typed_time.hpp"
#include "functions/contract/values.hpp"

#include <span>

namespace hearthcell {

/// Nobody tends a stove for longer than ten days.
inline constexpr double longest_time = 14400;

/// What the plain numbers of a cell or of a column are. A cell does not tell whether its number is a time of Calc (a
/// part of a day) or minutes, and 31:48 typed as minutes and seconds is 31 h 48 min to Calc, which is 1.325 days.
enum class NumbersAre { parts_of_a_day, minutes, either };

/// The largest number decides for all: a test in parts of a day ends before noon's 0.5, one in minutes lasts longer
/// than 3; what lies between may be either, or minutes and seconds that Calc took as hours and minutes. Common
/// practice, no source.
inline constexpr double noon = 0.5, shortest_test = 3;
NumbersAre numbers_are(double largest);
double largest_of(Block const& times);

/// A number as minutes. Times of Calc come out to the whole second where they are within a millionth of one.
double minutes_of(double number, Typed typed, NumbersAre numbers);

/// One cell gives a number, a row or a column one of the same shape: blanks stay blank, and what cannot be read fails
/// in its own place. Only of the blanks at the end no more than this are given back: Calc takes minutes over a million
/// blank cells in a result, which a whole column would be.
inline constexpr std::size_t most_blanks_at_the_end = 10000;
Outcome minutes(std::span<Value const> given);

} // namespace hearthcell
