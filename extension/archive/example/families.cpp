#include "extension/archive/example/families.hpp"

#include "extension/archive/example/labelled_sheet.hpp"

#include <algorithm>
#include <optional>

namespace hearthcell::archive {
namespace {

constexpr std::size_t few = 3;            // sheets of which not much can be said; entries that are several
constexpr std::size_t most_of_a_word = 6; // times on a sheet

template <class Set> std::size_t in_common(Set const& one, Set const& other) {
    return std::size_t(std::ranges::count_if(one, [&](auto const& element) { return other.contains(element); }));
}

} // namespace

void Families::add(SheetFacts const& facts) {
    std::vector<Text> texts;
    std::vector<std::string> as_written;
    Keys words;
    for (SheetText const& text : facts.texts) {
        auto const [known, is_new] = numbers_.try_emplace(key_of(text.text, same_), std::uint32_t(units_.size()));
        if (is_new) {
            units_.push_back(is_unit(known->first));
            keys_.push_back(known->first);
        }
        texts.push_back({text.row, text.column, known->second, text.is_value, text.in_run});
        as_written.push_back(text.text);
        if (!units_[known->second])
            words.insert(known->second);
    }
    sheets_.push_back(std::move(texts));
    words_.push_back(std::move(words));
    texts_.push_back(std::move(as_written));
}

std::vector<std::vector<Label>> Families::labels(std::vector<std::vector<Label>> by_layout,
                                                 std::vector<std::size_t> const& old) const {
    std::vector<std::vector<std::size_t>> members(old.size());
    for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet) {
        std::size_t best = old.size();
        double most = 0.5;
        for (std::size_t at = 0; at < old.size(); ++at)
            if (Keys const& words = words_[old[at]]; !words.empty())
                if (double const like = double(in_common(words, words_[sheet])) / double(words.size()); like >= most) {
                    most = like + 1e-9;
                    best = at;
                }
        if (best < old.size())
            members[best].push_back(sheet);
    }
    for (std::size_t at = 0; at < old.size(); ++at) {
        if (members[at].size() < few)
            continue;
        Family const family = family_of(old[at], std::move(members[at]));
        for (std::size_t const sheet : family.sheets)
            by_layout[sheet] = labels_of(sheet, family, by_layout[sheet]);
    }
    return by_layout;
}

Families::Family Families::family_of(std::size_t old, std::vector<std::size_t> sheets) const {
    Family family{std::move(sheets), {}, {}, {}, {}};
    find_labels(family, old);
    find_entries(family);
    return family;
}

/// Whether so many texts stand side by side that they head a table.
bool Families::is_in_headings(std::size_t sheet, int row) const {
    constexpr auto side_by_side = 5;
    return std::ranges::count(sheets_[sheet], row, &Text::row) >= side_by_side;
}

/// A word of the old sheet that stands equally often on most others, and not as a value.
void Families::find_labels(Family& family, std::size_t old) const {
    std::map<std::uint32_t, std::vector<std::size_t>> times;             // of each word: on how many sheets so often
    std::map<std::uint32_t, std::pair<std::size_t, std::size_t>> values; // as a value, in all
    for (std::size_t const sheet : family.sheets) {
        std::map<std::uint32_t, std::size_t> here;
        for (Text const& text : sheets_[sheet])
            if (words_[old].contains(text.key)) {
                ++here[text.key];
                ++values[text.key].second;
                values[text.key].first += text.is_value && !is_in_headings(sheet, text.row) ? 1 : 0;
            }
        for (auto const& [key, number] : here) {
            auto& counts = times[key];
            counts.resize(most_of_a_word + 1);
            ++counts[std::min(number, most_of_a_word)];
        }
    }
    for (auto const& [key, counts] : times)
        if (2 * *std::max_element(counts.begin(), counts.end() - 1) > family.sheets.size() &&
            2 * values[key].first <= values[key].second)
            family.labels.insert(key);
    family.changing = changing_words(family);
    for (Keys const& entries : {moving_words(family), family.changing})
        for (std::uint32_t const key : entries)
            family.labels.erase(key);
}

