#include "extension/archive/files/odf_cells.hpp"
#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/zip.hpp"

#include <cerrno>
#include <cstring>
#include <fstream>

namespace hearthcell::archive {

void read_ods(std::filesystem::path const& file, Room& room, CellSink& sink) {
    OdfCells reader(room, sink);
    Zip(file).read("content.xml", [&](std::string_view piece) { reader.feed(piece); });
    reader.finish();
}

void read_fods(std::filesystem::path const& file, Room& room, CellSink& sink) {
    std::ifstream text(file, std::ios::binary);
    if (!text)
        throw Trouble(Reason::unreadable, std::strerror(errno));
    OdfCells reader(room, sink);
    std::string piece(1 << 16, '\0');
    while (text.read(piece.data(), static_cast<std::streamsize>(piece.size())) || text.gcount() > 0)
        reader.feed({piece.data(), static_cast<std::size_t>(text.gcount())});
    reader.finish();
    if (reader.media_type().find("opendocument.spreadsheet") == std::string::npos)
        throw Trouble(Reason::unsupported, reader.media_type().empty() ? "XML, but not of a document"
                                                                       : "no spreadsheet, but " + reader.media_type());
}

} // namespace hearthcell::archive
