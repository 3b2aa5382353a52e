#include "extension/archive/files/whole_file.hpp"

#include "extension/archive/files/problem.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#define XXH_INLINE_ALL // the one of the header, for the processor that it is compiled for
#include <xxhash.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <iterator>
#include <memory>
#include <system_error>
#include <utility>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr std::size_t piece = 1 << 18;

class Descriptor {
public:
    Descriptor(std::filesystem::path const& path, int flags, unsigned mode = 0)
        : number_(::open(path.c_str(), flags | O_CLOEXEC, mode)) {}
    ~Descriptor() {
        if (number_ >= 0)
            ::close(number_);
    }
    Descriptor(Descriptor const&) = delete;
    Descriptor& operator=(Descriptor const&) = delete;
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

[[noreturn]] void failed(std::filesystem::path const& path) {
    throw std::system_error(errno, std::generic_category(), path.string());
}

void write_all(int file, std::string_view bytes, std::filesystem::path const& path) {
    while (!bytes.empty()) {
        ssize_t const written = ::write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            failed(path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
}

struct FreeHash {
    void operator()(XXH3_state_t* state) const { XXH3_freeState(state); }
};

class Hash {
public:
    Hash() { XXH3_128bits_reset(state_.get()); }
    void add(std::string_view bytes) { XXH3_128bits_update(state_.get(), bytes.data(), bytes.size()); }
    [[nodiscard]] std::string text() const {
        XXH128_hash_t const sum = XXH3_128bits_digest(state_.get());
        std::array<char, 33> digits{};
        std::snprintf(digits.data(), digits.size(), "%016llx%016llx", static_cast<unsigned long long>(sum.high64),
                      static_cast<unsigned long long>(sum.low64));
        return digits.data();
    }

private:
    std::unique_ptr<XXH3_state_t, FreeHash> state_{XXH3_createState()};
};

/// Reads a file piece by piece; false when it cannot be read to its end (errno says why).
template <class Take> bool read_all(int file, Take const& take) {
    std::vector<char> buffer(piece);
    for (;;) {
        ssize_t const got = ::read(file, buffer.data(), buffer.size());
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return false;
        if (got == 0)
            return true;
        take(std::string_view(buffer.data(), static_cast<std::size_t>(got)));
    }
}

std::string state_in(struct stat const& facts) {
    return std::to_string(facts.st_size) + " " + std::to_string(facts.st_mtim.tv_sec) + " " +
           std::to_string(facts.st_mtim.tv_nsec);
}

} // namespace

WholeFile::WholeFile(std::filesystem::path place, unsigned mode)
    : place_(std::move(place)),
      // Short, since the name itself may already be as long as a name can be.
      aside_(place_.parent_path() / (".hearthcell-" + hash_of(place_.filename().string()).substr(0, 12) + ".tmp")) {
    ::unlink(aside_.c_str()); // of a run that was cut off
    file_ = ::open(aside_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, mode);
    if (file_ < 0)
        failed(place_);
}

WholeFile::~WholeFile() {
    if (file_ < 0)
        return;
    ::close(file_);
    ::unlink(aside_.c_str());
}

void WholeFile::write(std::string_view bytes) {
    write_all(file_, bytes, place_);
}

void WholeFile::append(std::filesystem::path const& from) {
    read_pieces(from, [&](std::string_view bytes) { write(bytes); });
}

void WholeFile::put_in_place(bool durable) {
    if (durable && ::fsync(file_) != 0)
        failed(place_);
    if (::close(std::exchange(file_, -1)) != 0 || ::rename(aside_.c_str(), place_.c_str()) != 0) {
        int const why = errno;
        ::unlink(aside_.c_str());
        errno = why;
        failed(place_);
    }
    if (durable) { // the name, too
        Descriptor const folder(place_.parent_path(), O_RDONLY | O_DIRECTORY);
        ::fsync(folder.number());
    }
}

Copied copy_and_hash(std::filesystem::path const& from, std::filesystem::path const& to, std::uint64_t largest) {
    Descriptor const source(from, O_RDONLY | O_NOCTTY | O_NONBLOCK); // a pipe in its place must not make us wait
    struct stat facts {};
    if (source.number() < 0 || ::fstat(source.number(), &facts) != 0)
        throw Trouble(Reason::unreadable, std::strerror(errno));
    if (!S_ISREG(facts.st_mode))
        throw Trouble(Reason::unreadable, "no regular file");
    check_size("it has", static_cast<std::uint64_t>(facts.st_size), largest);
    Descriptor const copy(to, O_WRONLY | O_CREAT | O_TRUNC, 0600);
    if (copy.number() < 0)
        failed(to);
    Hash hash;
    Copied copied;
    copied.mode = facts.st_mode & 0777U;
    copied.state = state_in(facts);
    bool const whole = read_all(source.number(), [&](std::string_view bytes) {
        hash.add(bytes);
        copied.size += bytes.size();
        check_size("it has", copied.size, largest); // it may be growing
        write_all(copy.number(), bytes, to);
    });
    if (!whole)
        throw Trouble(Reason::unreadable, std::strerror(errno));
    copied.hash = hash.text();
    return copied;
}

std::string state_of(std::filesystem::path const& file) {
    struct stat facts {};
    return ::stat(file.c_str(), &facts) == 0 ? state_in(facts) : std::string();
}

std::string hash_of(std::string_view bytes) {
    Hash hash;
    hash.add(bytes);
    return hash.text();
}

std::string hash_of_file(std::filesystem::path const& file) {
    Hash hash;
    read_pieces(file, [&](std::string_view bytes) { hash.add(bytes); });
    return hash.text();
}

void read_pieces(std::filesystem::path const& file, std::function<void(std::string_view)> const& take) {
    Descriptor const source(file, O_RDONLY);
    if (source.number() < 0 || !read_all(source.number(), take))
        failed(file);
}

std::optional<std::string> content_of(std::filesystem::path const& file) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return std::nullopt;
    std::string content{std::istreambuf_iterator<char>(stream), {}};
    return stream.bad() ? std::nullopt : std::optional(std::move(content));
}

} // namespace hearthcell::archive
