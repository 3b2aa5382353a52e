#include "manifest/workbook/formula.hpp"

namespace hearthcell::workbook {
namespace {

/// Reads what stands between two marks, of which a doubled one stands for itself. `at` is behind the first mark and
/// moves behind the last.
std::string read_quoted(std::string_view formula, std::size_t& at, char mark) {
    std::string content;
    for (; at < formula.size(); ++at) {
        if (formula[at] == mark && (++at == formula.size() || formula[at] != mark))
            break;
        content += formula[at];
    }
    return content;
}

std::string quoted(std::string_view content, char mark) {
    std::string text(1, mark);
    for (char const c : content)
        text.append(c == mark ? 2 : 1, c);
    return text + mark;
}

bool belongs_to_a_name(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' || (c & 0x80) != 0;
}

} // namespace

std::string rewritten(std::string_view formula, SheetNames const& sheets,
                      std::function<std::string(std::string_view)> const& translate) {
    std::string text;
    for (std::size_t at = 0; at < formula.size();) {
        char const c = formula[at];
        if (c == '"') {
            text += quoted(translate(read_quoted(formula, ++at, '"')), '"');
        } else if (c == '\'') {
            std::string const name = read_quoted(formula, ++at, '\'');
            auto const sheet = sheets.find(name);
            text += quoted(sheet == sheets.end() ? name : sheet->second, '\'');
        } else if (belongs_to_a_name(c)) {
            std::size_t const start = at;
            while (at < formula.size() && belongs_to_a_name(formula[at]))
                ++at;
            std::string const word(formula.substr(start, at - start));
            auto const sheet = sheets.find(word);
            bool const names_a_sheet = sheet != sheets.end() && at < formula.size() && formula[at] == '.';
            text += names_a_sheet ? quoted(sheet->second, '\'') : word;
        } else {
            text += c;
            ++at;
        }
    }
    return text;
}

} // namespace hearthcell::workbook
