#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// The content of the first of these streams that a compound file (.xls and others) has. Throws Trouble: corrupt where
/// the file is not whole, unsupported where it has none of them.
std::string stream_in_compound(std::filesystem::path const& file, std::vector<char const*> const& names);

} // namespace hearthcell::archive
