#include "extension/archive/recalculation/causes.hpp"

#include "extension/archive/recalculation/formula.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

// A chain of cells is followed down the sheet in one pass and up the sheet in the next.
constexpr int most_passes = 64;

bool holds_any(Range const& range, std::set<Place> const& places) {
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

struct Reader {
    Change* change;
    std::vector<Range> reads;
};

/// Marks one if it reads a marked cell.
bool follow(Reader const& reader, std::set<Place>& marked) {
    if (reader.change->volatility != Volatility::none)
        return false;
    for (Range const& range : reader.reads) {
        if (!holds_any(range, marked))
            continue;
        reader.change->volatility = Volatility::follows;
        marked.insert(reader.change->place);
        return true;
    }
    return false;
}

} // namespace

void mark_volatile(std::vector<Change>& changes, Scope const& scope) {
    std::set<Place> marked;
    for (Change& change : changes) {
        if (!is_volatile(change.formula))
            continue;
        change.volatility = Volatility::itself;
        marked.insert(change.place);
    }
    if (marked.empty())
        return;
    std::vector<Reader> readers;
    for (Change& change : changes)
        if (change.volatility == Volatility::none)
            readers.push_back({&change, references(change.formula, change.place.sheet, scope)});
    bool more = true;
    for (int pass = 0; more && pass < most_passes; ++pass) {
        more = false;
        if (pass % 2 == 0)
            for (auto reader = readers.begin(); reader != readers.end(); ++reader)
                more = follow(*reader, marked) || more;
        else
            for (auto reader = readers.rbegin(); reader != readers.rend(); ++reader)
                more = follow(*reader, marked) || more;
    }
}

void mark_own(std::vector<Change>& changes, std::set<Place> set_before, Scope const& scope) {
    std::set<Place> moved = std::move(set_before);
    for (Change const& change : changes)
        moved.insert(moved.end(), change.place);
    for (Change& change : changes) {
        auto const read = references(change.formula, change.place.sheet, scope);
        change.own =
            std::none_of(read.begin(), read.end(), [&](Range const& range) { return holds_any(range, moved); });
    }
}

} // namespace hearthcell::archive
