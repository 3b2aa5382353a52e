#pragma once
// The scheduler: gives workbooks to workers, and goes on when one dies.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/workers/progress.hpp"
#include "extension/archive/workers/task.hpp"

#include <map>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A run cannot go on at all.
class CannotRun : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

struct Ran {
    std::map<std::size_t, Problem> failed; // workbooks that are not finished, by number
    enum class State : char { not_reached, without_copy, has_copy };
    std::vector<State> states; // of all workbooks, by number
    int signal = 0;            // that stopped the run; 0: it came to its end
};

/// Of an attempt to draw the summary.
struct Drawn {
    std::string why_not; // empty: it is there
    int signal = 0;      // that stopped it
};

/// The workers, each with an office.
class Pool {
public:
    Pool(Task const& task, Progress& progress);
    ~Pool();
    Pool(Pool const&) = delete;
    Pool& operator=(Pool const&) = delete;

    Ran run(); // does all workbooks of the task. Throws CannotRun

    /// Has one of them draw the pages in a file (see page.hpp) as a workbook of this name in the output folder.
    Drawn draw(std::string const& pages, std::string const& name);

private:
    class Work;
    std::unique_ptr<Work> work_;
};

} // namespace hearthcell::archive
