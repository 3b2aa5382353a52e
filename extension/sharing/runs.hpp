#pragma once

#include "extension/sharing/sheet_formulas.hpp"

namespace hearthcell::sharing {

/// LibreOffice takes some 2 ms to make and save a comment: where there are more formulas than this, those that were
/// filled down share one.
inline constexpr sal_Int32 most_comments_of_their_own = 1000;

/// Lets the first cell of each run down a column, in which one formula was filled down, speak for the others.
void share_comments(SheetFormulas& formulas);

} // namespace hearthcell::sharing
