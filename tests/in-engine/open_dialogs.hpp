#pragma once
// The dialogs of an office without windows, which nobody sees, used with a mouse that nobody holds. Those that wait for
// an answer are closed at once there, and never found.

#include "calc.hpp"

#include "extension/menu/texts.hpp"

namespace hearthcell::tests {

/// A text of the menu in an office that speaks English, as those of the tests do.
std::string english(menu::Text which);

/// Waits until there is a dialog whose title begins like this, and presses its button. Throws where none comes within
/// the time that a slow machine needs.
void press(Office& office, std::string const& title, std::string const& button);

/// Waits until no dialog's title begins like this. Throws where one stays.
void expect_gone(Office& office, std::string const& title);

} // namespace hearthcell::tests
