#pragma once
// What EXPLAIN adds to the results of MINUTES.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

/// How the numbers and the texts with one colon were understood.
Remarks remark_on_minutes(std::span<Value const> given, Language language);

} // namespace hearthcell::diagnosis
