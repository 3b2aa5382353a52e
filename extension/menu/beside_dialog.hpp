#pragma once
// A dialog that waits for an answer while the office stays usable, so that the sheets can be looked at meanwhile.

#include "extension/menu/dialog_parts.hpp"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace hearthcell::menu {

/// Given which button was pressed, by its name; "" where the dialog was closed. The dialog can still be read, but is
/// out of sight. What it answers is shown.
using Answered = std::function<Answer(std::string const& button, Dialog const& dialog)>;

/// Opens it and returns at once. Answered once at most: not where the office ends first. Its surroundings must have no
/// frame, which could be closed meanwhile.
void ask_beside(Surroundings const& surroundings, std::unique_ptr<Dialog> dialog, std::vector<std::string> buttons,
                Answered answered);

} // namespace hearthcell::menu
