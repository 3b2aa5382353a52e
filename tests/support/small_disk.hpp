#pragma once
// A disk that is soon full.

#include <filesystem>
#include <string>

namespace hearthcell::tests {

/// A small disk of its own, for as long as this object lives. Only root can have one.
class SmallDisk {
public:
    SmallDisk(std::filesystem::path place, std::string const& options);
    ~SmallDisk();
    SmallDisk(SmallDisk const&) = delete;
    SmallDisk& operator=(SmallDisk const&) = delete;

    [[nodiscard]] bool mounted() const { return why_not_.empty(); }
    [[nodiscard]] std::string const& why_not() const { return why_not_; }
    [[nodiscard]] bool make_read_only() const;

private:
    std::filesystem::path place_;
    std::string why_not_;
};

} // namespace hearthcell::tests