/// Words behind the first one of a row, where others stand on most sheets: 'Stove' and its names.
Families::Keys Families::changing_words(Family const& family) const {
    using Behind = std::pair<std::uint32_t, int>; // the first word of a row, and a column
    std::map<Behind, std::map<std::uint32_t, std::size_t>> all;
    std::map<std::uint32_t, std::size_t> times, changing;
    auto const behind = [&](std::size_t sheet, Text const& text) -> std::optional<Behind> {
        Text const* first = nullptr;
        for (Text const& other : sheets_[sheet])
            if (other.row == text.row && (first == nullptr || other.column < first->column))
                first = &other;
        if (first->column >= text.column || units_[text.key] || is_in_headings(sheet, text.row))
            return std::nullopt;
        return Behind(first->key, text.column);
    };
    for (std::size_t const sheet : family.sheets)
        for (Text const& text : sheets_[sheet])
            if (auto const where = behind(sheet, text))
                ++all[*where][text.key];
    struct Row { // by its first word
        Keys words;
        std::size_t all = 0, most = 0; // texts behind it; those that are the most frequent of their column

        [[nodiscard]] bool changes() const { return words.size() >= few && 5 * most <= 3 * all; }
    };
    std::map<std::uint32_t, Row> rows;
    for (auto const& [where, words] : all) {
        Row& row = rows[where.first];
        std::size_t most = 0;
        for (auto const& [key, number] : words) {
            row.words.insert(key);
            row.all += number;
            most = std::max(most, number);
        }
        row.most += most;
    }
    for (std::size_t const sheet : family.sheets)
        for (Text const& text : sheets_[sheet]) {
            ++times[text.key];
            auto const where = behind(sheet, text);
            if (!where)
                continue;
            changing[text.key] += rows[where->first].changes() ? 1 : 0;
        }
    Keys entries;
    for (auto const& [key, number] : changing)
        if (2 * number > times[key])
            entries.insert(key);
    return entries;
}

/// Words in the rows of a table that stand here and there: its entries, as the names of stoves.
Families::Keys Families::moving_words(Family const& family) const {
    struct Seen {
        std::size_t all = 0, in_runs = 0;
        std::map<std::pair<int, int>, std::size_t> places;
    };
    std::map<std::uint32_t, Seen> words;
    for (std::size_t const sheet : family.sheets)
        for (Text const& text : sheets_[sheet])
            if (family.labels.contains(text.key)) {
                Seen& seen = words[text.key];
                ++seen.all;
                seen.in_runs += text.in_run ? 1 : 0;
                ++seen.places[{text.row, text.column}];
            }
    Keys moving;
    for (auto const& [key, seen] : words) {
        auto const most = std::ranges::max_element(seen.places, {}, [](auto const& place) { return place.second; });
        if (2 * seen.in_runs > seen.all && 2 * most->second <= family.sheets.size())
            moving.insert(key);
    }
    return moving;
}

/// The labels to the left in a row, or above in a column.
Families::Keys Families::names(std::size_t sheet, int row, int column, Keys const& labels, bool of_row) const {
    Keys found;
    for (Text const& text : sheets_[sheet])
        if (labels.contains(text.key) &&
            (of_row ? text.row == row && text.column < column : text.column == column && text.row < row))
            found.insert(text.key);
    return found;
}

/// Where this and that stands behind or below a label.
void Families::find_entries(Family& family) const {
    std::map<std::uint32_t, Keys> rows, columns;
    for (std::size_t const sheet : family.sheets)
        for (Text const& text : sheets_[sheet]) {
            if (family.labels.contains(text.key) || units_[text.key])
                continue;
            for (std::uint32_t const key : names(sheet, text.row, text.column, family.labels, true))
                rows[key].insert(text.key);
            for (std::uint32_t const key : names(sheet, text.row, text.column, family.labels, false))
                columns[key].insert(text.key);
        }
    for (auto const& [key, entries] : rows)
        if (entries.size() >= few)
            family.rows.insert(key);
    for (auto const& [key, entries] : columns)
        if (entries.size() >= few)
            family.columns.insert(key);
}

std::vector<Label> Families::labels_of(std::size_t sheet, Family const& family,
                                       std::vector<Label> const& by_layout) const {
    std::set<std::pair<int, int>> of_layout;
    for (Label const& label : by_layout)
        of_layout.insert({label.row, label.column});
    std::vector<Label> labels;
    for (std::size_t at = 0; at < sheets_[sheet].size(); ++at) {
        Text const& text = sheets_[sheet][at];
        bool is_label = family.labels.contains(text.key);
        if (!is_label && !family.changing.contains(text.key) && of_layout.contains({text.row, text.column}))
            is_label = units_[text.key] ||
                       (!text.in_run &&
                        in_common(names(sheet, text.row, text.column, family.labels, true), family.rows) == 0 &&
                        in_common(names(sheet, text.row, text.column, family.labels, false), family.columns) == 0);
        if (is_label)
            labels.push_back({text.row, text.column, keys_[text.key], texts_[sheet][at]});
    }
    return labels;
}

} // namespace hearthcell::archive
