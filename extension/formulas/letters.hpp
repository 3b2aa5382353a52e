#pragma once
// Which bytes of a formula, in UTF-8, belong together, and how names are compared.

#include <string>
#include <string_view>

namespace hearthcell::formulas {

constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

constexpr bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// Part of a name, of an address or of a number that begins like one; blanks beyond ASCII must be ruled out before.
constexpr bool is_in_word(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '.' || c == '$' || c == '?' || c == '\\' ||
           (static_cast<unsigned char>(c) & 0x80U) != 0;
}

/// How many bytes at the beginning of a text are one blank: ' ', tab, end of line, and the spaces of Unicode that get
/// into formulas when they are pasted. 0: it begins with something else.
std::size_t blank_at(std::string_view text);

/// The bytes of the first letter of a text that is not empty.
std::size_t size_of_letter(std::string_view text);

/// The longest word that begins at a place: a name, an address, several of them with dots between; or nothing.
std::string_view word_at(std::string_view formula, std::size_t at);

/// Whether a bracket follows, perhaps after blanks: then what stands before it is a function's name.
bool is_before_bracket(std::string_view formula, std::size_t end);

/// In lower case as far as ASCII goes, which is how names of functions, sheets and cells are compared.
std::string folded(std::string_view name);
bool is_same_name(std::string_view one, std::string_view other);

} // namespace hearthcell::formulas
