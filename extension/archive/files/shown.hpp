#pragma once
// How names and texts that come from elsewhere are shown: on a terminal, in reports.

#include <cstddef>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// The name of a file. What a terminal would obey, what nobody sees, what turns the direction of writing, and bytes
/// that are no UTF-8 become \x1b or \u202e, and a backslash becomes two: so that each name is shown as another one, on
/// one line.
std::string shown(std::string_view name);

/// A text, which keeps its lines, tabs and backslashes.
std::string harmless(std::string_view text);

inline constexpr std::size_t longest_line = 200, longest_detail = 1000;

/// A text as one line of at most so many letters; what is cut off is said.
std::string line_of(std::string_view text, std::size_t longest = longest_line);

} // namespace hearthcell::archive
