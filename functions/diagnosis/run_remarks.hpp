#pragma once
// What EXPLAIN adds to the results of repeated runs.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

/// A run in another unit than the others; how little few runs tell; what the limits take for granted.
Remarks remark_on_series(Given const& given, Language language);

/// What a tier is of, and how the probabilities are meant.
Remarks remark_on_tiers(Given const& given, Language language);

} // namespace hearthcell::diagnosis
