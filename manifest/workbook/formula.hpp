#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace hearthcell::workbook {

/// New names of sheets by the old ones.
using SheetNames = std::map<std::string, std::string>;

/// An ODF formula, condition or address in which the sheets have other names, and every text between quotes is what
/// `translate` makes of it.
std::string rewritten(std::string_view formula, SheetNames const& sheets,
                      std::function<std::string(std::string_view)> const& translate);

} // namespace hearthcell::workbook
