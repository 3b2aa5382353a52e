// The stored results of .xls: the records FORMULA and STRING of its stream. Layout: [MS-XLS], the published description
// of the format.

#include "extension/archive/files/compound_file.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/stored.hpp"

#include <array>
#include <bit>
#include <cstdint>
#include <utility>
#include <vector>

namespace hearthcell::archive {
namespace {

enum : unsigned {
    formula = 0x0006,
    end = 0x000A,
    encryption = 0x002F,
    more = 0x003C,
    sheet = 0x0085,
    string = 0x0207,
    begin = 0x0809,
};

constexpr std::array<std::pair<unsigned, int>, 7> errors{
    {{0x00, 521}, {0x07, 532}, {0x0F, 519}, {0x17, 524}, {0x1D, 525}, {0x24, 503}, {0x2A, 32767}}};

/// A record: its kind and bytes. Reading past the end gives zeros, as damage must not become a crash.
struct Record {
    unsigned kind = end;
    std::string_view bytes;

    [[nodiscard]] unsigned byte(std::size_t at) const {
        return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0;
    }
    [[nodiscard]] unsigned word(std::size_t at) const { return byte(at) | byte(at + 1) << 8U; }
    [[nodiscard]] std::uint64_t number(std::size_t at) const {
        return std::uint64_t{word(at)} | std::uint64_t{word(at + 2)} << 16U | std::uint64_t{word(at + 4)} << 32U |
               std::uint64_t{word(at + 6)} << 48U;
    }
};

class Records {
public:
    Records(std::string_view stream, std::size_t start) : stream_(stream), at_(start) {}

    /// The next one; at the end of the stream an END.
    Record next() {
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

    [[nodiscard]] bool follows(unsigned kind) const {
        return stream_.size() >= 4 && at_ <= stream_.size() - 4 && Record{0, stream_.substr(at_, 4)}.word(0) == kind;
    }

private:
    std::string_view stream_;
    std::size_t at_;
};

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

/// A text of one or two bytes a letter, which may go on in further records, each with its own width.
std::string text_of(Record record, Records& records, bool with_width) {
    std::size_t const wanted = record.word(0);
    std::u16string letters;
    std::size_t at = 2;
    for (;;) {
        bool const wide = with_width && (record.byte(at) & 1U) != 0;
        at += with_width ? 1 : 0;
        for (; letters.size() < wanted && at < record.bytes.size(); at += wide ? 2 : 1)
            letters += static_cast<char16_t>(wide ? record.word(at) : record.byte(at));
        if (letters.size() >= wanted || !records.follows(more))
            return utf8(letters);
        record = records.next();
        at = 0;
    }
}

class Workbook {
public:
    Workbook(std::string const& stream, bool with_width, Room& room)
        : stream_(stream), with_width_(with_width), room_(room) {}

    /// Nothing when it is encrypted.
    std::optional<StoredResults> read() {
        std::vector<std::pair<std::size_t, bool>> sheets; // where each starts, and whether it holds cells
        Records globals(stream_, 0);
        for (Record record = globals.next(); record.kind != end; record = globals.next()) {
            if (record.kind == encryption)
                return std::nullopt;
            if (record.kind == sheet) {
                room_.take(2 * sizeof sheets[0]);
                sheets.emplace_back(record.number(0) & 0xFFFFFFFFU, record.byte(5) == 0);
            }
        }
        for (std::size_t index = 0; index < sheets.size(); ++index)
            if (sheets[index].second)
                read_sheet(static_cast<int>(index), sheets[index].first);
        results_.sort();
        return std::move(results_);
    }

private:
    void read_sheet(int index, std::size_t start) {
        Records records(stream_, start);
        int depth = 0; // a chart in the sheet is a part of its own within it
        for (;;) {
            Record const record = records.next();
            if (record.kind == begin)
                ++depth;
            else if (record.kind == end && --depth <= 0)
                break;
            else if (record.kind == string && waiting_)
                add(text_of(record, records, with_width_));
            else if (record.kind == formula && depth == 1)
                read_formula(index, record);
        }
    }

    void read_formula(int index, Record const& record) {
        place_ = {index, static_cast<int>(record.word(0)), static_cast<int>(record.word(2))};
        waiting_ = false;
        if (record.word(12) != 0xFFFF)
            return add(std::bit_cast<double>(record.number(6)));
        switch (record.byte(6)) {
        case 0: // a text, in a record that follows
            waiting_ = true;
            return;
        case 1:
            return add(record.byte(8) != 0 ? 1.0 : 0.0);
        case 2:
            for (auto const& [kind, code] : errors)
                if (kind == record.byte(8))
                    return add(Fault{code, error_text(code)});
            return add(Fault{});
        default:
            return add(std::string());
        }
    }

    void add(Value value) {
        // LibreOffice writes 0 for the text that a formula gives when its cell is formatted as a number.
        double const* const number = std::get_if<double>(&value);
        bool const zero = number != nullptr && *number == 0;
        results_.add({place_, std::move(value), false, zero}, room_);
        waiting_ = false;
    }

    std::string const& stream_;
    bool with_width_;
    Room& room_;
    StoredResults results_;
    Place place_;
    bool waiting_ = false;
};

} // namespace

std::optional<StoredResults> stored_in_xls(std::filesystem::path const& file, Room& room) {
    CompoundFile const container(file);
    bool const of_1997 = container.has("Workbook");
    if (!of_1997 && !container.has("Book"))
        throw Trouble(Reason::unsupported, "a compound file without a workbook in it");
    std::string const stream = container.content(of_1997 ? "Workbook" : "Book", room);
    return Workbook(stream, of_1997, room).read();
}

} // namespace hearthcell::archive
