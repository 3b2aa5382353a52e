#pragma once
// A program without a network that sees only its own folders and what programs are made of.

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::office {

/// What a confined program sees.
struct Confinement {
    std::filesystem::path program;              // the folder of its own files; read only
    std::vector<std::filesystem::path> folders; // where it reads and writes
    std::filesystem::path temporary;            // what it takes for /tmp
};

/// Whether this system lets programs be confined: there is bubblewrap, and the kernel allows it what it needs. Tried
/// once.
bool can_confine();

/// The words to put before a command line: those of bubblewrap.
std::vector<std::string> confining_words(Confinement const& confinement);

} // namespace hearthcell::office
