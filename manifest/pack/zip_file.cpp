#include "manifest/pack/zip_file.hpp"

#include <memory>
#include <stdexcept>
#include <sys/stat.h>
#include <zip.h>

namespace hearthcell::pack {

void write_zip(std::span<Entry const> entries, std::filesystem::path const& file) {
    int problem = 0;
    std::unique_ptr<zip_t, void (*)(zip_t*)> archive(zip_open(file.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &problem),
                                                     zip_discard);
    if (!archive)
        throw std::runtime_error("cannot write " + file.string());
    auto const trouble = [&] {
        return std::runtime_error("cannot write " + file.string() + ": " + zip_strerror(archive.get()));
    };
    for (Entry const& entry : entries) {
        zip_source_t* const source = zip_source_buffer(archive.get(), entry.content.data(), entry.content.size(), 0);
        zip_int64_t const index = zip_file_add(archive.get(), entry.path.c_str(), source, ZIP_FL_ENC_UTF_8);
        constexpr zip_uint16_t midnight = 0, first_of_2026 = ((2026 - 1980) << 9) | (1 << 5) | 1;
        // An OpenDocument file's type comes first and plain, so that programs find it at a fixed place.
        bool const plain = entry.path == "mimetype";
        if (index < 0 ||
            zip_set_file_compression(archive.get(), zip_uint64_t(index), plain ? ZIP_CM_STORE : ZIP_CM_DEFLATE, 9) !=
                0 ||
            zip_file_set_dostime(archive.get(), zip_uint64_t(index), midnight, first_of_2026, 0) != 0)
            throw trouble();
        constexpr zip_uint32_t may_be_run = zip_uint32_t(S_IFREG | 0755) << 16;
        if (entry.is_program &&
            zip_file_set_external_attributes(archive.get(), zip_uint64_t(index), 0, ZIP_OPSYS_UNIX, may_be_run) != 0)
            throw trouble();
    }
    if (zip_close(archive.get()) != 0)
        throw trouble();
    static_cast<void>(archive.release()); // closed
}

} // namespace hearthcell::pack
