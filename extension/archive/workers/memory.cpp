#include "extension/archive/workers/memory.hpp"

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <system_error>

namespace hearthcell::archive {

std::vector<pid_t> children_of(pid_t process) {
    std::vector<pid_t> ids;
    std::error_code ended; // threads come and go while we read
    std::filesystem::directory_iterator thread("/proc/" + std::to_string(process) + "/task", ended);
    for (; !ended && thread != std::filesystem::directory_iterator(); thread.increment(ended)) {
        std::ifstream list(thread->path() / "children");
        for (pid_t id = 0; list >> id;)
            ids.push_back(id);
    }
    return ids;
}

std::uint64_t own_memory(pid_t process) {
    std::ifstream pages("/proc/" + std::to_string(process) + "/statm");
    std::uint64_t all = 0, resident = 0, shared = 0;
    pages >> all >> resident >> shared;
    return resident > shared ? (resident - shared) * static_cast<std::uint64_t>(::sysconf(_SC_PAGESIZE)) : 0;
}

std::uint64_t memory_below(pid_t process) {
    std::uint64_t sum = 0;
    for (pid_t const child : children_of(process))
        sum += own_memory(child) + memory_below(child);
    return sum;
}

} // namespace hearthcell::archive
