#pragma once
// The random numbers of the storm.

#include <cmath>
#include <cstdint>
#include <random>

namespace hearthcell::storm {

/// Chance that is the same everywhere for the same seed: the standard's distributions are not.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : bits_(seed) {}

    double share() { return double(bits_() >> 11) * 0x1p-53; } // 0 ≤ share < 1
    int below(int count) { return int(share() * count); }
    bool happens(double probability) { return share() < probability; }
    double between(double low, double high) { return low + (high - low) * share(); }
    template <class List> auto const& one_of(List const& list) {
        return list[std::size_t(below(int(std::size(list))))];
    }

private:
    std::mt19937_64 bits_;
};

} // namespace hearthcell::storm
