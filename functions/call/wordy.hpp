#pragma once
// Arguments of a kernel that takes values of any kind.

#include "functions/catalogue/function.hpp"

namespace hearthcell {

/// Checks the arguments of a wordy function and puts them into the form that its kernel is promised.
Failure prepare_words(Function const& function, std::vector<Value>& arguments);

} // namespace hearthcell
