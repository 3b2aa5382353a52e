#pragma once
// The private copy of a workbook without its links, and what an office made of it with them.

#include "extension/archive/files/format.hpp"
#include "extension/archive/files/room.hpp"
#include "extension/archive/links/outside.hpp"

#include <filesystem>

namespace hearthcell::archive {

/// Hides in a workbook what it links to. Throws Trouble(corrupt) where a part cannot be read, which might link;
/// Trouble(too_large) where its XML does not fit into the room.
void hide_links(std::filesystem::path const& workbook, Format format, Outside& outside, Room& room);

/// Puts the links back into a workbook that an office has saved.
void put_links_back(std::filesystem::path const& workbook, Format format, Outside const& outside, Room& room);

} // namespace hearthcell::archive
