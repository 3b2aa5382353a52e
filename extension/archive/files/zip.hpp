#pragma once
// Reading a zip file.

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

struct zip;

namespace hearthcell::archive {

struct CloseZip {
    void operator()(zip* archive) const; // without a change
};
using OpenZip = std::unique_ptr<zip, CloseZip>;

enum class ZipFor { reading, changing };

/// Throws Trouble(corrupt) where it is no zip file, as all below do where it is damaged.
OpenZip open_zip(std::filesystem::path const& file, ZipFor purpose);

/// Hands an entry over piece by piece, until `take` says that it has enough. Its checksum is checked at the end.
void read_entry(zip* archive, std::uint64_t entry, std::function<bool(std::string_view)> const& take);

/// A zip file, read only.
class Zip {
public:
    explicit Zip(std::filesystem::path const& file);

    /// What its entries claim to be together when unpacked.
    [[nodiscard]] std::uint64_t unpacked_size() const;

    [[nodiscard]] bool has(std::string const& entry) const;

    void read(std::string const& entry, std::function<void(std::string_view)> const& take) const;
    [[nodiscard]] std::string text(std::string const& entry, std::size_t at_most) const;

private:
    OpenZip archive_;
};

} // namespace hearthcell::archive
