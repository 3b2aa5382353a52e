#pragma once
// Two numbers that go through the same arithmetic at a time, each with the bits that it would have alone.

#include <cmath>

namespace hearthcell {

/// The processor's own pair; + - * / and ?: work number by number.
using SideBySide [[gnu::vector_size(2 * sizeof(double))]] = double;

inline SideBySide exp(SideBySide x) {
    return SideBySide{std::exp(x[0]), std::exp(x[1])};
}

inline SideBySide log(SideBySide x) {
    return SideBySide{std::log(x[0]), std::log(x[1])};
}

/// std::max, for one number and for two.
template <class Real> Real larger(Real const& a, Real const& b) {
    return a < b ? b : a;
}

} // namespace hearthcell
