#pragma once
// Pictures that stand in a text as letters (base64), and drawings (SVG) that are packed.

#include "extension/archive/files/room.hpp"

#include <string>
#include <string_view>

namespace hearthcell::archive {

std::string bytes_of(std::string const& letters);
std::string letters_of(std::string const& bytes);

/// Whether it begins as XML does, or is packed (gzip): whatever it is called.
bool may_be_drawing(std::string_view start);
bool is_packed(std::string_view start);

/// What a packed drawing holds; anything else as it is.
std::string unpacked(std::string bytes, Room& room);

} // namespace hearthcell::archive
