#pragma once
// A report while it is being written.

#include "extension/archive/files/whole_file.hpp"

#include <optional>

namespace hearthcell::archive {

/// A report that grows row by row and takes its place whole. A small one stays in memory until then, so that it finds
/// room on a disk that a larger one did not fit on; a large one does not.
class ReportFile {
public:
    explicit ReportFile(std::filesystem::path place) : place_(std::move(place)) {}

    void add(std::string_view text);
    void put_in_place();

private:
    std::filesystem::path place_;
    std::string waiting_;
    std::optional<WholeFile> file_;
};

} // namespace hearthcell::archive
