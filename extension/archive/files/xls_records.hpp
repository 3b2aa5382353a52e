#pragma once
// The records of an .xls file's stream. Layout: [MS-XLS], the published description of the format.

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>

namespace hearthcell::archive::xls {

enum Kind : unsigned {
    formula = 0x0006,
    end = 0x000A,
    extern_sheet = 0x0017,
    name = 0x0018,
    extern_name = 0x0023,
    encryption = 0x002F,
    more = 0x003C,
    sheet = 0x0085,
    many_short_numbers = 0x00BD,
    rich_text = 0x00D6,
    merged_cells = 0x00E5,
    shared_texts = 0x00FC,
    shared_text = 0x00FD,
    other_book = 0x01AE,
    number = 0x0203,
    own_text = 0x0204,
    logical = 0x0205,
    string = 0x0207,
    array = 0x0221,
    short_number = 0x027E,
    shared_formula = 0x04BC,
    begin = 0x0809,
};

/// A record: its kind and bytes. Reading past the end gives zeros, as damage must not become a crash.
struct Record {
    unsigned kind = end;
    std::string_view bytes;

    [[nodiscard]] unsigned byte(std::size_t at) const {
        return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
    }
    [[nodiscard]] unsigned word(std::size_t at) const { return byte(at) | byte(at + 1) << 8U; }
    [[nodiscard]] std::uint32_t long_word(std::size_t at) const { return word(at) | word(at + 2) << 16U; }
    [[nodiscard]] std::uint64_t number(std::size_t at) const {
        return std::uint64_t{long_word(at)} | std::uint64_t{long_word(at + 4)} << 32U;
    }
    [[nodiscard]] double real(std::size_t at) const;
    [[nodiscard]] std::string_view from(std::size_t at) const { return bytes.substr(std::min(at, bytes.size())); }
};

class Records {
public:
    Records(std::string_view stream, std::size_t start) : stream_(stream), at_(start) {}

    Record next(); // throws Trouble at the end of the stream
    [[nodiscard]] bool follows(unsigned kind) const;

private:
    std::string_view stream_;
    std::size_t at_;
};

/// Reads a record that may go on in further ones, each of whose texts says its own width.
class Cursor {
public:
    Cursor(Record record, Records& records, std::size_t at) : record_(record), records_(records), at_(at) {}

    unsigned word();
    std::uint32_t long_word();
    /// Letters with the byte of their width before them, where there is one.
    std::string letters(std::size_t number, bool with_width);
    /// What .xls calls a rich text: its length, width, and what follows it.
    std::string text();
    void skip(std::size_t bytes);
    [[nodiscard]] bool is_at_end() const;

private:
    unsigned byte();
    std::string letters(std::size_t number, bool wide, bool with_width);

    Record record_;
    Records& records_;
    std::size_t at_;
};

/// Letters within one record.
std::string letters_in(Record const& record, std::size_t at, std::size_t number, bool with_width);

} // namespace hearthcell::archive::xls
