#pragma once
// What a file holds.

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace hearthcell::tests {

/// All bytes of a file; none where there is no such file.
inline std::string content(std::filesystem::path const& file) {
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

} // namespace hearthcell::tests
