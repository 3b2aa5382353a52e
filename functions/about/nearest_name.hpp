#pragma once
// Which function was probably meant by a name that no function has.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// The function whose name differs by the fewest letters, two at most (no name has fewer than six); null where none
/// does.
Function const* nearest_function(std::string_view name);

} // namespace hearthcell
