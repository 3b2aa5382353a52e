#pragma once
// The folder of old sheets and the one for the results.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// What is wrong with them, in words; empty where nothing is. Both are paths.
rtl::OUString trouble_with_folders(Surroundings const& surroundings, rtl::OUString const& source,
                                   rtl::OUString const& results);

} // namespace hearthcell::menu
