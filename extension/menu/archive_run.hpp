#pragma once
// What a run of hearthcell-archive is asked for, and what comes of it.

#include "extension/menu/surroundings.hpp"

#include <string>
#include <vector>

namespace hearthcell::menu {

struct ArchiveRun {
    std::vector<std::string> arguments; // of the program, but where its results go and how it tells how far it is
    rtl::OUString results;              // the folder they go to, as a path
    Text title;                         // of the window that shows how far it is
    Text failed, stopped;               // that it could not be done, or was not done to its end
};

/// How it ended: the program's exit status, and what it said besides.
struct RunEnd {
    int status;
    rtl::OUString said;

    [[nodiscard]] bool is_stopped() const;
    [[nodiscard]] bool has_failed() const; // as a whole; not where it had problems with some workbooks
};

/// The program, of those that are installed; empty where none is.
std::string archive_program(Surroundings const& surroundings);

/// That none is, in words; empty where one is.
rtl::OUString archive_program_missing(Surroundings const& surroundings);

/// That it could not be done, with what the program or the system says.
Answer not_done(Surroundings const& surroundings, ArchiveRun const& run, rtl::OUString const& cause);

/// After a run with a summary: opens it, or says why there is none.
Answer open_summary(Surroundings const& surroundings, ArchiveRun const& run, RunEnd const& end);

} // namespace hearthcell::menu
