#pragma once
// The parts of a zip file, some of them rewritten.

#include "extension/archive/files/zip.hpp"

namespace hearthcell::archive {

/// A zip file in which parts are replaced. They are counted, as two of them can have one name.
class ZipParts {
public:
    explicit ZipParts(std::filesystem::path const& file); // without write(): nothing will have happened

    [[nodiscard]] std::size_t size() const;
    [[nodiscard]] std::string name(std::size_t part) const;

    /// Hands a part over piece by piece, until `take` says that it has enough.
    void read(std::size_t part, std::function<bool(std::string_view)> const& take) const;

    /// The file must stay until write().
    void replace(std::size_t part, std::filesystem::path const& by);
    void write();

private:
    OpenZip zip_;
};

} // namespace hearthcell::archive
