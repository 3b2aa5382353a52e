#include "archive/long_text.hpp"

namespace hearthcell::archive {

LongText::LongText(std::string_view record) : left_(number_at<std::uint16_t>(record, 0)) {
    add(record.substr(2));
}

void LongText::add(std::string_view piece) {
    if (piece.empty())
        return;
    bool const two_bytes = (static_cast<unsigned char>(piece[0]) & 1U) != 0;
    std::size_t const width = two_bytes ? 2 : 1;
    for (std::size_t at = 1; left_ > 0 && at + width <= piece.size(); at += width, --left_)
        add_unit(two_bytes ? number_at<std::uint16_t>(piece, at) : number_at<unsigned char>(piece, at));
}

void LongText::add_unit(char32_t unit) {
    bool const is_first = unit >= 0xD800 && unit < 0xDC00, is_second = unit >= 0xDC00 && unit < 0xE000;
    if (is_first)
        first_ = unit;
    else
        add_letter(is_second ? 0x10000 + ((first_ - 0xD800) << 10) + (unit - 0xDC00) : unit);
}

/// As UTF-8.
void LongText::add_letter(char32_t letter) {
    unsigned const more = letter < 0x80 ? 0 : letter < 0x800 ? 1 : letter < 0x10000 ? 2 : 3; // bytes after the first
    constexpr unsigned marks[] = {0x00, 0xC0, 0xE0, 0xF0};
    text_ += static_cast<char>(marks[more] | (letter >> (6 * more)));
    for (unsigned rest = more; rest > 0; --rest)
        text_ += static_cast<char>(0x80U | ((letter >> (6 * (rest - 1))) & 0x3FU));
}

} // namespace hearthcell::archive
