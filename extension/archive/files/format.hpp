#pragma once
// Which format a file is in, and whether it may be given to an office at all.

#include "extension/archive/files/stored.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>

namespace hearthcell::archive {

/// The formats of workbooks that are recalculated.
enum class Format { ods, fods, xlsx, xls };

/// By the name's ending, in any letter case.
std::optional<Format> format_of(std::filesystem::path const& file);

/// ".ods"
std::string_view ending(Format format);

/// Looks at a file before the office does, which would wait, guess or swallow memory: empty files, damaged ones, other
/// things under a workbook's name, passwords, zips that unpack to more than `largest` bytes, and what would not find
/// room in memory. The sink gets what the file holds. Gives false where only the office can read that. Throws Trouble.
bool inspect(std::filesystem::path const& file, Format format, std::uint64_t largest, Room& room, CellSink& sink);

/// The results that the file holds; nothing where only the office can read them.
std::optional<StoredResults> inspect(std::filesystem::path const& file, Format format, std::uint64_t largest);

} // namespace hearthcell::archive
