#pragma once
// A run of hearthcell-archive beside the office: begun, followed, shown, stopped.

#include "extension/menu/archive_run.hpp"

#include <functional>

namespace hearthcell::menu {

/// What comes after a run, in the office's main thread.
using AfterRun = std::function<Answer(Surroundings const&, ArchiveRun const&, RunEnd const&)>;

/// Starts the program, and returns at once: the office stays usable. A dialog shows how far it is and can stop it; at
/// the end what comes after it is done, and what that answers is shown. An office that ends stops it, too.
Answer start_archive_job(Surroundings const& surroundings, ArchiveRun const& run, AfterRun after);

} // namespace hearthcell::menu
