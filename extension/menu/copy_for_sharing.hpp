#pragma once
// The menu's command 'copy for sharing'.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Saves a copy of the frame's document, for people who do not have Hearthcell. Asks for the target where none is
/// given. The document itself is not touched: its copy is what is changed, out of sight, after this has returned;
/// where nobody attends, before.
Answer copy_for_sharing(Surroundings const& surroundings, rtl::OUString const& target);

} // namespace hearthcell::menu
