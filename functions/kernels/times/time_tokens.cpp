#include "functions/kernels/times/time_tokens.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>

namespace hearthcell::time_tokens {
namespace {

struct Spelling {
    std::string_view text;
    TokenKind kind;
};

// Longer ones first: the first that fits is taken.
constexpr Spelling signs[] = {
    {":", TokenKind::colon},    {"''", TokenKind::seconds}, {"’’", TokenKind::seconds}, {"′′", TokenKind::seconds},
    {"´´", TokenKind::seconds}, {"\"", TokenKind::seconds}, {"”", TokenKind::seconds},  {"″", TokenKind::seconds},
    {"'", TokenKind::minutes},  {"’", TokenKind::minutes},  {"′", TokenKind::minutes},  {"´", TokenKind::minutes},
};

constexpr Spelling words[] = {
    {"h", TokenKind::hours},         {"hr", TokenKind::hours},       {"hrs", TokenKind::hours},
    {"hour", TokenKind::hours},      {"hours", TokenKind::hours},    {"m", TokenKind::minutes},
    {"min", TokenKind::minutes},     {"mins", TokenKind::minutes},   {"minute", TokenKind::minutes},
    {"minutes", TokenKind::minutes}, {"s", TokenKind::seconds},      {"sec", TokenKind::seconds},
    {"secs", TokenKind::seconds},    {"second", TokenKind::seconds}, {"seconds", TokenKind::seconds},
};

// The space of a keyboard, those that do not break a line, and the thin one.
constexpr std::string_view spaces[] = {" ", "\t", "\u00A0", "\u202F", "\u2009"};

constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
constexpr char lower(char c) { // the C library's asks the locale
    return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
}
constexpr bool is_letter(char c) {
    return lower(c) >= 'a' && lower(c) <= 'z';
}

std::size_t length_while(std::string_view text, bool (*fits)(char)) {
    return std::size_t(std::ranges::find_if_not(text, fits) - text.begin());
}

/// Takes the text apart from its front.
/// What nine digits at most and nine decimals at most mean. Up to 15 digits it is the nearest number there is: a
/// quotient of two that are exact. std::from_chars does the same, but asks for a newer C++ library than every system of
/// an office has.
double number_of(std::string_view whole, std::string_view decimals) {
    constexpr std::size_t exact = 15;
    std::uint64_t digits = 0, parts = 1;
    for (char const digit : std::string(whole) + std::string(decimals))
        digits = digits * 10 + std::uint64_t(digit - '0');
    for (std::size_t i = 0; i < decimals.size(); ++i)
        parts *= 10;
    if (whole.size() + decimals.size() <= exact)
        return double(digits) / double(parts);
    return double(digits / parts) + double(digits % parts) / double(parts);
}

class Reader {
public:
    explicit Reader(std::string_view text) : rest(text) { skip_spaces(); }

    bool at_end() const { return rest.empty(); }

    std::optional<Token> next() {
        std::optional<Token> const token = is_digit(rest.front())    ? number()
                                           : is_letter(rest.front()) ? word()
                                                                     : sign();
        skip_spaces();
        return token;
    }

private:
    /// Digits, with one comma or point as the decimal mark.
    std::optional<Token> number() {
        constexpr std::size_t most_digits = 9;
        std::size_t const whole = length_while(rest, is_digit);
        std::size_t end = whole;
        bool const has_mark = end < rest.size() && (rest[end] == '.' || rest[end] == ',');
        if (whole > most_digits)
            return {};
        if (has_mark) {
            std::size_t const decimals = length_while(rest.substr(end + 1), is_digit);
            if (decimals == 0 || decimals > most_digits)
                return {};
            end += 1 + decimals;
        }
        Token token{.digits = int(whole), .has_fraction = has_mark};
        token.number = number_of(rest.substr(0, whole), has_mark ? rest.substr(whole + 1, end - whole - 1) : "");
        rest.remove_prefix(end);
        return token;
    }

    std::optional<Token> word() {
        std::size_t const length = length_while(rest, is_letter);
        std::string_view const typed = rest.substr(0, length);
        for (Spelling const& word : words) {
            if (!std::ranges::equal(typed, word.text, [](char a, char b) { return lower(a) == b; }))
                continue;
            rest.remove_prefix(length);
            if (rest.starts_with('.') && length > 1) // min. and sec.
                rest.remove_prefix(1);
            return Token{word.kind};
        }
        return {};
    }

    std::optional<Token> sign() {
        for (Spelling const& spelling : signs) {
            if (!rest.starts_with(spelling.text))
                continue;
            rest.remove_prefix(spelling.text.size());
            return Token{spelling.kind};
        }
        return {};
    }

    void skip_spaces() {
        for (std::size_t i = 0; i < std::size(spaces); ++i) {
            if (!rest.starts_with(spaces[i]))
                continue;
            rest.remove_prefix(spaces[i].size());
            i = std::size_t(-1); // and again from the first
        }
    }

    std::string_view rest;
};

} // namespace

Tokens tokens_of(std::string_view text) {
    Tokens tokens;
    Reader reader(text);
    while (!reader.at_end()) {
        std::optional<Token> const token = reader.next();
        if (!token || tokens.count == most_tokens)
            return {};
        tokens.list[tokens.count++] = *token;
    }
    return tokens;
}

} // namespace hearthcell::time_tokens
