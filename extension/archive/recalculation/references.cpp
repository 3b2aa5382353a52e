#include "extension/archive/recalculation/references.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <optional>

namespace hearthcell::archive {
namespace {

constexpr int last_row = (1 << 20) - 1, last_column = (1 << 14) - 1;

struct Corner {
    std::optional<int> row, column;
};

/// "B7", "B" or "7"; dollar signs are gone.
std::optional<Corner> corner(std::string_view text) {
    int letters = 0;
    std::size_t at = 0;
    for (; at < text.size() && at < 3 && std::isalpha(static_cast<unsigned char>(text[at])) != 0; ++at)
        letters = letters * 26 + (std::toupper(static_cast<unsigned char>(text[at])) - 'A' + 1);
    Corner found;
    if (at > 0)
        found.column = letters - 1;
    if (at < text.size()) {
        int number = 0;
        auto const [end, problem] = std::from_chars(text.data() + at, text.data() + text.size(), number);
        if (problem != std::errc() || end != text.data() + text.size() || number < 1)
            return std::nullopt;
        found.row = number - 1;
    }
    return found.row || found.column ? std::optional(found) : std::nullopt;
}

bool in_word(char letter) {
    return std::isalnum(static_cast<unsigned char>(letter)) != 0 || letter == '_' || letter == '.' || letter == '$' ||
           letter < 0;
}

/// A word of the formula, with the sheet that stood before its last dot.
struct Word {
    std::string sheet, name;
    bool call = false;
};

class Scanner {
public:
    explicit Scanner(std::string_view text) : text_(text) {}

    /// The next word or colon; false at the end. Texts in double quotes are passed over.
    bool next(Word& word, bool& after_colon) {
        after_colon = false;
        for (; at_ < text_.size(); ++at_) {
            char const letter = text_[at_];
            if (letter == '"')
                at_ = std::min(text_.find('"', at_ + 1), text_.size() - 1);
            else if (letter == ':')
                after_colon = true;
            else if (letter == '\'' || in_word(letter))
                break;
            else
                after_colon = false;
        }
        if (at_ >= text_.size())
            return false;
        word = {};
        if (text_[at_] == '\'')
            word.sheet = quoted();
        std::string plain;
        while (at_ < text_.size() && in_word(text_[at_]))
            plain += text_[at_++];
        std::erase(plain, '$');
        auto const dot = plain.rfind('.');
        if (dot != std::string::npos && word.sheet.empty())
            word.sheet = plain.substr(0, dot);
        word.name = plain.substr(dot == std::string::npos ? 0 : dot + 1);
        word.call = at_ < text_.size() && text_[at_] == '(';
        return true;
    }

private:
    std::string quoted() {
        std::string name;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] == '\'' && !(at_ + 1 < text_.size() && text_[at_ + 1] == '\'')) {
                ++at_;
                return name;
            }
            if (text_[at_] == '\'')
                ++at_;
            name += text_[at_];
        }
        return name;
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

Range between(Corner const& a, Corner const& b, int sheet) {
    return {
        {sheet, std::min(a.row.value_or(0), b.row.value_or(0)), std::min(a.column.value_or(0), b.column.value_or(0))},
        {sheet, std::max(a.row.value_or(last_row), b.row.value_or(last_row)),
         std::max(a.column.value_or(last_column), b.column.value_or(last_column))}};
}

} // namespace

std::string upper(std::string text) {
    for (char& letter : text)
        letter = static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    return text;
}

bool read_range(std::string_view text, int sheet, Range& range) {
    auto const colon = text.find(':');
    auto const first = corner(text.substr(0, colon));
    auto const last = colon == std::string_view::npos ? first : corner(text.substr(colon + 1));
    if (!first || !last)
        return false;
    range = between(*first, *last, sheet);
    return true;
}

std::vector<Range> references(std::string_view formula, int own_sheet, Scope const& scope) {
    std::vector<Range> found;
    Scanner scanner(formula);
    Word word;
    bool after_colon = false;
    std::optional<Corner> before; // the corner that a colon may join
    int sheet = own_sheet;
    while (scanner.next(word, after_colon)) {
        if (word.call) {
            before.reset();
            continue;
        }
        auto const named = scope.names.find(upper(word.name));
        if (word.sheet.empty() && named != scope.names.end()) {
            found.push_back(named->second);
            before.reset();
            continue;
        }
        auto const here = corner(word.name);
        if (after_colon && before && here) {
            if (before->row && before->column)
                found.pop_back();
            found.push_back(between(*before, *here, sheet));
            before.reset();
            continue;
        }
        auto const in_book = std::find(scope.sheets.begin(), scope.sheets.end(), word.sheet);
        sheet = in_book == scope.sheets.end() ? own_sheet : static_cast<int>(in_book - scope.sheets.begin());
        before = here;
        if (here && here->row && here->column)
            found.push_back(between(*here, *here, sheet));
    }
    return found;
}

} // namespace hearthcell::archive
