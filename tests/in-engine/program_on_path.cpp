#include "program_on_path.hpp"

#include <unistd.h>

#include <cstdlib>
#include <fstream>

namespace hearthcell::tests {

namespace {

std::string call_of_the_built_one() {
    bool const other_root = std::getenv("HEARTHCELL_OFFICE_ROOT") != nullptr;
    std::string const our_root = "/usr/sbin/chroot /proc/" + std::to_string(::getpid()) + "/root ";
    return "exec " + (other_root ? our_root : "") + "'" ARCHIVE_TOOL "' \"$@\"\n";
}

} // namespace

ProgramOnPath::ProgramOnPath(std::filesystem::path const& folder) : ProgramOnPath(folder, call_of_the_built_one()) {}

ProgramOnPath::ProgramOnPath(std::filesystem::path const& folder, std::string const& script)
    : path_("PATH", folder.string() + ":" + std::getenv("PATH")) {
    std::filesystem::create_directories(folder);
    std::filesystem::path const program = folder / "hearthcell-archive";
    std::ofstream(program) << "#!/bin/sh\n" << script;
    std::filesystem::permissions(program, std::filesystem::perms::owner_all);
}

} // namespace hearthcell::tests
