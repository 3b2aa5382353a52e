#pragma once
// Tables of texts that are looked up by their place.

#include <cstddef>

namespace hearthcell {

/// Whether every row stands at the place that its text's number says.
template <class Rows> constexpr bool stand_in_order(Rows const& rows) {
    for (std::size_t place = 0; place < rows.size(); ++place)
        if (std::size_t(rows[place].text) != place)
            return false;
    return true;
}

} // namespace hearthcell
