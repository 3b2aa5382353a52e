#pragma once
// A duration as people write it, in minutes.

#include "functions/number/reason.hpp"

#include <string_view>

namespace hearthcell {

/// How a time was typed, in the order of STOVE.MINUTES' choices.
enum class Typed { as_it_stands, minutes_and_seconds, hours_and_minutes, minutes };

/// Minutes, or a failure: time_unclear where a text can be read in several ways or in none, time_part_too_large where
/// minutes or seconds that follow a larger unit go beyond 59.
///
/// Read alike however it was typed: h:mm:ss, and whatever carries its units (12'45", 12m45s, 12 min 45 s, 1 h 8 min,
/// 1h08). 31:40 is mm:ss unless it was typed as hours and minutes, and unclear as plain minutes. A plain number with
/// one decimal comma or point is minutes, and unclear as either of the two others.
double minutes_of(std::string_view text, Typed typed);

/// Whether a text is two numbers with a colon, so that how it was typed decides what it means.
bool has_one_colon(std::string_view text);

} // namespace hearthcell
