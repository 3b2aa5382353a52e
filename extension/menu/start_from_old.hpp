#pragma once
// The menu's command 'start from an old sheet'.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Opens an old sheet as a new document that remembers its original, so that saving never touches that. Asks for it
/// where it is not given as `source` of the surroundings.
Answer start_from_old_sheet(Surroundings const& surroundings);

} // namespace hearthcell::menu
