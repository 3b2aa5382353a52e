#pragma once
// A compound file with another stream in it.

#include <filesystem>
#include <string>

namespace hearthcell::archive {

/// Writes the file anew, all in it as it was but for one stream of its root. Throws Trouble.
void copy_compound_file(std::filesystem::path const& file, std::string const& stream, std::string const& content);

} // namespace hearthcell::archive
