#pragma once
// The dialog that asks which folder is to be recalculated, and how.

#include "extension/menu/surroundings.hpp"

#include <optional>

namespace hearthcell::menu {

/// What is to be recalculated, and how.
struct FolderTask {
    rtl::OUString source, results; // paths
    rtl::OUString collect;         // names, with commas; may be empty
    enum class Copies { whole, shared, none } copies = Copies::whole;
};

/// Asks for it. Nothing when the user gives up.
std::optional<FolderTask> ask_for_folder_task(Surroundings const& surroundings);

} // namespace hearthcell::menu
