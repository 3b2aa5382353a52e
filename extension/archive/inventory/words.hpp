#pragma once
// Words on sheets: which can be labels, and which are the same.

#include <string>
#include <string_view>

namespace hearthcell::archive {

/// The same for words that differ only in case, accents, colons and blanks. Empty where nothing is left.
std::string word_key(std::string_view text);

/// Whether it reads as a number: 12.5, 12,5, 1 200.
bool reads_as_number(std::string_view text);

/// Whether it reads as a number, time or date: such a text names nothing.
bool reads_as_entry(std::string_view text);

} // namespace hearthcell::archive
