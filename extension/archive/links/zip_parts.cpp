#include "extension/archive/links/zip_parts.hpp"

#include "extension/archive/files/problem.hpp"

#include <zip.h>

namespace hearthcell::archive {

ZipParts::ZipParts(std::filesystem::path const& file) : zip_(open_zip(file, ZipFor::changing)) {}

std::size_t ZipParts::size() const {
    zip_int64_t const count = zip_get_num_entries(zip_.get(), 0);
    return count > 0 ? static_cast<std::size_t>(count) : 0;
}

std::string ZipParts::name(std::size_t part) const {
    char const* const text = zip_get_name(zip_.get(), part, ZIP_FL_ENC_RAW);
    return text == nullptr ? std::string() : text;
}

void ZipParts::read(std::size_t part, std::function<bool(std::string_view)> const& take) const {
    read_entry(zip_.get(), part, take);
}

void ZipParts::replace(std::size_t part, std::filesystem::path const& by) {
    zip_source_t* const source = zip_source_file(zip_.get(), by.c_str(), 0, -1);
    if (source == nullptr || zip_file_replace(zip_.get(), part, source, 0) != 0) {
        zip_source_free(source);
        throw Trouble(Reason::not_written, name(part) + ": " + zip_strerror(zip_.get()));
    }
}

void ZipParts::write() {
    if (zip_close(zip_.get()) != 0)
        throw Trouble(Reason::not_written, "the private copy: " + std::string(zip_strerror(zip_.get())));
    static_cast<void>(zip_.release()); // it is closed
}

} // namespace hearthcell::archive
