// The cells of .xls.

#include "extension/archive/files/cells.hpp"
#include "extension/archive/files/compound_file.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/xls_formula.hpp"
#include "extension/archive/files/xls_globals.hpp"
#include "extension/archive/files/xls_records.hpp"

#include <array>
#include <optional>
#include <utility>

namespace hearthcell::archive {
namespace {

using xls::Record;
using xls::Records;

constexpr std::array<std::pair<unsigned, int>, 7> errors{
    {{0x00, 521}, {0x07, 532}, {0x0F, 519}, {0x17, 524}, {0x1D, 525}, {0x24, 503}, {0x2A, 32767}}};

Value error_numbered(unsigned number) {
    for (auto const& [kind, code] : errors)
        if (kind == number)
            return Fault{code, error_text(code)};
    return Fault{};
}

/// A number in four bytes: the upper part of a real one or a whole one, perhaps in hundredths.
double short_number(std::uint32_t bits) {
    constexpr std::uint32_t hundredths = 1, whole = 2;
    double const number = (bits & whole) != 0 ? double(static_cast<std::int32_t>(bits) >> 2)
                                              : std::bit_cast<double>(std::uint64_t{bits & ~std::uint32_t{3}} << 32U);
    return (bits & hundredths) != 0 ? number / 100 : number;
}

class Sheet {
public:
    Sheet(int index, std::string_view stream, std::size_t start, xls::Globals const& globals, CellSink& sink)
        : index_(index), stream_(stream), start_(start), globals_(globals), sink_(sink), all_(sink.wants_all()) {}

    void read(Room& room) {
        if (all_)
            gather_shared(room);
        Records records(stream_, start_);
        int depth = 0; // a chart in the sheet is a part of its own within it
        for (;;) {
            Record const record = records.next();
            if (record.kind == xls::begin)
                ++depth;
            else if (record.kind == xls::end && --depth <= 0)
                break;
            else if (record.kind == xls::string && waiting_)
                add(xls::Cursor(record, records, 2).letters(record.word(0), globals_.with_width));
            else if (record.kind == xls::formula && depth == 1)
                read_formula(record);
            else if (all_ && depth == 1)
                read_plain(record);
        }
    }

private:
    /// The formulas that cells share stand behind the first of these.
    void gather_shared(Room& room) {
        Records records(stream_, start_);
        std::pair<unsigned, unsigned> cell;
        int depth = 0;
        for (;;) {
            Record const record = records.next();
            bool const is_array = record.kind == xls::array;
            if (record.kind == xls::begin)
                ++depth;
            else if (record.kind == xls::end && --depth <= 0)
                return;
            else if (record.kind == xls::formula)
                cell = {record.word(0), record.word(2)};
            else if (is_array || record.kind == xls::shared_formula) {
                room.take(sizeof(xls::Shared::value_type) + 4 * sizeof(void*));
                std::size_t const size = record.word(is_array ? 12 : 8);
                shared_[cell] = record.from(is_array ? 14 : 10).substr(0, size);
            }
        }
    }

    void read_formula(Record const& record) {
        place_ = {index_, static_cast<int>(record.word(0)), static_cast<int>(record.word(2))};
        waiting_ = false;
        formula_.clear();
        if (all_ && globals_.with_width)
            formula_ = xls::formula_of(record.from(22).substr(0, record.word(20)), place_, globals_.book, shared_);
        if (record.word(12) != 0xFFFF)
            return add(record.real(6));
        switch (record.byte(6)) {
        case 0: // a text, in a record that follows
            waiting_ = true;
            return;
        case 1:
            return add(record.byte(8) != 0 ? 1.0 : 0.0);
        case 2:
            return add(error_numbered(record.byte(8)));
        default:
            return add(std::string());
        }
    }

    void add(Value value) {
        // LibreOffice writes 0 for the text that a formula gives when its cell is formatted as a number.
        double const* const number = std::get_if<double>(&value);
        bool const zero = number != nullptr && *number == 0;
        sink_.cell({place_, std::move(value), true, formula_, false, zero});
        waiting_ = false;
    }

    void read_plain(Record const& record) {
        auto const plain = [&](Value value, unsigned column) {
            sink_.cell({{index_, int(record.word(0)), int(column)}, std::move(value)});
        };
        switch (record.kind) {
        case xls::number:
            return plain(record.real(6), record.word(2));
        case xls::short_number:
            return plain(short_number(record.long_word(6)), record.word(2));
        case xls::many_short_numbers:
            for (std::size_t at = 4; at + 8 <= record.bytes.size(); at += 6)
                plain(short_number(record.long_word(at + 2)), record.word(2) + unsigned((at - 4) / 6));
            return;
        case xls::shared_text:
            if (record.long_word(6) < globals_.texts.size())
                plain(globals_.texts[record.long_word(6)], record.word(2));
            return;
        case xls::own_text:
        case xls::rich_text:
            return plain(xls::letters_in(record, 8, record.word(6), globals_.with_width), record.word(2));
        case xls::logical:
            return plain(record.byte(7) != 0 ? error_numbered(record.byte(6)) : Value(double(record.byte(6))),
                         record.word(2));
        case xls::merged_cells:
            for (std::size_t at = 2; at + 8 <= record.bytes.size(); at += 8)
                sink_.merged({{index_, int(record.word(at)), int(record.word(at + 4))},
                              {index_, int(record.word(at + 2)), int(record.word(at + 6))}});
            return;
        default:
            return;
        }
    }

    int index_;
    std::string_view stream_;
    std::size_t start_;
    xls::Globals const& globals_;
    CellSink& sink_;
    bool const all_;
    xls::Shared shared_;
    Place place_;
    std::string formula_;
    bool waiting_ = false;
};

} // namespace

bool read_xls(std::filesystem::path const& file, Room& room, CellSink& sink) {
    CompoundFile const container(file);
    bool const of_1997 = container.has("Workbook");
    if (!of_1997 && !container.has("Book"))
        throw Trouble(Reason::unsupported, "a compound file without a workbook in it");
    std::string const stream = container.content(of_1997 ? "Workbook" : "Book", room);
    auto globals = xls::read_globals(stream, of_1997, sink.wants_all(), room);
    if (!globals)
        return false;
    if (sink.wants_all())
        for (std::string const& name : globals->book.sheets)
            sink.sheet(name);
    for (std::size_t index = 0; index < globals->sheets.size(); ++index)
        if (globals->sheets[index].holds_cells)
            Sheet(static_cast<int>(index), stream, globals->sheets[index].start, *globals, sink).read(room);
    if (sink.wants_all())
        for (formulas::Definition& name : globals->names)
            sink.named(std::move(name));
    return true;
}

} // namespace hearthcell::archive
