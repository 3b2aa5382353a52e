// In what layouts differ that are much the same.

#include "extension/archive/inventory/in_both.hpp"
#include "extension/archive/inventory/layouts.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_named = 6, most_compared = 500;
constexpr double much = 0.5, nearly_all = 0.8;

using Where = std::pair<int, int>; // row and column

std::string name_of(Where const& place) {
    return formulas::cell_name(place.second, place.first);
}

/// The labels of a layout by their words and by their places.
struct View {
    std::multimap<std::string, Where> by_word;
    std::map<Where, Label const*> by_place;

    explicit View(Layout const& layout) {
        for (Label const& label : layout.labels) {
            by_word.emplace(label.key, Where(label.row, label.column));
            by_place.emplace(Where(label.row, label.column), &label);
        }
    }
};

template <class Map> double share_of(Map const& one, Map const& other) {
    std::size_t const both = in_both(one, other, &Map::value_type::first);
    return double(both) / double(one.size() + other.size() - both);
}

/// 0: they have little in common; else how much.
double nearness(View const& one, View const& other) {
    double const words = share_of(one.by_word, other.by_word), places = share_of(one.by_place, other.by_place);
    constexpr std::size_t least = 4; // places in common say something
    double const same_places = places >= nearly_all && one.by_place.size() >= least ? much * places : 0;
    return std::max(words >= much ? words : 0, same_places);
}

class Difference {
public:
    void add(std::string const& what) {
        if (number_++ < most_named)
            text_ += (text_.empty() ? "" : "; ") + what;
    }
    [[nodiscard]] std::string text() const {
        return text_ + (number_ > most_named ? " and " + std::to_string(number_ - most_named) + " more" : "");
    }

private:
    std::string text_;
    std::size_t number_ = 0;
};

/// Whether what names a row, the first word in it, stands elsewhere in the other layout.
bool has_moved(Where const& place, View const& here, View const& there) {
    auto const first = here.by_place.lower_bound({place.first, 0});
    auto const same = there.by_place.find(first->first);
    return same == there.by_place.end() || same->second->key != first->second->key;
}

void say_difference(Layout& layout, View const& here, View const& there) {
    Difference difference;
    for (auto const& [place, label] : here.by_place) {
        auto const other = there.by_place.find(place);
        if (other != there.by_place.end() && other->second->key == label->key)
            continue;
        auto const moved = there.by_word.find(label->key);
        bool const is_unit = here.by_word.count(label->key) > 1 || there.by_word.count(label->key) > 1;
        if (moved != there.by_word.end() && !is_unit)
            difference.add("'" + label->text + "' in " + name_of(place) + ", not " + name_of(moved->second));
        else if (is_unit && (other == there.by_place.end() || has_moved(place, here, there)))
            continue; // with its row
        else if (other != there.by_place.end() && (is_unit || !here.by_word.contains(other->second->key))) {
            difference.add("'" + label->text + "' in " + name_of(place) + " for '" + other->second->text + "'");
            if (!is_unit)
                layout.other_words.push_back({*label, other->second->text});
        } else
            difference.add("'" + label->text + "' in " + name_of(place) + " is new");
    }
    for (auto const& [place, label] : there.by_place)
        if (!here.by_word.contains(label->key) && !here.by_place.contains(place))
            difference.add("no '" + label->text + "' in " + name_of(place));
    layout.differs = difference.text();
}

} // namespace

void compare(std::vector<Layout>& layouts) {
    std::vector<View> const views(layouts.begin(), layouts.end());
    for (std::size_t at = 1; at < layouts.size(); ++at) {
        double nearest = 0;
        for (std::size_t before = 0; before < std::min(at, most_compared); ++before)
            if (double const near = nearness(views[at], views[before]); near > nearest) {
                nearest = near;
                layouts[at].near = before;
            }
        if (layouts[at].near)
            say_difference(layouts[at], views[at], views[*layouts[at].near]);
    }
}

} // namespace hearthcell::archive
