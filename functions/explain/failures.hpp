#pragma once
// Why a call failed, in a sentence.

#include "functions/catalogue/function.hpp"
#include "functions/words/speaker.hpp"

namespace hearthcell {

/// What is wrong, with which argument, and what was probably meant.
std::string about_failure(Speaker const& say, Function const& function, std::span<Value const> values,
                          Failure const& why);

} // namespace hearthcell
