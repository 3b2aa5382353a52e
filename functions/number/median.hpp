#pragma once
// The middle of some values.

#include <algorithm>
#include <span>

namespace hearthcell {

/// The middle one, the upper of two, whose order is lost. There must be one.
inline double median(std::span<double> values) {
    auto const half = values.begin() + std::ptrdiff_t(values.size() / 2);
    std::ranges::nth_element(values, half);
    return *half;
}

} // namespace hearthcell
