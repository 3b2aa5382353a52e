#pragma once
// How much the readers of one workbook may hold in memory.

#include <cstdint>

namespace hearthcell::archive {

/// A budget of bytes. A file of a few kB can say 'this text, a million times': so whatever a reader keeps is taken from
/// the room of its workbook first, once for each time that it is kept.
class Room {
public:
    explicit Room(std::uint64_t bytes) : left_(bytes) {}
    Room(Room const&) = delete;
    Room& operator=(Room const&) = delete;

    /// That goes with a limit of the size of a workbook, both in bytes.
    static std::uint64_t for_workbooks_up_to(std::uint64_t size);

    [[nodiscard]] bool try_take(std::uint64_t bytes) noexcept;
    void take(std::uint64_t bytes); // throws Trouble(too_large)
    void give_back(std::uint64_t bytes) noexcept { left_ += bytes; }

private:
    std::uint64_t left_;
};

} // namespace hearthcell::archive
