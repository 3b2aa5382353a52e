#include "extension/archive/files/xls_globals.hpp"

#include "extension/archive/files/xls_records.hpp"

namespace hearthcell::archive::xls {
namespace {

class Reader {
public:
    Reader(std::string_view stream, bool with_width, bool all, Room& room)
        : records_(stream, 0), all_(all), room_(room) {
        globals_.with_width = with_width;
    }

    std::optional<Globals> read() {
        for (Record record = records_.next(); record.kind != end; record = records_.next()) {
            if (record.kind == encryption)
                return std::nullopt;
            if (record.kind == sheet)
                add_sheet(record);
            else if (all_ && globals_.with_width)
                read_more(record);
        }
        for (auto const& [definition, tokens] : contents_) // once all sheets are known
            globals_.names[definition].content = formula_of(tokens, {}, globals_.book, {});
        return std::move(globals_);
    }

private:
    void add_sheet(Record const& record) {
        room_.take(2 * sizeof(Globals::Sheet));
        globals_.sheets.push_back({record.long_word(0), record.byte(5) == 0});
        if (all_)
            globals_.book.sheets.push_back(kept(letters_in(record, 7, record.byte(6), globals_.with_width)));
    }

    void read_more(Record const& record) {
        switch (record.kind) {
        case other_book: {
            constexpr unsigned this_workbook = 0x0401;
            room_.take(2 * sizeof(Book::Other));
            globals_.book.others.push_back({record.word(2) == this_workbook, {}});
            return;
        }
        case extern_name:
            if (!globals_.book.others.empty())
                globals_.book.others.back().names.push_back(kept(letters_in(record, 7, record.byte(6), true)));
            return;
        case extern_sheet:
            for (std::size_t at = 2; at + 6 <= record.bytes.size(); at += 6) {
                room_.take(2 * sizeof(Book::Sheets));
                globals_.book.referred.push_back({record.word(at), record.word(at + 2), record.word(at + 4)});
            }
            return;
        case name:
            return add_name(record);
        case shared_texts:
            return add_texts(record);
        default:
            return;
        }
    }

    void add_name(Record const& record) {
        constexpr unsigned is_builtin = 0x20;
        unsigned const letters = record.byte(3);
        bool const wide = (record.byte(14) & 1U) != 0;
        bool const has_name = (record.word(0) & is_builtin) == 0;
        std::string const text = has_name ? kept(letters_in(record, 14, letters, true)) : std::string();
        globals_.book.names.push_back(text);
        if (!has_name)
            return;
        unsigned const only_in = record.word(8);
        bool const is_local = only_in > 0 && only_in <= globals_.book.sheets.size();
        room_.take(2 * (sizeof(formulas::Definition) + sizeof contents_[0]));
        globals_.names.push_back({text, is_local ? globals_.book.sheets[only_in - 1] : std::string(), {}, {}});
        contents_.emplace_back(globals_.names.size() - 1,
                               record.from(15 + (wide ? 2 : 1) * letters).substr(0, record.word(4)));
    }

    void add_texts(Record const& record) {
        Cursor cursor(record, records_, 8);
        for (std::uint32_t left = record.long_word(4); left > 0 && !cursor.is_at_end(); --left)
            globals_.texts.push_back(kept(cursor.text()));
    }

    std::string kept(std::string text) {
        room_.take(2 * sizeof text + text.size());
        return text;
    }

    Records records_;
    bool const all_;
    Room& room_;
    Globals globals_;
    std::vector<std::pair<std::size_t, std::string_view>> contents_; // of names: their numbers and tokens
};

} // namespace

std::optional<Globals> read_globals(std::string_view stream, bool with_width, bool all, Room& room) {
    return Reader(stream, with_width, all, room).read();
}

} // namespace hearthcell::archive::xls
