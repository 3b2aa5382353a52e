#pragma once
// From where on a boil is remarked as odd. Common practice, no source.

namespace hearthcell::diagnosis::boil_limits {

inline constexpr double shortest = 2, longest = 180; // min
inline constexpr double far_level = 1.5;             // K from the boiling point, at which the readings settle
inline constexpr double far_apart = 3;               // min between the readings about the boil

} // namespace hearthcell::diagnosis::boil_limits
