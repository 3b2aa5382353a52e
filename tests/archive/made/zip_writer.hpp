#pragma once
// Zip files, good and bad, as tests need them.

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>

struct zip;
struct zip_source;

namespace hearthcell::tests::archive {

enum class Packing { deflated, stored };

/// A new zip file with the entries in the order in which they are added. Nothing is written before close().
class ZipWriter {
public:
    explicit ZipWriter(std::filesystem::path const& file);
    ~ZipWriter();
    ZipWriter(ZipWriter const&) = delete;
    ZipWriter& operator=(ZipWriter const&) = delete;

    void add(std::string const& name, std::string const& content, Packing packing = Packing::deflated);

    /// An entry of so many blanks between a start and an end: small in the file, large outside.
    void add_bomb(std::string const& name, std::string const& start, std::uint64_t blanks, std::string const& end);

    void close();

private:
    void add_source(std::string const& name, zip_source* source, Packing packing);

    struct zip* zip_;
};

/// All entries of a zip file.
std::map<std::string, std::string> unzipped(std::filesystem::path const& file);

/// Changes one entry of a zip file.
void replace_in_zip(std::filesystem::path const& file, std::string const& name, std::string const& content);

} // namespace hearthcell::tests::archive
