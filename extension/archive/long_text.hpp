#pragma once
// What the records of an .xls file are made of.

#include "archive/problem.hpp"

#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// Throws Trouble(corrupt) where there is none.
template <class Number> Number number_at(std::string_view bytes, std::size_t place) {
    Number number{};
    if (place + sizeof number > bytes.size())
        throw Trouble(Reason::corrupt, "a record of the workbook is too short");
    std::memcpy(&number, bytes.data() + place, sizeof number); // both sides put the low byte first
    return number;
}

/// A text of version 8: its length, then pieces that each start with a byte which says whether a letter takes one byte
/// or two. Later pieces stand in records of their own.
class LongText {
public:
    explicit LongText(std::string_view record);
    void add(std::string_view piece);
    [[nodiscard]] bool complete() const { return left_ == 0; }
    [[nodiscard]] std::string const& text() const { return text_; }

private:
    void add_unit(char32_t unit);
    void add_letter(char32_t letter);

    std::size_t left_;   // UTF-16 units to come
    char32_t first_ = 0; // the first half of a letter beyond 0xFFFF
    std::string text_;
};

} // namespace hearthcell::archive
