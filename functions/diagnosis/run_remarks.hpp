#pragma once
// What EXPLAIN adds to the results of repeated runs.

#include "functions/contract/kernel.hpp"

namespace hearthcell::diagnosis {

/// A run in another unit than the others; how little few runs tell; what the limits take for granted.
Sentences remark_on_series(Given const& given);

/// What a tier is of, and how the probabilities are meant.
Sentences remark_on_tiers(Given const& given);

} // namespace hearthcell::diagnosis
