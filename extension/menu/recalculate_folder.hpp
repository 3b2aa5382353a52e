#pragma once
// The menu's command 'recalculate a folder'.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Lets hearthcell-archive recalculate a folder of old sheets, beside the office, and opens its summary at the end.
/// Asks for the folders where they are not given; `source` of the surroundings and `results` are addresses.
Answer recalculate_folder(Surroundings const& surroundings, rtl::OUString const& results);

} // namespace hearthcell::menu
