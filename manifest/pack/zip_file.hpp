#pragma once
// Zip files that are the same bytes whenever they are made.

#include <filesystem>
#include <span>
#include <string>

namespace hearthcell::pack {

struct Entry {
    std::string path, content;
    bool is_program = false; // unpacked by a tool that knows of rights, it may be run
};

/// Writes a zip file in the order of its entries. All bear one fixed date and no owner, so that the same content gives
/// the same bytes. Throws std::runtime_error with what is wrong in words.
void write_zip(std::span<Entry const> entries, std::filesystem::path const& file);

} // namespace hearthcell::pack
