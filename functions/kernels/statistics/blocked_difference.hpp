#pragma once
// Variants against a baseline, run in blocks, from columns as a sheet has them.

#include "functions/contract/values.hpp"

#include <span>

namespace hearthcell::kernels {

// Nobody runs more; it keeps the work of one cell small.
inline constexpr std::size_t most_variants = 50, most_blocks = 1000;

/// Given: results, variants, blocks (columns; a name is a text or a number, as a day is), the baseline's name, the
/// confidence. A row a variant other than the baseline, in the order of first appearance: difference, lower and upper
/// limit (of each by itself), p (Holm's where there are several), runs, name.
Outcome blocked_difference(std::span<Value const> given);

} // namespace hearthcell::kernels
