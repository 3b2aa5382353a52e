#pragma once
// Texts and names between quotation marks, in which a doubled mark stands for one.

#include <string>
#include <string_view>

namespace hearthcell::formulas {

/// Past the quoted text that begins at a place with its mark; npos where nothing closes it.
inline std::size_t past_quotes(std::string_view formula, std::size_t at) {
    char const mark = formula[at];
    for (at = formula.find(mark, at + 1); at != std::string_view::npos; at = formula.find(mark, at + 2))
        if (at + 1 == formula.size() || formula[at + 1] != mark)
            return at + 1;
    return std::string_view::npos;
}

/// What stands between the marks; a text that does not begin with ' or " is given back as it is.
inline std::string unquoted(std::string_view text) {
    if (text.empty() || (text[0] != '\'' && text[0] != '"'))
        return std::string(text);
    std::string content;
    for (std::size_t at = 1; at < text.size(); ++at) {
        if (text[at] == text[0] && (++at == text.size() || text[at] != text[0]))
            break;
        content += text[at];
    }
    return content;
}

inline std::string quoted(std::string_view content, char mark) {
    std::string text(1, mark);
    for (char const c : content)
        text.append(c == mark ? 2 : 1, c);
    return text + mark;
}

} // namespace hearthcell::formulas
