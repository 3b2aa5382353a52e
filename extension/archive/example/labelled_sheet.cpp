#include "extension/archive/example/labelled_sheet.hpp"

#include "extension/archive/inventory/words.hpp"

#include <algorithm>

namespace hearthcell::archive {

LabelledSheet::LabelledSheet(std::vector<Label> const& labels, std::vector<formulas::Range> const& merged,
                             std::vector<Label> const& entries) {
    constexpr int most_spanned = 200;
    constexpr std::size_t most_cells = 50'000; // of all spans; a sheet with more is none that a person filled in
    std::map<Where, formulas::Range const*> spans;
    for (formulas::Range const& range : merged)
        spans[{range.first.row, range.first.column}] = &range;
    for (Label const& label : labels) {
        Where const first{label.row, label.column};
        if (!is_unit(label.key)) {
            places_[label.key].insert(first);
            words_.insert(label.key);
        }
        auto const span = spans.find(first);
        int const last_row =
            span == spans.end() ? first.first : std::min(span->second->last.row, first.first + most_spanned);
        int const last_column =
            span == spans.end() ? first.second : std::min(span->second->last.column, first.second + most_spanned);
        for (int row = first.first; row <= last_row; ++row)
            for (int column = first.second; column <= last_column; ++column)
                add({row, column}, label);
        if (by_row_.size() > most_cells) { // it then has no labels, and nothing is carried to it
            *this = LabelledSheet({}, {});
            return;
        }
    }
    for (Label const& entry : entries)
        entries_[{entry.row, entry.column}] = {{entry.row, entry.column}, entry.key, entry.text};
    for (Label const& label : labels)
        if (says_total(label.text))
            totals_.insert({label.row, label.column});
}

void LabelledSheet::add(Where const& where, Label const& label) {
    Named const named{{label.row, label.column}, label.key, label.text};
    by_row_[where] = named;
    by_column_[{where.second, where.first}] = named;
}

std::optional<LabelledSheet::Named> LabelledSheet::to_the_left(Where const& cell) const {
    for (auto at = by_row_.lower_bound(cell); at != by_row_.begin();) {
        --at;
        if (at->first.first != cell.first)
            return std::nullopt;
        if (!is_unit(at->second.key))
            return at->second;
    }
    return std::nullopt;
}

bool LabelledSheet::is_row_without_words_of(LabelledSheet const& other, int row) const {
    for (auto at = by_row_.lower_bound({row, 0}); at != by_row_.end() && at->first.first == row; ++at)
        if (!is_unit(at->second.key) && !other.places(at->second.key).empty())
            return false;
    return true;
}

std::optional<LabelledSheet::Named> LabelledSheet::above(Where const& cell, LabelledSheet const* other) const {
    for (auto at = by_column_.lower_bound({cell.second, cell.first}); at != by_column_.begin();) {
        --at;
        if (at->first.first != cell.second)
            return std::nullopt;
        if (!is_unit(at->second.key) && (other == nullptr || !is_row_without_words_of(*other, at->first.second)))
            return at->second;
    }
    return std::nullopt;
}

std::vector<std::pair<int, std::string>> LabelledSheet::between(Named const& label, Where const& cell) const {
    std::vector<std::pair<int, std::string>> texts;
    auto const end = by_column_.lower_bound({cell.second, cell.first});
    for (auto at = by_column_.upper_bound({cell.second, label.where.first}); at != end; ++at)
        texts.emplace_back(at->first.second - label.where.first, at->second.key);
    return texts;
}

std::optional<LabelledSheet::Named> LabelledSheet::text_at(Where const& cell) const {
    for (auto const* const texts : {&by_row_, &entries_})
        if (auto const found = texts->find(cell); found != texts->end())
            return found->second;
    return std::nullopt;
}

std::vector<std::string> LabelledSheet::units_after(Where const& label, Where const& cell) const {
    std::vector<std::string> units;
    bool const down = cell.first > label.first;
    for (int by = 1;; ++by) {
        Where const at{label.first + (down ? by : 0), label.second + (down ? 0 : by)};
        auto const text = at < cell ? text_at(at) : std::nullopt;
        if (!text || !is_unit(text->key))
            return units;
        units.push_back(text->key);
    }
}

std::optional<LabelledSheet::Named> LabelledSheet::unit_of(Where const& cell) const {
    auto const beside = text_at({cell.first, cell.second + 1});
    return beside && is_unit(beside->key) ? beside : std::nullopt;
}

bool LabelledSheet::is_in_row_of_totals(Where const& cell) const {
    auto const first = totals_.lower_bound({cell.first, 0});
    return first != totals_.end() && first->first == cell.first && first->second < cell.second;
}

bool LabelledSheet::is_in_column_of_totals(Where const& cell) const {
    return std::ranges::any_of(
        totals_, [&](Where const& text) { return text.second == cell.second && text.first < cell.first; });
}

std::set<LabelledSheet::Where> const& LabelledSheet::places(std::string const& key) const {
    static std::set<Where> const none;
    auto const found = places_.find(key);
    return found == places_.end() ? none : found->second;
}

bool is_same_word(std::optional<LabelledSheet::Named> const& one, std::optional<LabelledSheet::Named> const& other) {
    return one.has_value() == other.has_value() && (!one || one->key == other->key);
}

bool is_same_label(std::optional<LabelledSheet::Named> const& one, std::optional<LabelledSheet::Named> const& other) {
    return one.has_value() == other.has_value() && (!one || one->where == other->where);
}

} // namespace hearthcell::archive
