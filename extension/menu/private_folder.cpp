#include "extension/menu/private_folder.hpp"

#include "extension/office/environment.hpp"

#include <ftw.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

namespace hearthcell::menu {
namespace {

constexpr int open_at_once = 16; // folders

int remove_one(char const* path, struct stat const*, int, FTW*) {
    return std::remove(path);
}

} // namespace

// (std::filesystem would ask for a newer C++ library than every system has that the package runs on.)
PrivateFolder::PrivateFolder() {
    std::string const temporary = office::setting("TMPDIR");
    path_ = (temporary.empty() ? "/tmp" : temporary) + "/hearthcell-XXXXXX";
    if (::mkdtemp(path_.data()) == nullptr)
        throw std::system_error(errno, std::generic_category(), path_);
}

PrivateFolder::~PrivateFolder() {
    ::nftw(path_.c_str(), remove_one, open_at_once, FTW_DEPTH | FTW_PHYS | FTW_MOUNT);
}

} // namespace hearthcell::menu
