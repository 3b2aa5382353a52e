#pragma once
// The parts of a stored .ods, as text.

#include "extension/menu/surroundings.hpp"

#include <functional>
#include <string>

namespace hearthcell::menu {

/// Has the XML of a file's sheets, styles, settings and description changed, and that of the charts and other objects
/// in it.
/// change: gets the name of a part with its folders, such as "Object 1/content.xml", and its text; says whether it
/// changed anything.
void change_parts(Surroundings const& surroundings, rtl::OUString const& url,
                  std::function<bool(std::string const& part, std::string& xml)> const& change);

} // namespace hearthcell::menu
