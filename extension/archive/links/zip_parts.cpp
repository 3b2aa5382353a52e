#include "extension/archive/links/zip_parts.hpp"

#include "extension/archive/files/problem.hpp"

#include <zip.h>

#include <vector>

namespace hearthcell::archive {
namespace {

constexpr std::size_t piece = 1 << 16;

struct CloseFile {
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};

} // namespace

ZipParts::ZipParts(std::filesystem::path const& file)
    : zip_(zip_open(file.c_str(), 0, nullptr)), file_(file.filename().string()) {
    if (zip_ == nullptr)
        throw Trouble(Reason::corrupt, "the zip cannot be read");
}

ZipParts::~ZipParts() {
    if (zip_ != nullptr)
        zip_discard(zip_);
}

std::size_t ZipParts::size() const {
    zip_int64_t const count = zip_get_num_entries(zip_, 0);
    return count > 0 ? static_cast<std::size_t>(count) : 0;
}

std::string ZipParts::name(std::size_t part) const {
    char const* const text = zip_get_name(zip_, part, ZIP_FL_ENC_RAW);
    return text == nullptr ? std::string() : text;
}

void ZipParts::read(std::size_t part, std::function<bool(std::string_view)> const& take) const {
    std::unique_ptr<zip_file_t, CloseFile> const file(zip_fopen_index(zip_, part, 0));
    if (!file)
        throw Trouble(Reason::corrupt, name(part) + ": " + zip_strerror(zip_));
    std::vector<char> buffer(piece);
    for (;;) {
        zip_int64_t const got = zip_fread(file.get(), buffer.data(), buffer.size());
        if (got < 0)
            throw Trouble(Reason::corrupt, name(part) + ": " + zip_file_strerror(file.get()));
        if (got == 0 || !take({buffer.data(), static_cast<std::size_t>(got)}))
            return;
    }
}

void ZipParts::replace(std::size_t part, std::filesystem::path const& by) {
    zip_source_t* const source = zip_source_file(zip_, by.c_str(), 0, -1);
    if (source == nullptr || zip_file_replace(zip_, part, source, 0) != 0) {
        zip_source_free(source);
        throw Trouble(Reason::not_written, name(part) + ": " + zip_strerror(zip_));
    }
}

void ZipParts::write() {
    if (zip_close(zip_) != 0)
        throw Trouble(Reason::not_written, "the private copy: " + std::string(zip_strerror(zip_)));
    zip_ = nullptr;
}

} // namespace hearthcell::archive
