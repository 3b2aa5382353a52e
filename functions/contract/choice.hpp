#pragma once
// A choice among a few fixed texts, as kernels get it.

namespace hearthcell {

/// An option that a cell gives as a text, resolved to its place in the list of allowed texts. Never differentiated.
struct Choice {
    int index = 0;
};

} // namespace hearthcell
