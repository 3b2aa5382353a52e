#include "extension/archive/recalculation/causes.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

// A chain of cells is followed down the sheet in one pass and up the sheet in the next.
constexpr int most_passes = 64;

bool holds_any(formulas::Range const& range, std::set<Place> const& places) {
    auto at = places.lower_bound(range.first);
    while (at != places.end() && *at <= range.last) {
        if (at->column < range.first.column)
            at = places.lower_bound({at->sheet, at->row, range.first.column});
        else if (at->column > range.last.column)
            at = places.lower_bound({at->sheet, at->row + 1, range.first.column});
        else
            return true;
    }
    return false;
}

/// Marks one if it reads a marked cell.
bool follow(Change& change, std::vector<formulas::Range> const& read, std::set<Place>& marked) {
    if (change.volatility != Volatility::none ||
        std::none_of(read.begin(), read.end(), [&](formulas::Range const& range) { return holds_any(range, marked); }))
        return false;
    change.volatility = Volatility::follows;
    marked.insert(change.place);
    return true;
}

} // namespace

void mark_what_follows(std::vector<Change>& changes, Read const& read) {
    std::set<Place> marked;
    for (Change const& change : changes)
        if (change.volatility == Volatility::itself)
            marked.insert(change.place);
    bool more = !marked.empty();
    for (int pass = 0; more && pass < most_passes; ++pass) {
        more = false;
        for (std::size_t step = 0; step < changes.size(); ++step) {
            std::size_t const at = pass % 2 == 0 ? step : changes.size() - 1 - step;
            more = follow(changes[at], read[at], marked) || more;
        }
    }
}

void mark_own(std::vector<Change>& changes, std::set<Place> set_before, Read const& read) {
    std::set<Place> moved = std::move(set_before);
    for (Change const& change : changes)
        moved.insert(moved.end(), change.place);
    for (std::size_t at = 0; at < changes.size(); ++at)
        changes[at].own = std::none_of(read[at].begin(), read[at].end(),
                                       [&](formulas::Range const& range) { return holds_any(range, moved); });
}

} // namespace hearthcell::archive
