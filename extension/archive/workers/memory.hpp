#pragma once
// How much memory processes hold.

#include <sys/types.h>

#include <cstdint>

namespace hearthcell::archive {

/// What a process alone holds, in bytes: not the files that it has mapped, nor what it shares with others. 0: it is
/// gone.
std::uint64_t own_memory(pid_t process);

/// The same of all processes below one, at any depth.
std::uint64_t memory_below(pid_t process);

} // namespace hearthcell::archive
