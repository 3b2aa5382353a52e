#include "extension/archive/links/clean.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/links/letters.hpp"
#include "extension/archive/links/may_link.hpp"
#include "extension/archive/links/put_links_back.hpp"
#include "extension/archive/links/xls_links.hpp"
#include "extension/archive/links/xml_links.hpp"
#include "extension/archive/links/zip_parts.hpp"

#include <algorithm>
#include <fstream>
#include <optional>
#include <system_error>
#include <vector>

namespace hearthcell::archive {
namespace {

/// A file beside the workbook in which a part is rewritten.
class Aside {
public:
    explicit Aside(std::filesystem::path file) : file_(std::move(file)), stream_(file_, std::ios::binary) {}
    ~Aside() {
        std::error_code ignored;
        std::filesystem::remove(file_, ignored);
    }
    Aside(Aside const&) = delete;
    Aside& operator=(Aside const&) = delete;

    void write(std::string_view piece) { stream_.write(piece.data(), static_cast<std::streamsize>(piece.size())); }

    void finish() {
        stream_.close();
        if (!stream_)
            throw std::system_error(std::make_error_code(std::errc::no_space_on_device));
    }

    [[nodiscard]] std::filesystem::path const& file() const { return file_; }

private:
    std::filesystem::path file_;
    std::ofstream stream_;
};

/// Rewrites what `read` hands over. The file with it; nothing where nothing changes.
template <class Read>
std::unique_ptr<Aside> rewritten(std::filesystem::path const& aside, Changes& changes, Room& room, Read const& read) {
    auto file = std::make_unique<Aside>(aside);
    RewrittenXml xml(
        changes, [&](std::string_view piece) { file->write(piece); }, room);
    read([&](std::string_view piece) {
        xml.feed(piece);
        return true;
    });
    xml.finish();
    if (!xml.changed())
        return nullptr;
    file->finish();
    return file;
}

std::string start_of(ZipParts const& zip, std::size_t part) {
    std::string start;
    zip.read(part, [&](std::string_view piece) {
        start += piece.substr(0, 64);
        return start.size() < 64;
    });
    return start;
}

/// A part piece by piece; a packed drawing at once.
template <class Take>
void read_plain(ZipParts const& zip, std::size_t part, bool packed, Room& room, Take const& take) {
    if (!packed)
        return zip.read(part, take);
    std::string bytes;
    zip.read(part, [&](std::string_view piece) {
        room.take(piece.size());
        bytes += piece;
        return true;
    });
    take(unpacked(std::move(bytes), room));
}

int depth_of(std::string const& part) {
    return static_cast<int>(std::count(part.begin(), part.end(), '/'));
}

bool is_a_picture(std::string const& part) {
    return part.ends_with(".svg") || part.starts_with("Pictures/") || part.find("/media/") != std::string::npos;
}

template <class Worth, class ChangesOf>
void rewrite_parts(std::filesystem::path const& file, Room& room, Worth const& is_worth_it,
                   ChangesOf const& changes_of) {
    ZipParts zip(file);
    std::vector<std::unique_ptr<Aside>> asides;
    for (std::size_t part = 0; part < zip.size(); ++part) {
        std::string const start = start_of(zip, part);
        if (!may_be_drawing(start))
            continue;
        bool const packed = is_packed(start);
        auto const read = [&](auto const& take) { read_plain(zip, part, packed, room, take); };
        if (!is_worth_it(read))
            continue;
        try {
            auto const changes = changes_of(zip.name(part));
            auto const aside = file.parent_path() / ("part-" + std::to_string(part));
            if (auto changed = rewritten(aside, *changes, room, read)) {
                zip.replace(part, changed->file());
                asides.push_back(std::move(changed));
            }
        } catch (Trouble const& trouble) {
            // A picture that is no XML shows nothing, and fetches nothing.
            if (trouble.reason != Reason::corrupt || !is_a_picture(zip.name(part)))
                throw Trouble(trouble.reason, zip.name(part) + ": " + trouble.what());
        }
    }
    if (!asides.empty())
        zip.write();
}

void hide_in_parts(std::filesystem::path const& file, Outside& outside, Room& room) {
    auto const may_link = [](auto const& read) {
        MayLink search;
        read([&](std::string_view piece) {
            search.feed(piece);
            return !search.found();
        });
        return search.found();
    };
    rewrite_parts(file, room, may_link,
                  [&](std::string const& part) { return std::make_unique<HideLinks>(outside, part, depth_of(part)); });
}

void put_back_in_parts(std::filesystem::path const& file, Outside const& outside, Room& room) {
    auto const has_names = [&](auto const& read) {
        std::string last;
        bool found = false;
        read([&](std::string_view piece) {
            std::string const text = last + std::string(piece);
            found = outside.is_named_in(text);
            last = text.substr(text.size() - std::min<std::size_t>(text.size(), 32));
            return !found;
        });
        return found;
    };
    rewrite_parts(file, room, has_names, [&](std::string const&) { return std::make_unique<PutLinksBack>(outside); });
}

void rewrite_flat(std::filesystem::path const& file, Changes& changes, Room& room) {
    auto const read = [&](auto const& take) { read_pieces(file, [&](std::string_view piece) { take(piece); }); };
    if (auto const changed = rewritten(file.parent_path() / "part", changes, room, read))
        std::filesystem::rename(changed->file(), file);
}

void hide_in_flat(std::filesystem::path const& file, Outside& outside, Room& room) {
    MayLink search;
    read_pieces(file, [&](std::string_view piece) { search.feed(piece); });
    if (!search.found())
        return;
    HideLinks changes(outside, {}, -1);
    rewrite_flat(file, changes, room);
}

} // namespace

void hide_links(std::filesystem::path const& workbook, Format format, Outside& outside, Room& room) {
    switch (format) {
    case Format::ods:
    case Format::xlsx:
        return hide_in_parts(workbook, outside, room);
    case Format::fods:
        return hide_in_flat(workbook, outside, room);
    case Format::xls:
        return hide_in_xls(workbook, outside);
    }
}

void put_links_back(std::filesystem::path const& workbook, Format format, Outside const& outside, Room& room) {
    if (outside.hidden().empty())
        return;
    if (format == Format::ods || format == Format::xlsx) {
        put_back_in_parts(workbook, outside, room);
    } else if (format == Format::fods) {
        PutLinksBack changes(outside);
        rewrite_flat(workbook, changes, room);
    }
}

} // namespace hearthcell::archive
