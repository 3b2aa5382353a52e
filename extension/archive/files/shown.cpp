#include "extension/archive/files/shown.hpp"

#include <algorithm>
#include <array>
#include <cstdio>

namespace hearthcell::archive {
namespace {

struct Letter {
    char32_t code = 0;
    std::size_t size = 0; // bytes; 0: no UTF-8
};

/// The first letter of a text that is not empty.
Letter first_letter(std::string_view text) {
    auto const byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    unsigned const first = byte(0);
    if (first < 0x80)
        return {first, 1};
    std::size_t const size = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    if (first < 0xC2 || first > 0xF4 || text.size() < size)
        return {};
    char32_t code = first & (0x7FU >> size);
    for (std::size_t at = 1; at < size; ++at) {
        if ((byte(at) & 0xC0U) != 0x80U)
            return {};
        code = code << 6U | (byte(at) & 0x3FU);
    }
    bool const surrogate = code >= 0xD800 && code < 0xE000;
    return code < least.at(size) || code > 0x10FFFF || surrogate ? Letter{} : Letter{code, size};
}

struct Range {
    char32_t first, last;
};

template <std::size_t count> bool among(std::array<Range, count> const& ranges, char32_t code) {
    return std::ranges::any_of(ranges, [&](Range const& one) { return code >= one.first && code <= one.last; });
}

/// What a terminal obeys, and what turns the direction of writing.
bool commands(char32_t code) {
    constexpr std::array<Range, 4> ranges{{{0, 0x1F}, {0x7F, 0x9F}, {0x202A, 0x202E}, {0x2066, 0x2069}}};
    return among(ranges, code);
}

/// What cannot be told from nothing, or from a line break.
bool hides(char32_t code) {
    constexpr std::array<Range, 8> ranges{{{0xAD, 0xAD},
                                           {0x61C, 0x61C},
                                           {0x200B, 0x200B},
                                           {0x200E, 0x200F},
                                           {0x2028, 0x2029},
                                           {0x2060, 0x2065},
                                           {0xFEFF, 0xFEFF},
                                           {0xE0000, 0xE0FFF}}};
    return among(ranges, code);
}

std::string escape(char const* form, unsigned code) {
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), form, code);
    return text.data();
}

template <class Unsafe> std::string rewritten(std::string_view text, Unsafe const& unsafe) {
    std::string safe;
    safe.reserve(text.size());
    while (!text.empty()) {
        Letter const letter = first_letter(text);
        std::size_t const size = std::max<std::size_t>(letter.size, 1);
        if (letter.size == 0)
            safe += escape("\\x%02x", static_cast<unsigned char>(text[0]));
        else if (unsafe(letter.code))
            safe += letter.code == '\\' ? "\\\\" : escape(letter.code < 0x80 ? "\\x%02x" : "\\u%04x", letter.code);
        else
            safe += text.substr(0, size);
        text.remove_prefix(size);
    }
    return safe;
}

} // namespace

std::string shown(std::string_view name) {
    return rewritten(name, [](char32_t code) { return code == '\\' || commands(code) || hides(code); });
}

std::string harmless(std::string_view text) {
    return rewritten(text,
                     [](char32_t code) { return commands(code) && code != '\t' && code != '\n' && code != '\r'; });
}

std::string line_of(std::string_view text, std::size_t longest) {
    constexpr std::string_view mark = "… (cut)";
    std::string line = rewritten(text, [](char32_t code) { return commands(code) || hides(code); });
    std::size_t letters = 0, end = 0;
    for (std::size_t at = 0; at < line.size(); ++at)
        if ((static_cast<unsigned char>(line[at]) & 0xC0U) != 0x80U && letters++ == longest) {
            end = at;
            break;
        }
    if (end == 0)
        return line;
    line.resize(end);
    return line.append(mark);
}

} // namespace hearthcell::archive
