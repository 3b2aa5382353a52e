#pragma once
// The templates that an office offers.

#include "extension/office/office.hpp"

#include <string>
#include <vector>

namespace hearthcell::office {

/// A template as the office's Template Manager offers it.
struct OfferedTemplate {
    std::string group;
    std::string title;
    std::string file; // its name without folder and ending
};

/// All whose group starts with this, by group and file.
std::vector<OfferedTemplate> offered_templates(Office& office, std::string const& group_starting_with);

} // namespace hearthcell::office
