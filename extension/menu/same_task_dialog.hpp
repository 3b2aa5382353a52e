#pragma once
// The dialog that asks what is compared with what, and in which folder the same is to be done.

#include "extension/menu/surroundings.hpp"

#include <optional>

namespace hearthcell::menu {

/// All paths.
struct SameTask {
    rtl::OUString original, source, results;
};

/// Asks for it, beginning with what is proposed. Nothing when the user gives up.
std::optional<SameTask> ask_for_same_task(Surroundings const& surroundings, SameTask const& proposed);

/// What is wrong with it, in words; empty where nothing is.
rtl::OUString trouble_with(Surroundings const& surroundings, SameTask const& task);

} // namespace hearthcell::menu
