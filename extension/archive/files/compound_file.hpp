#pragma once
// Microsoft's container of streams, in which .xls files and encrypted ones lie.

#include "extension/archive/files/room.hpp"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

struct _GsfInfile;

namespace hearthcell::archive {

/// Microsoft's container of streams: .xls, encrypted .xlsx. Throws Trouble(corrupt) where it is damaged.
class CompoundFile {
public:
    explicit CompoundFile(std::filesystem::path const& file);

    [[nodiscard]] bool has(char const* stream) const;
    [[nodiscard]] std::string content(char const* stream, Room& room) const;

private:
    struct Release {
        void operator()(_GsfInfile* file) const;
    };
    std::unique_ptr<_GsfInfile, Release> file_;
};

} // namespace hearthcell::archive
