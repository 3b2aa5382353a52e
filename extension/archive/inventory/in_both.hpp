#pragma once
// What two sorted ranges have in common.

#include <functional>

namespace hearthcell::archive {

/// How many elements stand in both, by their keys, each as often as in the one that has it less often.
template <class Sorted, class Key = std::identity>
std::size_t in_both(Sorted const& one, Sorted const& other, Key const& key = {}) {
    std::size_t both = 0;
    for (auto a = one.begin(), b = other.begin(); a != one.end() && b != other.end();) {
        bool const first = std::invoke(key, *a) < std::invoke(key, *b),
                   second = std::invoke(key, *b) < std::invoke(key, *a);
        both += first || second ? 0 : 1;
        if (!second)
            ++a;
        if (!first)
            ++b;
    }
    return both;
}

} // namespace hearthcell::archive
