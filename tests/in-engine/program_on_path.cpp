#include "program_on_path.hpp"

#include <unistd.h>

#include <cstdlib>
#include <fstream>

namespace hearthcell::tests {

ProgramOnPath::ProgramOnPath(std::filesystem::path const& folder) : before_(std::getenv("PATH")) {
    std::filesystem::create_directories(folder);
    std::filesystem::path const program = folder / "hearthcell-archive";
    bool const other_root = std::getenv("HEARTHCELL_OFFICE_ROOT") != nullptr;
    std::string const our_root = "/usr/sbin/chroot /proc/" + std::to_string(::getpid()) + "/root ";
    std::ofstream(program) << "#!/bin/sh\nexec " << (other_root ? our_root : "") << "'" ARCHIVE_TOOL "' \"$@\"\n";
    std::filesystem::permissions(program, std::filesystem::perms::owner_all);
    ::setenv("PATH", (folder.string() + ":" + before_).c_str(), 1);
}

ProgramOnPath::~ProgramOnPath() {
    ::setenv("PATH", before_.c_str(), 1);
}

} // namespace hearthcell::tests
