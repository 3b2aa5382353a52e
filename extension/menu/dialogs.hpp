#pragma once
// The small dialogs that several commands need.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Shows what a command has to say, if it has.
void show(Surroundings const& surroundings, Answer const& answer);

/// Asks where a copy is to be saved; starts in the given folder, if there is one. Empty when the user gives up.
rtl::OUString ask_where_to_save(Surroundings const& surroundings, rtl::OUString const& folder,
                                rtl::OUString const& name);

} // namespace hearthcell::menu
