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

/// A zip file, read only. Throws Trouble(corrupt) where it is damaged.
class Zip {
public:
    explicit Zip(std::filesystem::path const& file);

    /// What its entries claim to be together when unpacked.
    [[nodiscard]] std::uint64_t unpacked_size() const;

    [[nodiscard]] bool has(std::string const& entry) const;

    /// Hands an entry over piece by piece. Its checksum is checked at the end.
    void read(std::string const& entry, std::function<void(std::string_view)> const& take) const;
    [[nodiscard]] std::string text(std::string const& entry, std::size_t at_most) const;

private:
    struct Close {
        void operator()(zip* archive) const;
    };
    std::unique_ptr<zip, Close> archive_;
};

} // namespace hearthcell::archive
