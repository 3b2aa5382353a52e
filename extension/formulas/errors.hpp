#pragma once
// Calc's errors as cells show them.

#include <string_view>

namespace hearthcell::formulas {

/// "#NUM!" of 503; empty for an error that has a number only.
std::string_view error_constant(int code);

/// 503 of "#NUM!"; 0 where no error is called so.
int code_of_error_constant(std::string_view written);

} // namespace hearthcell::formulas
