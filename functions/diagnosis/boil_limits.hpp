#pragma once
// From where on a boil is remarked as odd. Common practice, no source.

namespace hearthcell::diagnosis::boil_limits {

inline constexpr double shortest = 2, longest = 180; // min
inline constexpr double far_level = 1.5;             // K from the boiling point, at which the readings settle
inline constexpr double near_level = 0.6;            // K from it, up to which nothing is remarked
inline constexpr double last_rise = 5;               // K of a heating that need not be told
inline constexpr double close = 1;                   // min between the readings about the boil: all is well known
inline constexpr double far_apart = 2, unsure = 0.5; // min: between the readings about the boil; its uncertainty

} // namespace hearthcell::diagnosis::boil_limits
