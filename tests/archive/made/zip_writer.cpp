#include "zip_writer.hpp"

#include <zip.h>

#include <algorithm>
#include <cstring>
#include <memory>
#include <stdexcept>

namespace hearthcell::tests::archive {
namespace {

[[noreturn]] void fail(zip* archive, std::string const& what) {
    throw std::runtime_error(what + ": " + zip_strerror(archive));
}

/// The source behind add_bomb: libzip asks for the next bytes and never has all of them at once.
struct Bomb {
    std::string start, end;
    std::uint64_t blanks;
    std::uint64_t place = 0;

    [[nodiscard]] std::uint64_t size() const { return start.size() + blanks + end.size(); }

    std::uint64_t read(char* to, std::uint64_t at_most) {
        std::uint64_t const count = std::min(at_most, size() - place);
        std::memset(to, ' ', count);
        lay(start, 0, to, count);
        lay(end, start.size() + blanks, to, count);
        place += count;
        return count;
    }

    void lay(std::string const& part, std::uint64_t from, char* to, std::uint64_t count) const {
        for (std::uint64_t i = 0; i < part.size(); ++i)
            if (from + i >= place && from + i < place + count)
                to[from + i - place] = part[i];
    }
};

zip_int64_t feed(void* state, void* data, zip_uint64_t length, zip_source_cmd_t command) {
    auto* const bomb = static_cast<Bomb*>(state);
    switch (command) {
    case ZIP_SOURCE_OPEN:
        bomb->place = 0;
        return 0;
    case ZIP_SOURCE_READ:
        return static_cast<zip_int64_t>(bomb->read(static_cast<char*>(data), length));
    case ZIP_SOURCE_CLOSE:
        return 0;
    case ZIP_SOURCE_STAT: {
        auto* const facts = static_cast<zip_stat_t*>(data);
        zip_stat_init(facts);
        facts->size = bomb->size();
        facts->valid = ZIP_STAT_SIZE;
        return sizeof *facts;
    }
    case ZIP_SOURCE_FREE:
        delete bomb;
        return 0; // NOLINT: libzip keeps it
    case ZIP_SOURCE_SUPPORTS:
        return zip_source_make_command_bitmap(ZIP_SOURCE_OPEN, ZIP_SOURCE_READ, ZIP_SOURCE_CLOSE, ZIP_SOURCE_STAT,
                                              ZIP_SOURCE_FREE, -1);
    default:
        return -1;
    }
}

} // namespace

ZipWriter::ZipWriter(std::filesystem::path const& file)
    : zip_(zip_open(file.c_str(), ZIP_CREATE | ZIP_TRUNCATE, nullptr)) {
    if (zip_ == nullptr)
        throw std::runtime_error("could not make " + file.string());
}

ZipWriter::~ZipWriter() {
    if (zip_ != nullptr)
        zip_discard(zip_);
}

void ZipWriter::add_source(std::string const& name, zip_source* source, Packing packing) {
    if (source == nullptr)
        fail(zip_, "no source for " + name);
    zip_int64_t const index = zip_file_add(zip_, name.c_str(), source, ZIP_FL_OVERWRITE | ZIP_FL_ENC_UTF_8);
    if (index < 0) {
        zip_source_free(source);
        fail(zip_, "could not add " + name);
    }
    auto const method = packing == Packing::stored ? ZIP_CM_STORE : ZIP_CM_DEFLATE;
    if (zip_set_file_compression(zip_, static_cast<zip_uint64_t>(index), method, 0) != 0)
        fail(zip_, "could not pack " + name);
}

void ZipWriter::add(std::string const& name, std::string const& content, Packing packing) {
    char* const copy = static_cast<char*>(std::malloc(content.size() + 1)); // libzip frees it
    std::memcpy(copy, content.data(), content.size());
    add_source(name, zip_source_buffer(zip_, copy, content.size(), 1), packing);
}

void ZipWriter::add_bomb(std::string const& name, std::string const& start, std::uint64_t blanks,
                         std::string const& end) {
    auto bomb = std::make_unique<Bomb>(Bomb{start, end, blanks});
    zip_source* const source = zip_source_function(zip_, feed, bomb.get());
    bomb.release(); // NOLINT: feed() deletes it
    add_source(name, source, Packing::deflated);
}

void ZipWriter::close() {
    if (zip_close(zip_) != 0)
        fail(zip_, "could not write the zip");
    zip_ = nullptr;
}

std::map<std::string, std::string> unzipped(std::filesystem::path const& file) {
    std::unique_ptr<zip, void (*)(zip*)> const archive(zip_open(file.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, nullptr),
                                                       zip_discard);
    if (!archive)
        throw std::runtime_error("no zip: " + file.string());
    std::map<std::string, std::string> entries;
    for (zip_int64_t index = 0; index < zip_get_num_entries(archive.get(), 0); ++index) {
        zip_stat_t facts;
        auto const place = static_cast<zip_uint64_t>(index);
        if (zip_stat_index(archive.get(), place, 0, &facts) != 0)
            fail(archive.get(), file.string());
        std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> const entry(zip_fopen_index(archive.get(), place, 0),
                                                                      zip_fclose);
        std::string content(facts.size, '\0');
        if (!entry || zip_fread(entry.get(), content.data(), content.size()) != zip_int64_t(content.size()))
            fail(archive.get(), file.string() + ": " + facts.name);
        entries[facts.name] = std::move(content);
    }
    return entries;
}

void replace_in_zip(std::filesystem::path const& file, std::string const& name, std::string const& content) {
    auto entries = unzipped(file);
    ZipWriter zip(file);
    for (auto const& [known, old] : entries)
        zip.add(known, known == name ? content : old);
    zip.close();
}

} // namespace hearthcell::tests::archive
