#pragma once
// Which edition of Hearthcell a package is, and which one the user's own LibreOffice has.

#include <filesystem>
#include <string>

namespace hearthcell::archive {

/// As "Hearthcell 0.2.0", of an .oxt or of the folder of an unpacked one. Throws std::invalid_argument where it is
/// none.
std::string edition_of(std::filesystem::path const& package);

/// The one that the user put into the LibreOffice of this home; empty where there is none.
std::string edition_in_own_office();

} // namespace hearthcell::archive
