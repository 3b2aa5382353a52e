#pragma once
// A function's own checks and kernel, put into sentences.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// As a cell shows it: "Fine: …", "Odd: …", or what is wrong and was probably meant.
std::string explain(Function const& function, std::span<Value const> arguments, Language language = Language::english);

/// What is odd about a call, without "Odd: "; empty where nothing is, or where the call fails.
std::string what_is_odd(Function const& function, std::span<Value const> arguments, Language language);

/// Of a row or column of results: how many failed, and why the first one did; "Fine." where none did.
std::string about_cells(Speaker const& say, Function const& function, std::span<Value const> arguments,
                        Block const& results);

} // namespace hearthcell
