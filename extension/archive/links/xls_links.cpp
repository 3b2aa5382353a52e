// Layout: [MS-XLS] and, for drawings, [MS-ODRAW], the published descriptions of the formats.

#include "extension/archive/links/xls_links.hpp"

#include "extension/archive/files/compound_file.hpp"
#include "extension/archive/links/compound_copy.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <string>
#include <vector>

namespace hearthcell::archive {
namespace {

enum Record : unsigned { more = 0x003C, query_text = 0x00CD, parameters = 0x00DC, group = 0x00EB, drawing = 0x00EC };
constexpr unsigned unknown_record = 0x7FFE; // readers pass over what they do not know

enum Shape : unsigned { properties = 0xF00B, more_properties = 0xF121, further_properties = 0xF122 };

/// A place in the stream with the bytes of one drawing, which lie in pieces.
class Drawing {
public:
    explicit Drawing(std::string& stream) : stream_(stream) {}

    void add(std::size_t start, std::size_t size) {
        if (size > 0)
            pieces_.push_back({size_, start});
        size_ += size;
    }

    [[nodiscard]] std::size_t size() const { return size_; }
    void clear() {
        pieces_.clear();
        size_ = 0;
    }

    [[nodiscard]] char& byte(std::size_t at) {
        auto const next = std::upper_bound(pieces_.begin(), pieces_.end(), at,
                                           [](std::size_t place, Piece const& piece) { return place < piece.at; });
        Piece const& piece = *std::prev(next);
        return stream_[piece.start + (at - piece.at)];
    }
    [[nodiscard]] std::uint32_t number(std::size_t at, int bytes) {
        std::uint32_t value = 0;
        for (int place = bytes - 1; place >= 0; --place)
            value = value << 8U | static_cast<unsigned char>(byte(at + static_cast<std::size_t>(place)));
        return value;
    }

private:
    struct Piece {
        std::size_t at, start; // in the drawing, in the stream
    };
    std::string& stream_;
    std::vector<Piece> pieces_;
    std::size_t size_ = 0;
};

/// The name of a linked picture, the flags that say that it is linked, and what it is.
struct LinkedPicture {
    unsigned name, flags;
    char const* what;
};
constexpr LinkedPicture pictures[] = {
    {0x0105, 0x0106, "picture"}, {0x0187, 0x0188, "fill picture"}, {0x01C6, 0x01C7, "picture of a line"}};

class XlsLinks {
public:
    XlsLinks(std::string& stream, Outside& outside) : stream_(stream), drawing_(stream), outside_(outside) {}

    bool hide() {
        std::size_t at = 0;
        bool in_drawing = false;
        while (at + 4 <= stream_.size()) {
            std::size_t const kind = word(at), size = word(at + 2);
            if (size > stream_.size() - at - 4)
                break;
            // A drawing may be cut into several records; a text or an object between them is not part of it.
            if (kind == group || kind == drawing || (kind == more && in_drawing))
                drawing_.add(at + 4, size);
            in_drawing = kind == group || kind == drawing || (kind == more && in_drawing);
            if (kind == begin || kind == end)
                look_into_drawing();
            if (kind == parameters)
                query_ = at;
            else if (kind == query_text && query_ != 0)
                take_out_query(at, size);
            else if (kind != more)
                query_ = 0;
            at += 4 + size;
        }
        look_into_drawing();
        return changed_;
    }

private:
    static constexpr std::size_t begin = 0x0809, end = 0x000A;

    [[nodiscard]] std::size_t word(std::size_t at) const {
        return static_cast<unsigned char>(stream_[at]) +
               256U * static_cast<std::size_t>(static_cast<unsigned char>(stream_[at + 1]));
    }

    void take_out_query(std::size_t at, std::size_t size) {
        std::string text;
        for (std::size_t place = at + 7; place < at + 4 + size; ++place)
            if (stream_[place] != '\0')
                text += stream_[place];
        for (std::size_t const record : {query_, at}) {
            stream_[record] = static_cast<char>(unknown_record & 0xFFU);
            stream_[record + 1] = static_cast<char>(unknown_record >> 8U);
        }
        query_ = 0;
        changed_ = true;
        outside_.take_out({"page", {}, text});
    }

    void look_into_drawing() {
        look(0, drawing_.size());
        drawing_.clear();
    }

    void look(std::size_t at, std::size_t stop) {
        while (stop - at >= 8) {
            unsigned const head = drawing_.number(at, 2), kind = drawing_.number(at + 2, 2);
            std::size_t const size = drawing_.number(at + 4, 4);
            at += 8;
            std::size_t const its_stop = size > stop - at ? stop : at + size;
            bool const container = (head & 0xFU) == 0xFU;
            if (container)
                continue; // its parts follow, one after the other
            if (kind == properties || kind == more_properties || kind == further_properties)
                look_at_properties(at, its_stop, head >> 4U);
            at = its_stop;
        }
    }

    void look_at_properties(std::size_t at, std::size_t stop, std::size_t count) {
        std::size_t long_one = at + 6 * count; // where the long values lie, in their order
        for (std::size_t number = 0; number < count && at + 6 <= stop; ++number, at += 6) {
            unsigned const kind = drawing_.number(at, 2);
            std::size_t const value = drawing_.number(at + 2, 4);
            bool const is_long = (kind & 0x8000U) != 0;
            for (LinkedPicture const& picture : pictures) {
                if ((kind & 0x3FFFU) == picture.flags && !is_long)
                    overwrite(at + 2, at + 6);
                if ((kind & 0x3FFFU) == picture.name && is_long && long_one <= stop)
                    take_out_name(picture.what, long_one, std::min(stop, long_one + value));
            }
            long_one += is_long ? value : 0;
        }
    }

    void take_out_name(char const* what, std::size_t at, std::size_t stop) {
        std::string name;
        for (std::size_t place = at; place < stop; ++place)
            if (drawing_.byte(place) != '\0')
                name += drawing_.byte(place);
        if (name.empty())
            return;
        overwrite(at, stop);
        outside_.take_out({what, {}, name});
    }

    void overwrite(std::size_t at, std::size_t stop) {
        for (; at < stop; ++at) {
            changed_ = changed_ || drawing_.byte(at) != '\0';
            drawing_.byte(at) = '\0';
        }
    }

    std::string& stream_;
    Drawing drawing_;
    Outside& outside_;
    std::size_t query_ = 0; // where the record of its parameters lies
    bool changed_ = false;
};

} // namespace

void hide_in_xls(std::filesystem::path const& workbook, Outside& outside) {
    std::string name, stream;
    {
        CompoundFile const file(workbook);
        name = file.has("Workbook") ? "Workbook" : "Book";
        Room room(std::filesystem::file_size(workbook)); // a stream is no larger than its file
        stream = file.content(name.c_str(), room);
    }
    if (XlsLinks(stream, outside).hide())
        copy_compound_file(workbook, name, stream);
}

} // namespace hearthcell::archive
