#include "extension/archive/files/zip.hpp"

#include "extension/archive/files/problem.hpp"

#include <zip.h>

#include <new>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr std::size_t piece = 1 << 16;

struct CloseFile {
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};

[[noreturn]] void damaged(std::string const& what, std::string const& how) {
    throw Trouble(Reason::corrupt, what + ": " + how);
}

[[noreturn]] void damaged(std::string const& what, zip_error_t* error) {
    if (zip_error_code_zip(error) == ZIP_ER_MEMORY)
        throw std::bad_alloc();
    damaged(what, zip_error_strerror(error));
}

std::string said(int code) {
    zip_error_t error;
    zip_error_init_with_code(&error, code);
    std::string const text = zip_error_strerror(&error);
    zip_error_fini(&error);
    return text;
}

} // namespace

void CloseZip::operator()(zip* archive) const {
    zip_discard(archive);
}

OpenZip open_zip(std::filesystem::path const& file, ZipFor purpose) {
    int problem = 0;
    OpenZip archive(zip_open(file.c_str(), purpose == ZipFor::reading ? ZIP_RDONLY : 0, &problem));
    if (!archive && problem == ZIP_ER_MEMORY)
        throw std::bad_alloc();
    if (!archive)
        damaged("the zip", said(problem));
    return archive;
}

void read_entry(zip* archive, std::uint64_t entry, std::function<bool(std::string_view)> const& take) {
    char const* const known = zip_get_name(archive, entry, ZIP_FL_ENC_RAW);
    std::string const name = known == nullptr ? "an entry" : known;
    std::unique_ptr<zip_file_t, CloseFile> const file(zip_fopen_index(archive, entry, 0));
    if (!file)
        damaged(name, zip_get_error(archive));
    std::vector<char> buffer(piece);
    for (;;) {
        zip_int64_t const got = zip_fread(file.get(), buffer.data(), buffer.size());
        if (got < 0)
            damaged(name, zip_file_get_error(file.get()));
        if (got == 0 || !take({buffer.data(), static_cast<std::size_t>(got)}))
            return;
    }
}

Zip::Zip(std::filesystem::path const& file) : archive_(open_zip(file, ZipFor::reading)) {}

std::uint64_t Zip::unpacked_size() const {
    std::uint64_t sum = 0;
    zip_int64_t const entries = zip_get_num_entries(archive_.get(), 0);
    for (zip_int64_t entry = 0; entry < entries; ++entry) {
        zip_stat_t facts;
        zip_stat_init(&facts);
        if (zip_stat_index(archive_.get(), static_cast<zip_uint64_t>(entry), 0, &facts) != 0 ||
            (facts.valid & ZIP_STAT_SIZE) == 0)
            damaged("the zip", "an entry without a size");
        if (__builtin_add_overflow(sum, facts.size, &sum))
            return UINT64_MAX;
    }
    return sum;
}

bool Zip::has(std::string const& entry) const {
    return zip_name_locate(archive_.get(), entry.c_str(), 0) >= 0;
}

void Zip::read(std::string const& entry, std::function<void(std::string_view)> const& take) const {
    zip_int64_t const index = zip_name_locate(archive_.get(), entry.c_str(), 0);
    if (index < 0)
        damaged(entry, zip_get_error(archive_.get()));
    read_entry(archive_.get(), static_cast<std::uint64_t>(index), [&](std::string_view part) {
        take(part);
        return true;
    });
}

std::string Zip::text(std::string const& entry, std::size_t at_most) const {
    std::string all;
    read(entry, [&](std::string_view part) {
        if (all.size() < at_most)
            all.append(part.substr(0, at_most - all.size()));
    });
    return all;
}

} // namespace hearthcell::archive
