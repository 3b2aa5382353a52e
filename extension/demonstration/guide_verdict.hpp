#pragma once

#include "extension/office/office.hpp"

#include <string>

namespace hearthcell {

/// What the packaged function guide says in this office of all its examples. Throws where they do not all agree.
std::string guide_verdict(office::Office& office, std::filesystem::path const& package);

} // namespace hearthcell
