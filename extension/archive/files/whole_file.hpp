#pragma once
// Files that are written whole or not at all; copies and what they hash to.

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// A new file beside its final place, which takes that place whole or never. Throws std::system_error.
class WholeFile {
public:
    explicit WholeFile(std::filesystem::path place, unsigned mode = 0666);
    ~WholeFile(); // without place(): nothing has happened
    WholeFile(WholeFile const&) = delete;
    WholeFile& operator=(WholeFile const&) = delete;

    void write(std::string_view bytes);
    void append(std::filesystem::path const& file);

    /// On the disk, then under its name. `durable`: also if the power fails now.
    void put_in_place(bool durable = true);

private:
    std::filesystem::path place_, aside_;
    int file_ = -1;
};

/// A copy of a file, and what its content hashes to (XXH3, 128 bits). The original is only read; not even that where it
/// is larger than it may be. Throws Trouble.
struct Copied {
    std::string hash;
    std::uint64_t size = 0;
    unsigned mode = 0;
    std::string state; // see state_of
};
Copied copy_and_hash(std::filesystem::path const& from, std::filesystem::path const& to, std::uint64_t largest);

/// Size and time of the last change of a file: when they are others, it is another file. Empty: there is none.
std::string state_of(std::filesystem::path const& file);

std::string hash_of(std::string_view bytes);
std::string hash_of_file(std::filesystem::path const& file);

/// Hands a file over piece by piece. Throws std::system_error.
void read_pieces(std::filesystem::path const& file, std::function<void(std::string_view)> const& take);

std::optional<std::string> content_of(std::filesystem::path const& file); // nothing when it cannot be read

} // namespace hearthcell::archive
