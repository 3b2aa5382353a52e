#pragma once
// A run of hearthcell-archive beside the office: followed, shown, stopped.

#include "extension/menu/archive_program.hpp"
#include "extension/menu/surroundings.hpp"

#include <memory>

namespace hearthcell::menu {

/// Follows the program until it ends, and returns at once: the office stays usable. A dialog shows how far it is and
/// can stop it; its summary is opened at the end, or what went wrong is said. An office that ends stops it, too.
void start_archive_job(Surroundings const& surroundings, rtl::OUString const& results,
                       std::unique_ptr<ArchiveProgram> program);

/// That it could not be done, with what the program says.
rtl::OUString with_cause_of_program(Surroundings const& surroundings, rtl::OUString const& cause);

} // namespace hearthcell::menu
