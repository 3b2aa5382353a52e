#include "extension/archive/records/output_folder.hpp"

#include "extension/archive/records/finished.hpp"
#include "extension/archive/records/run_index.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>
#include <utility>

namespace hearthcell::archive {
namespace {

constexpr off_t kept_room = 1 << 18; // problems.csv of a thousand workbooks that found the disk full

} // namespace

OutputFolder::OutputFolder(std::filesystem::path const& output) : state_(Records(output).folder()) {
    for (char const* report :
         {"changes.csv", "collected.csv", "problems.csv", "remarks.csv", "summary.txt", "summary.ods", "layouts.csv",
          "formulas.csv", "same-words.txt", "carried.csv", "constants.csv", "pairs.csv", "read.csv", "old-and-new.csv"})
        if (std::filesystem::exists(output / report) && !std::filesystem::exists(state_))
            throw std::runtime_error((output / report).string() +
                                     " is not ours to replace: take another output folder");
    std::filesystem::create_directories(state_);
    lock_ = ::open((state_ / "lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (lock_ < 0)
        throw std::system_error(errno, std::generic_category(), output.string());
    if (::flock(lock_, LOCK_EX | LOCK_NB) != 0)
        throw std::runtime_error("another run is active in " + output.string());
    // The room is in the lock's own file, which is there all the time anyway.
    if (int const problem = ::posix_fallocate(lock_, 0, kept_room); problem != 0)
        throw std::system_error(problem, std::generic_category(), output.string());
    IndexWriter::remove(output); // of an earlier run
}

OutputFolder::~OutputFolder() {
    release_room();
    ::close(lock_);
}

void OutputFolder::release_room() {
    if (::ftruncate(lock_, 0) != 0) { // then the room stays kept, which harms nobody
    }
}

QuietFolder::QuietFolder(std::filesystem::path const& output) {
    lock_ = ::open((Records(output).folder() / "lock").c_str(), O_RDONLY | O_CLOEXEC);
    if (lock_ < 0)
        throw std::runtime_error("there is no run in " + output.string());
    if (::flock(lock_, LOCK_SH | LOCK_NB) != 0) {
        ::close(lock_);
        throw std::runtime_error("a run is active in " + output.string());
    }
}

QuietFolder::~QuietFolder() {
    if (lock_ >= 0)
        ::close(lock_);
}

QuietFolder::QuietFolder(QuietFolder&& other) noexcept : lock_(std::exchange(other.lock_, -1)) {}

} // namespace hearthcell::archive
