#pragma once
// What lies in a folder, however it changes meanwhile.

#include <filesystem>
#include <system_error>
#include <vector>

namespace hearthcell::tests {

/// Everything below a folder that another process may be filling or emptying meanwhile: what is gone by the time that
/// it is looked into is left out. A recursive_directory_iterator throws there.
inline std::vector<std::filesystem::path> all_below(std::filesystem::path const& folder) {
    std::vector<std::filesystem::path> found;
    std::vector<std::filesystem::path> open{folder};
    while (!open.empty()) {
        std::filesystem::path const here = open.back();
        open.pop_back();
        std::error_code problem;
        std::filesystem::directory_iterator entry(here, problem);
        for (; entry != std::filesystem::directory_iterator(); entry.increment(problem)) {
            found.push_back(entry->path());
            std::error_code gone;
            if (entry->symlink_status(gone).type() == std::filesystem::file_type::directory)
                open.push_back(entry->path());
        }
        if (problem && problem != std::errc::no_such_file_or_directory)
            throw std::filesystem::filesystem_error("looking at all below", here, problem);
    }
    return found;
}

} // namespace hearthcell::tests
