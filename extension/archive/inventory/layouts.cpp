#include "extension/archive/inventory/layouts.hpp"

#include "extension/archive/inventory/in_both.hpp"
#include "extension/archive/inventory/words.hpp"

#include <algorithm>
#include <set>

namespace hearthcell::archive {
namespace {

constexpr std::size_t side_by_side = 3;      // texts that make a row the heading of a table
constexpr std::size_t least_shared_part = 4; // of a sheet's texts, a fourth

using Numbers = std::vector<std::uint32_t>;

bool is_much_the_same(Numbers const& one, Numbers const& other) {
    std::size_t const both = in_both(one, other);
    return both > 0 && 2 * both >= one.size() + other.size() - both;
}

} // namespace

std::string key_of(std::string_view text, SameWords const& same) {
    std::string key = word_key(text);
    auto const other = same.find(key);
    return other == same.end() ? key : other->second;
}

void Layouts::add(SheetFacts const& facts) {
    Sheet sheet;
    for (SheetText const& text : facts.texts) {
        std::string const key = key_of(text.text, same_);
        std::string const where = std::to_string(text.row) + ' ' + std::to_string(text.column) + ' ' + key;
        auto const [known, is_new] = numbers_.try_emplace(where, std::uint32_t(texts_.size()));
        if (is_new)
            texts_.push_back({{text.row, text.column, key, text.text}});
        ++texts_[known->second].sheets;
        sheet.texts.push_back(known->second);
        if (text.is_value)
            sheet.values.push_back(known->second);
    }
    std::ranges::sort(sheet.texts);
    std::ranges::sort(sheet.values);
    sheets_.push_back(std::move(sheet));
}

/// What a sheet has in common with others.
std::vector<std::uint32_t> Layouts::core_of(Sheet const& sheet) const {
    Numbers core;
    std::ranges::copy_if(sheet.texts, std::back_inserter(core),
                         [&](std::uint32_t text) { return texts_[text].sheets > 1; });
    // A title in common is no layout; the headings of a table are one, whatever stands in its rows.
    std::map<int, std::size_t> by_row;
    for (std::uint32_t const text : core)
        ++by_row[texts_[text].label.row];
    bool const has_headings = std::ranges::any_of(by_row, [](auto const& row) { return row.second >= side_by_side; });
    if (!has_headings && core.size() * least_shared_part < sheet.texts.size())
        core.clear();
    return core;
}

std::vector<Layouts::Group> Layouts::groups() const {
    std::map<Numbers, std::vector<std::size_t>> by_core;
    std::vector<Group> groups, alone;
    for (std::size_t at = 0; at < sheets_.size(); ++at) {
        if (sheets_[at].texts.empty())
            continue;
        if (Numbers core = core_of(sheets_[at]); !core.empty())
            by_core[std::move(core)].push_back(at);
        else
            alone.push_back({{at}, {}});
    }
    std::vector<Group> cores;
    for (auto& [core, sheets] : by_core)
        cores.push_back({std::move(sheets), core});
    std::ranges::stable_sort(cores, [](Group const& a, Group const& b) {
        return std::pair(b.sheets.size(), b.core.size()) < std::pair(a.sheets.size(), a.core.size());
    });
    for (Group& one : cores) {
        auto const known =
            std::ranges::find_if(groups, [&](Group const& group) { return is_much_the_same(group.core, one.core); });
        if (known == groups.end())
            groups.push_back(std::move(one));
        else
            known->sheets.insert(known->sheets.end(), one.sheets.begin(), one.sheets.end());
    }
    groups.insert(groups.end(), alone.begin(), alone.end());
    for (Group& group : groups)
        std::ranges::sort(group.sheets);
    return groups;
}

/// What stands in the same place on most of its sheets; not where the others hold this and that, nor what stands here
/// and there in its column, as the names in a table do.
std::vector<std::uint32_t> Layouts::labels_of(Group const& group) const {
    struct InColumn { // a word
        std::set<int> rows;
        std::size_t times = 0;
    };
    std::map<std::pair<int, std::string_view>, InColumn> words;
    std::unordered_map<std::uint32_t, std::size_t> on, as_value;
    for (std::size_t const sheet : group.sheets) {
        for (std::uint32_t const text : sheets_[sheet].texts) {
            ++on[text];
            Label const& label = texts_[text].label;
            InColumn& word = words[{label.column, label.key}];
            word.rows.insert(label.row);
            ++word.times;
        }
        for (std::uint32_t const text : sheets_[sheet].values)
            ++as_value[text];
    }
    std::map<std::pair<int, int>, std::set<std::uint32_t>> at_place;
    for (auto const& [text, sheets] : on)
        at_place[{texts_[text].label.row, texts_[text].label.column}].insert(text);
    Numbers labels;
    for (auto const& [place, texts] : at_place) {
        auto const most = *std::ranges::max_element(texts, {}, [&](std::uint32_t text) { return on[text]; });
        InColumn const& word = words[{place.second, texts_[most].label.key}];
        // A unit stands in the same rows of nearly all sheets.
        bool const has_its_places =
            word.rows.size() == 1 || 4 * word.times >= 3 * group.sheets.size() * word.rows.size();
        if (2 * on[most] > group.sheets.size() && has_its_places && texts.size() <= 2 && 2 * as_value[most] <= on[most])
            labels.push_back(most);
    }
    std::ranges::sort(labels);
    return labels;
}

void Layouts::add_layouts(Group const& group, std::vector<Layout>& layouts) const {
    Numbers const labels = labels_of(group);
    std::map<std::pair<int, int>, std::uint32_t> place_of;
    for (std::uint32_t const label : labels)
        place_of[{texts_[label].label.row, texts_[label].label.column}] = label;
    std::map<Numbers, std::vector<std::size_t>> parts; // what of the labels, or in their places, a sheet has
    for (std::size_t const sheet : group.sheets) {
        Numbers own;
        for (std::uint32_t const text : sheets_[sheet].texts)
            if (place_of.contains({texts_[text].label.row, texts_[text].label.column}))
                own.push_back(text);
        parts[own].push_back(sheet);
    }
    for (auto& [own, sheets] : parts) {
        Layout layout{std::move(sheets), {}, {}, {}, {}};
        for (std::uint32_t const label : own)
            layout.labels.push_back(texts_[label].label);
        std::ranges::sort(layout.labels, {}, [](Label const& label) { return std::pair(label.row, label.column); });
        if (!layout.labels.empty())
            layouts.push_back(std::move(layout));
    }
}

std::vector<Layout> Layouts::find() const {
    std::vector<Layout> layouts;
    for (Group const& group : groups())
        add_layouts(group, layouts);
    std::ranges::stable_sort(layouts, [](Layout const& a, Layout const& b) {
        return std::pair(b.sheets.size(), a.sheets.front()) < std::pair(a.sheets.size(), b.sheets.front());
    });
    compare(layouts);
    return layouts;
}

} // namespace hearthcell::archive
