#pragma once
// The parts of a zip file, some of them rewritten.

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

struct zip;

namespace hearthcell::archive {

/// A zip file in which parts are replaced. They are counted, as two of them can have one name.
class ZipParts {
public:
    explicit ZipParts(std::filesystem::path const& file); // throws Trouble(corrupt)
    ~ZipParts();                                          // without write(): nothing has happened
    ZipParts(ZipParts const&) = delete;
    ZipParts& operator=(ZipParts const&) = delete;

    [[nodiscard]] std::size_t size() const;
    [[nodiscard]] std::string name(std::size_t part) const;

    /// Hands a part over piece by piece, until `take` says that it has enough.
    void read(std::size_t part, std::function<bool(std::string_view)> const& take) const;

    /// The file must stay until write().
    void replace(std::size_t part, std::filesystem::path const& by);
    void write();

private:
    struct zip* zip_;
    std::string file_;
};

} // namespace hearthcell::archive
