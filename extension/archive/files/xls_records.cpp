#include "extension/archive/files/xls_records.hpp"

#include "extension/archive/files/problem.hpp"

#include <algorithm>
#include <bit>

namespace hearthcell::archive::xls {
namespace {

void add_utf8(std::string& text, char32_t letter) {
    auto const add = [&](char32_t bits) { text += static_cast<char>(static_cast<unsigned char>(bits)); };
    if (letter < 0x80) {
        add(letter);
    } else if (letter < 0x800) {
        add(0xC0U | letter >> 6U);
        add(0x80U | (letter & 0x3FU));
    } else if (letter < 0x10000) {
        add(0xE0U | letter >> 12U);
        add(0x80U | (letter >> 6U & 0x3FU));
        add(0x80U | (letter & 0x3FU));
    } else {
        add(0xF0U | letter >> 18U);
        add(0x80U | (letter >> 12U & 0x3FU));
        add(0x80U | (letter >> 6U & 0x3FU));
        add(0x80U | (letter & 0x3FU));
    }
}

std::string utf8(std::u16string const& letters) {
    std::string text;
    for (std::size_t at = 0; at < letters.size(); ++at) {
        char32_t letter = letters[at];
        bool const pair = letter >= 0xD800 && letter < 0xDC00 && at + 1 < letters.size();
        if (pair)
            letter = 0x10000U + ((letter & 0x3FFU) << 10U) + (letters[++at] & 0x3FFU);
        add_utf8(text, letter);
    }
    return text;
}

} // namespace

double Record::real(std::size_t at) const {
    return std::bit_cast<double>(number(at));
}

Record Records::next() {
    if (stream_.size() < 4 || at_ > stream_.size() - 4)
        throw Trouble(Reason::corrupt, "the workbook ends in the middle");
    Record const head{0, stream_.substr(at_, 4)};
    std::size_t const size = head.word(2);
    if (size > stream_.size() - at_ - 4)
        throw Trouble(Reason::corrupt, "the workbook ends in the middle");
    Record const record{head.word(0), stream_.substr(at_ + 4, size)};
    at_ += 4 + size;
    return record;
}

bool Records::follows(unsigned kind) const {
    return stream_.size() >= 4 && at_ <= stream_.size() - 4 && Record{0, stream_.substr(at_, 4)}.word(0) == kind;
}

bool Cursor::is_at_end() const {
    return at_ >= record_.bytes.size() && !records_.follows(more);
}

unsigned Cursor::byte() {
    while (at_ >= record_.bytes.size() && records_.follows(more)) {
        record_ = records_.next();
        at_ = 0;
    }
    return record_.byte(at_++);
}

unsigned Cursor::word() {
    unsigned const low = byte();
    return low | byte() << 8U;
}

std::uint32_t Cursor::long_word() {
    std::uint32_t const low = word();
    return low | word() << 16U;
}

void Cursor::skip(std::size_t bytes) {
    for (; bytes > 0 && !is_at_end(); --bytes)
        byte();
}

std::string Cursor::letters(std::size_t number, bool with_width) {
    bool const wide = with_width && (byte() & 1U) != 0;
    return letters(number, wide, with_width);
}

std::string Cursor::letters(std::size_t number, bool wide, bool with_width) {
    std::u16string letters;
    for (;;) {
        for (; letters.size() < number && at_ < record_.bytes.size(); at_ += wide ? 2 : 1)
            letters += static_cast<char16_t>(wide ? record_.word(at_) : record_.byte(at_));
        if (letters.size() >= number || !records_.follows(more))
            return utf8(letters);
        record_ = records_.next();
        wide = with_width && (record_.byte(0) & 1U) != 0;
        at_ = with_width ? 1 : 0;
    }
}

std::string Cursor::text() {
    constexpr unsigned is_wide = 1, has_phonetic = 4, is_formatted = 8;
    std::size_t const number = word();
    unsigned const flags = byte();
    std::size_t behind = (flags & is_formatted) != 0 ? std::size_t{4} * word() : 0;
    behind += (flags & has_phonetic) != 0 ? long_word() : 0;
    std::string result = letters(number, (flags & is_wide) != 0, true);
    skip(behind);
    return result;
}

std::string letters_in(Record const& record, std::size_t at, std::size_t number, bool with_width) {
    std::u16string letters;
    bool const wide = with_width && (record.byte(at) & 1U) != 0;
    at += with_width ? 1 : 0;
    for (; letters.size() < number && at < record.bytes.size(); at += wide ? 2 : 1)
        letters += static_cast<char16_t>(wide ? record.word(at) : record.byte(at));
    return utf8(letters);
}

} // namespace hearthcell::archive::xls
