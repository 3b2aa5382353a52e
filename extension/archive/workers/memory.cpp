#include "extension/archive/workers/memory.hpp"

#include "extension/office/process.hpp"

#include <unistd.h>

#include <fstream>
#include <string>

namespace hearthcell::archive {

std::uint64_t own_memory(pid_t process) {
    std::ifstream pages("/proc/" + std::to_string(process) + "/statm");
    std::uint64_t all = 0, resident = 0, shared = 0;
    pages >> all >> resident >> shared;
    return resident > shared ? (resident - shared) * static_cast<std::uint64_t>(::sysconf(_SC_PAGESIZE)) : 0;
}

std::uint64_t memory_below(pid_t process) {
    std::uint64_t sum = 0;
    for (pid_t const child : office::children_of(process))
        sum += own_memory(child) + memory_below(child);
    return sum;
}

} // namespace hearthcell::archive
