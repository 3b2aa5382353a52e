#pragma once
// A typed time taken apart into its numbers, units and colons.

#include <array>
#include <cstddef>
#include <span>
#include <string_view>

namespace hearthcell::time_tokens {

enum class TokenKind { number, colon, hours, minutes, seconds };

/// A number as it was typed, or the sign or word that stands between numbers.
struct Token {
    TokenKind kind = TokenKind::number;
    double number = 0;
    int digits = 0; ///< before the decimal mark
    bool has_fraction = false;
};

inline constexpr std::size_t most_tokens = 6; ///< 1 h 5 min 6 s

struct Tokens {
    std::array<Token, most_tokens> list;
    std::size_t count = 0; ///< 0: the text is no time

    std::span<Token const> all() const { return std::span(list).first(count); }
};

/// Letter case and spaces do not matter; digits have one comma or point at most as their decimal mark.
Tokens tokens_of(std::string_view text);

} // namespace hearthcell::time_tokens
