#include "extension/archive/files/stored.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

std::uint64_t bytes_of(Stored const& result) {
    if (auto const* const text = std::get_if<std::string>(&result.value))
        return sizeof result + text->size();
    if (auto const* const fault = std::get_if<Fault>(&result.value))
        return sizeof result + fault->shown.size();
    return sizeof result;
}

} // namespace

void StoredResults::add(Stored result, Room& room) {
    room.take(bytes_of(result));
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

StoredResults ResultsFound::take() {
    results_.sort();
    return std::move(results_);
}

void ResultsFound::cell(FoundCell&& found) {
    results_.add({found.place, std::move(found.value), found.clock, found.perhaps_text}, room_);
}

} // namespace hearthcell::archive
