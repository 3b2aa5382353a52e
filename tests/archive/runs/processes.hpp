#pragma once
// The processes of this machine, as /proc shows them.

#include <sys/types.h>

#include <string>
#include <vector>

namespace hearthcell::tests::archive {

std::vector<pid_t> all_processes();

/// Name and the fields after it, of /proc/ID/stat; the name may hold anything, the last bracket ends it.
struct Facts {
    std::string name;
    std::vector<std::string> fields; // state, parent, …
};
Facts facts_of(pid_t process);

/// Those of this name that one of the parents has started and that still run.
std::vector<pid_t> children_of(std::vector<pid_t> const& parents, std::string const& name);

/// Processor time of a process so far, in seconds.
double processor_time(pid_t process);

} // namespace hearthcell::tests::archive
