#pragma once
// The menu's command 'do the same in a folder'.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// Compares the open document with the original that it was started from, shows what differs, and has
/// hearthcell-archive do the same on every sheet of that layout in a folder, beside the office. The document may be
/// unsaved and stays as it is. Asks for the original and the folders where they are not given; `original` and `source`
/// of the surroundings and `results` are addresses.
Answer same_in_folder(Surroundings const& surroundings, rtl::OUString const& results);

} // namespace hearthcell::menu
