#include "extension/formulas/letters.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::formulas {
namespace {

constexpr std::array<std::string_view, 7> wide_blanks{"\u00A0", "\u2002", "\u2003", "\u2007",
                                                      "\u2009", "\u202F", "\u3000"}; // no-break, en, em, figure, thin …

constexpr char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::size_t blank_at(std::string_view text) {
    if (text.empty())
        return 0;
    if (text[0] == ' ' || text[0] == '\t' || text[0] == '\n' || text[0] == '\r')
        return 1;
    auto const wide = std::find_if(wide_blanks.begin(), wide_blanks.end(),
                                   [&](std::string_view blank) { return text.starts_with(blank); });
    return wide == wide_blanks.end() ? 0 : wide->size();
}

std::size_t size_of_letter(std::string_view text) {
    std::size_t size = 1;
    while (size < text.size() && (static_cast<unsigned char>(text[size]) & 0xC0U) == 0x80U)
        ++size;
    return size;
}

std::string_view word_at(std::string_view formula, std::size_t at) {
    std::size_t end = at;
    while (end < formula.size() && is_in_word(formula[end]) && blank_at(formula.substr(end)) == 0)
        ++end;
    return formula.substr(std::min(at, formula.size()), end - at);
}

bool is_before_bracket(std::string_view formula, std::size_t end) {
    while (std::size_t const blank = blank_at(formula.substr(end)))
        end += blank;
    return formula.substr(end).starts_with('(');
}

std::string folded(std::string_view name) {
    std::string result(name);
    std::transform(result.begin(), result.end(), result.begin(), lower);
    return result;
}

bool is_same_name(std::string_view one, std::string_view other) {
    return std::equal(one.begin(), one.end(), other.begin(), other.end(),
                      [](char a, char b) { return lower(a) == lower(b); });
}

} // namespace hearthcell::formulas
