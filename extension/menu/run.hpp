#pragma once
// From a command of the menu to the code that does it.

#include "extension/menu/commands.hpp"
#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Carries a command out and shows what it has to say. target: where a copy goes, empty to ask. Never throws.
Answer run(Command command, Surroundings const& surroundings, rtl::OUString const& target) noexcept;

} // namespace hearthcell::menu
