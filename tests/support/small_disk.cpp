#include "small_disk.hpp"

#include <sys/mount.h>

#include <cerrno>
#include <cstring>

namespace hearthcell::tests {

SmallDisk::SmallDisk(std::filesystem::path place, std::string const& options) : place_(std::move(place)) {
    std::filesystem::create_directories(place_);
    if (::mount("tmpfs", place_.c_str(), "tmpfs", 0, options.c_str()) != 0)
        why_not_ = std::strerror(errno);
}

SmallDisk::~SmallDisk() {
    if (mounted())
        ::umount2(place_.c_str(), MNT_DETACH);
}

bool SmallDisk::make_read_only() const {
    return ::mount(nullptr, place_.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0;
}

} // namespace hearthcell::tests
