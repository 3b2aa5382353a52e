#pragma once
// How what people type is compared with the names of the catalogue: letter case, accents, blanks, hyphens and
// apostrophes do not matter.

#include "functions/catalogue/argument.hpp"

#include <array>

namespace hearthcell {

std::string_view trimmed(std::string_view text);

/// Reads a name letter by letter, small and without accents; what does not matter is passed over.
class Letters {
public:
    constexpr explicit Letters(std::string_view text) : rest_(text) {}

    /// The next letter (a byte of it, where it is none of ours); 0 behind the last.
    constexpr char next() {
        while (!rest_.empty()) {
            if (std::size_t const passed_over = length_of_ignored(); passed_over > 0) {
                rest_.remove_prefix(passed_over);
                continue;
            }
            if (char const plain = without_accent(); plain != 0) {
                rest_.remove_prefix(2);
                return plain;
            }
            char const letter = rest_.front();
            rest_.remove_prefix(1);
            // The C library's tolower asks the locale.
            return letter >= 'A' && letter <= 'Z' ? char(letter - 'A' + 'a') : letter;
        }
        return 0;
    }

private:
    constexpr unsigned byte(std::size_t place) const { return place < rest_.size() ? std::uint8_t(rest_[place]) : 0U; }

    /// Of a blank, a hyphen, an apostrophe or a combining accent that the rest begins with: their bytes; else 0.
    constexpr std::size_t length_of_ignored() const {
        unsigned const first = byte(0), second = byte(1), third = byte(2);
        if (first == ' ' || first == '\t' || first == '-' || first == '\'')
            return 1;
        bool const is_blank_or_soft_hyphen = first == 0xC2 && (second == 0xA0 || second == 0xAD);
        bool const is_accent = (first == 0xCC && second >= 0x80) || (first == 0xCD && second >= 0x80 && second < 0xB0);
        if (is_blank_or_soft_hyphen || is_accent)
            return 2;
        bool const is_blank = third >= 0x80 && third <= 0x8B, is_hyphen = third >= 0x90 && third <= 0x95,
                   is_apostrophe = third == 0x98 || third == 0x99, is_narrow_blank = third == 0xAF;
        bool const ignored = is_blank || is_hyphen || is_apostrophe || is_narrow_blank;
        return first == 0xE2 && second == 0x80 && ignored ? 3 : 0;
    }

    /// The plain letter below the accent of a letter of western Europe; else 0.
    constexpr char without_accent() const {
        constexpr std::string_view plain = "aaaaaa.ceeeeiiii.nooooo.ouuuuy..aaaaaa.ceeeeiiii.nooooo.ouuuuy.y";
        if (byte(0) != 0xC3 || byte(1) < 0x80 || byte(1) > 0xBF)
            return 0;
        char const letter = plain[byte(1) - 0x80];
        return letter == '.' ? '\0' : letter;
    }

    std::string_view rest_;
};

constexpr bool same_name(std::string_view a, std::string_view b) {
    Letters one(a), other(b);
    for (;;) {
        char const letter = one.next();
        if (letter != other.next())
            return false;
        if (letter == 0)
            return true;
    }
}

/// What the letters of a name come down to (FNV-1a): equal for the same name, seldom for two.
constexpr std::uint32_t fingerprint(std::string_view name) {
    std::uint32_t hash = 2166136261U;
    Letters letters(name);
    for (char letter = letters.next(); letter != 0; letter = letters.next())
        hash = (hash ^ std::uint8_t(letter)) * 16777619U;
    return hash;
}

/// Acts on every name that a row answers to, in all languages.
template <class Act> constexpr void for_every_name(Named const& row, Act act) {
    for (Language const language : languages)
        act(row.name.in(language));
    for (std::string_view const name : row.also)
        act(name);
}

constexpr std::size_t count_names(std::span<Named const> rows) {
    std::size_t count = 0;
    for (Named const& row : rows)
        for_every_name(row, [&](std::string_view) { ++count; });
    return count;
}

/// The fingerprints of all names of a table, made by the compiler.
template <auto const& rows> consteval auto fingerprints_of() {
    std::array<NameTable::Fingerprint, count_names(rows)> result{};
    std::size_t place = 0;
    for (std::size_t row = 0; row < std::size(rows); ++row)
        for_every_name(rows[row], [&](std::string_view name) { result[place++] = {fingerprint(name), row}; });
    return result;
}

/// The rows that answer to a name: none, one, or several where it is ambiguous.
struct NamedRows {
    Named const* first = nullptr;
    std::size_t count = 0;
};
NamedRows find_name(NameTable const& table, std::string_view name);

/// Whether a row of a table answers to a name.
bool answers_to(Named const& row, std::string_view name);

} // namespace hearthcell
