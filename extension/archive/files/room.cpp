#include "extension/archive/files/room.hpp"

#include "extension/archive/files/problem.hpp"

namespace hearthcell::archive {
namespace {

constexpr std::uint64_t always = std::uint64_t{64} << 20;

} // namespace

std::uint64_t Room::for_workbooks_up_to(std::uint64_t size) {
    // Results are about as large in memory as in a file; the office needs the greater part of what a worker may have.
    return always + size / 2;
}

bool Room::try_take(std::uint64_t bytes) noexcept {
    if (bytes > left_)
        return false;
    left_ -= bytes;
    return true;
}

void Room::take(std::uint64_t bytes) {
    if (!try_take(bytes))
        throw Trouble(Reason::too_large, "its formulas and results take more memory than --size-limit allows");
}

} // namespace hearthcell::archive
