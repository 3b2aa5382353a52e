#include "extension/archive/workers/scratch.hpp"

#include "extension/office/socket_files.hpp"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <string>
#include <system_error>
#include <thread>

namespace hearthcell::archive {
namespace {

namespace fs = std::filesystem;

constexpr auto name_start = "hearthcell-archive-", lock_name = "in-use";

/// -1: there is none, or its owner lives.
int taken_over(fs::path const& folder) {
    int const lock = ::open((folder / lock_name).c_str(), O_RDWR | O_CLOEXEC | O_NOFOLLOW);
    if (lock >= 0 && ::flock(lock, LOCK_EX | LOCK_NB) == 0)
        return lock;
    if (lock >= 0)
        ::close(lock);
    return -1;
}

bool is_folder_of_ours(fs::path const& path) {
    struct stat facts {};
    return ::lstat(path.c_str(), &facts) == 0 && S_ISDIR(facts.st_mode) && facts.st_uid == ::geteuid();
}

void clear_away_of_the_dead(fs::path const& temporary) {
    std::error_code ended;
    fs::directory_iterator entry(temporary, ended);
    for (; !ended && entry != fs::directory_iterator(); entry.increment(ended)) {
        fs::path const folder = entry->path();
        if (!folder.filename().string().starts_with(name_start) || !is_folder_of_ours(folder))
            continue;
        int const lock = taken_over(folder);
        if (lock < 0)
            continue;
        std::error_code ignored;
        for (fs::directory_iterator part(folder, ignored); !ignored && part != fs::directory_iterator();
             part.increment(ignored))
            office::remove_noted_sockets(part->path());
        fs::remove_all(folder, ignored);
        ::close(lock);
    }
}

} // namespace

Scratch::Scratch() {
    fs::path const temporary = fs::temp_directory_path();
    clear_away_of_the_dead(temporary);
    std::string pattern = (temporary / name_start).string();
    pattern += "XXXXXX";
    if (::mkdtemp(pattern.data()) == nullptr)
        throw std::system_error(errno, std::generic_category(), "no temporary folder " + pattern);
    folder = pattern;
    // It gets its name when it is locked: what has none is not looked at by others.
    fs::path const unnamed = folder / "lock";
    lock_ = ::open(unnamed.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (lock_ < 0 || ::flock(lock_, LOCK_EX | LOCK_NB) != 0 ||
        ::rename(unnamed.c_str(), (folder / lock_name).c_str()) != 0) {
        int const why = errno;
        std::error_code ignored;
        fs::remove_all(folder, ignored);
        throw std::system_error(why, std::generic_category(), folder.string());
    }
}

Scratch::~Scratch() {
    std::error_code ignored;
    fs::remove_all(folder, ignored);
    ::close(lock_);
}

void clear_away(fs::path const& part) {
    std::error_code ignored;
    for (int tries = 0; tries < 20 && fs::exists(part, ignored); ++tries) {
        office::remove_noted_sockets(part);
        fs::remove_all(part, ignored);
        if (ignored)
            std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
}

void clear_away_if_last(fs::path const& folder) {
    std::error_code ended;
    for (fs::directory_iterator part(folder, ended); !ended && part != fs::directory_iterator(); part.increment(ended))
        if (part->path().filename() != lock_name)
            return;
    if (ended)
        return;
    int const lock = taken_over(folder);
    if (lock < 0)
        return;
    fs::remove_all(folder, ended);
    ::close(lock);
}

} // namespace hearthcell::archive
