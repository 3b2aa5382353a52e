#include "extension/archive/files/stored.hpp"

#include "extension/archive/files/problem.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

// A file of a few kB may say 'this row, a million times'.
constexpr std::size_t most_results = 20'000'000;

} // namespace

void StoredResults::add(Stored result) {
    if (results_.size() >= most_results)
        throw Trouble(Reason::too_large, "more than " + std::to_string(most_results) + " formulas");
    results_.push_back(std::move(result));
}

void StoredResults::sort() {
    auto const earlier = [](Stored const& a, Stored const& b) { return a.place < b.place; };
    if (!std::is_sorted(results_.begin(), results_.end(), earlier))
        std::stable_sort(results_.begin(), results_.end(), earlier);
}

Stored const* StoredResults::find(Place const& place) const {
    auto const found = std::lower_bound(results_.begin(), results_.end(), place,
                                        [](Stored const& one, Place const& wanted) { return one.place < wanted; });
    return found != results_.end() && found->place == place ? &*found : nullptr;
}

} // namespace hearthcell::archive
