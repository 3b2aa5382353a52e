#include "extension/archive/files/contents.hpp"

#include "extension/archive/files/problem.hpp"

#include <algorithm>

namespace hearthcell::archive {

ContentCell const* Contents::find(Place const& place) const {
    auto const found = std::ranges::lower_bound(cells_, place, {}, &ContentCell::place);
    return found != cells_.end() && found->place == place ? &*found : nullptr;
}

void Contents::sort() {
    if (!std::ranges::is_sorted(cells_, {}, &ContentCell::place))
        std::ranges::stable_sort(cells_, {}, &ContentCell::place);
}

void Contents::cell(FoundCell&& found) {
    ContentCell kept{found.place, std::move(found.value), found.is_result, std::string(found.formula), found.is_array};
    auto const* const text = std::get_if<std::string>(&kept.value);
    room_.take(sizeof kept + kept.formula.size() + (text != nullptr ? text->size() : 0));
    cells_.push_back(std::move(kept));
}

void Contents::sheet(std::string_view name) {
    room_.take(2 * sizeof(std::string) + name.size());
    sheets_.emplace_back(name);
}

void Contents::merged(formulas::Range const& range) {
    room_.take(2 * sizeof range);
    merged_.push_back(range);
}

void Contents::named(formulas::Definition&& name) {
    room_.take(2 * sizeof name + 4 * (name.name.size() + name.content.size())); // with what is made of it
    names_.push_back(std::move(name));
}

void read_contents(std::filesystem::path const& file, Format format, std::uint64_t largest, Room& room,
                   Contents& contents) {
    if (!inspect(file, format, largest, room, contents))
        throw Trouble(Reason::password, "encrypted");
    contents.sort();
}

} // namespace hearthcell::archive
