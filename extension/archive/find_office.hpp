#pragma once
// LibreOffice, wherever it is installed, and its libraries.

#include <filesystem>

namespace hearthcell::archive {

/// The folder `program` of an installation. chosen: the folder of one, or its `program`; when it is empty, the usual
/// places are looked at. Throws std::runtime_error, with the places, where there is none.
std::filesystem::path find_office(std::filesystem::path const& chosen);

/// Loads from there the libraries that talk to an office: this program can start without them.
void load_libraries(std::filesystem::path const& program);

} // namespace hearthcell::archive
