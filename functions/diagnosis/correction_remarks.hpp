#pragma once
// What EXPLAIN adds to a reading that was corrected by check points.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

Remarks remark_on_correction(Given const& given, Language language);

} // namespace hearthcell::diagnosis
