#pragma once
// Texts and names between quotation marks, in which a doubled mark stands for one.

#include <string>
#include <string_view>

namespace hearthcell::formulas {

/// Past the quoted text that begins at a place with its mark; npos where nothing closes it.
std::size_t past_quotes(std::string_view formula, std::size_t at);

/// What stands between the marks; a text that does not begin with ' or " is given back as it is.
std::string unquoted(std::string_view text);

std::string quoted(std::string_view content, char mark);

} // namespace hearthcell::formulas
