#include "extension/archive/links/letters.hpp"

#include <glib.h>
#include <zlib.h>

#include <array>
#include <memory>

namespace hearthcell::archive {

std::string bytes_of(std::string const& letters) {
    gsize size = 0;
    std::unique_ptr<guchar, decltype(&g_free)> const bytes(g_base64_decode(letters.c_str(), &size), g_free);
    return {reinterpret_cast<char const*>(bytes.get()), size};
}

std::string letters_of(std::string const& bytes) {
    std::unique_ptr<gchar, decltype(&g_free)> const letters(
        g_base64_encode(reinterpret_cast<guchar const*>(bytes.data()), bytes.size()), g_free);
    return letters.get();
}

bool is_packed(std::string_view start) {
    return start.starts_with("\x1F\x8B");
}

bool may_be_drawing(std::string_view start) {
    std::string plain(start.substr(0, 64));
    std::erase(plain, '\0'); // of two bytes a letter
    auto const first = plain.find_first_not_of("\xEF\xBB\xBF\xFE\xFF \t\r\n");
    return is_packed(start) || (first != std::string::npos && plain[first] == '<');
}

std::string unpacked(std::string bytes, Room& room) {
    if (!is_packed(bytes))
        return bytes;
    z_stream stream{};
    constexpr int with_gzip_head = 16 + MAX_WBITS;
    if (inflateInit2(&stream, with_gzip_head) != Z_OK)
        throw std::bad_alloc();
    std::unique_ptr<z_stream, decltype(&inflateEnd)> const ends(&stream, inflateEnd);
    stream.next_in = reinterpret_cast<Bytef*>(bytes.data());
    stream.avail_in = static_cast<uInt>(bytes.size());
    std::string plain;
    std::array<char, 1 << 14> piece{};
    for (int state = Z_OK; state == Z_OK;) {
        stream.next_out = reinterpret_cast<Bytef*>(piece.data());
        stream.avail_out = piece.size();
        state = inflate(&stream, Z_NO_FLUSH);
        std::size_t const more = piece.size() - stream.avail_out;
        room.take(more);
        plain.append(piece.data(), more);
    }
    return plain; // as far as it can be read: an office reads no further
}

} // namespace hearthcell::archive
