#pragma once

#include "archive/problem.hpp"
#include "archive/progress.hpp"
#include "archive/task.hpp"

#include <map>
#include <stdexcept>
#include <string>

namespace hearthcell::archive {

/// A run cannot go on at all.
class CannotRun : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

struct Ran {
    std::map<std::size_t, Problem> failed; // workbooks that are not finished, by number
    int signal = 0;                        // that stopped the run; 0: it came to its end
};

/// Does all workbooks of a task with several workers. Throws CannotRun.
Ran run(Task const& task, Progress& progress);

} // namespace hearthcell::archive
