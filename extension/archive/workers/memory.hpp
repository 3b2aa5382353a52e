#pragma once
// Processes below another one, and how much memory they hold.

#include <sys/types.h>

#include <cstdint>
#include <vector>

namespace hearthcell::archive {

/// The processes that one has started and not yet seen the end of: their ids cannot have been given away.
std::vector<pid_t> children_of(pid_t process);

/// What a process alone holds, in bytes: not the files that it has mapped, nor what it shares with others. 0: it is
/// gone.
std::uint64_t own_memory(pid_t process);

/// The same of all processes below one, at any depth.
std::uint64_t memory_below(pid_t process);

} // namespace hearthcell::archive
