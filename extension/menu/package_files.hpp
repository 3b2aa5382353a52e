#pragma once
// Where the files of the package lie.

#include "extension/menu/surroundings.hpp"

namespace hearthcell::menu {

/// The address of the folder that the package was unpacked into; empty where the office does not know it.
rtl::OUString package_folder(Surroundings const& surroundings);

/// The address of a packaged file, given as folder/ and name: the one of the office's language, which is in a folder of
/// its own ("template/Hearthcell (fr)/"), else the English one; empty where neither is there.
rtl::OUString packaged_file(Surroundings const& surroundings, rtl::OUString const& package, std::string_view folder,
                            std::string_view name);

/// As people write it: /home/… rather than file:///home/…
rtl::OUString path_of(rtl::OUString const& url);
rtl::OUString url_of(rtl::OUString const& path);

/// Whether there is a file or folder.
bool is_there(rtl::OUString const& path);

} // namespace hearthcell::menu
