#include "extension/archive/example/labelled_sheet.hpp"

#include "extension/archive/inventory/words.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::archive {
namespace {

/// As word_key gives them.
constexpr std::array<std::string_view, 40> units{
    "kg",  "g",     "mg",     "t",   "lb",  "°c",   "c",   "k",     "°f",    "f",     "m",    "ft",  "cm", "mm",
    "min", "mins",  "s",      "sec", "h",   "%",    "kj",  "mj",    "j",     "kcal",  "wh",   "kwh", "w",  "kw",
    "l",   "litre", "litres", "ml",  "hpa", "mbar", "kpa", "kj/kg", "mj/kg", "g/min", "kg/h", "g/l"};

} // namespace

bool is_unit(std::string_view key) {
    return std::ranges::find(units, key) != units.end();
}

LabelledSheet::LabelledSheet(std::vector<Label> const& labels, std::vector<formulas::Range> const& merged) {
    constexpr int most_spanned = 200;
    std::map<Where, formulas::Range const*> spans;
    for (formulas::Range const& range : merged)
        spans[{range.first.row, range.first.column}] = &range;
    for (Label const& label : labels) {
        Where const first{label.row, label.column};
        if (!is_unit(label.key))
            places_[label.key].insert(first);
        auto const span = spans.find(first);
        int const last_row =
            span == spans.end() ? first.first : std::min(span->second->last.row, first.first + most_spanned);
        int const last_column =
            span == spans.end() ? first.second : std::min(span->second->last.column, first.second + most_spanned);
        for (int row = first.first; row <= last_row; ++row)
            for (int column = first.second; column <= last_column; ++column)
                add({row, column}, label);
    }
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

std::optional<LabelledSheet::Named> LabelledSheet::above(Where const& cell, LabelledSheet const* other) const {
    for (auto at = by_column_.lower_bound({cell.second, cell.first}); at != by_column_.begin();) {
        --at;
        if (at->first.first != cell.second)
            return std::nullopt;
        if (!is_unit(at->second.key) && (other == nullptr || !other->places(at->second.key).empty()))
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

std::optional<LabelledSheet::Named> LabelledSheet::unit_of(Where const& cell) const {
    auto const beside = by_row_.find({cell.first, cell.second + 1});
    return beside != by_row_.end() && is_unit(beside->second.key) ? std::optional(beside->second) : std::nullopt;
}

std::set<LabelledSheet::Where> const& LabelledSheet::places(std::string const& key) const {
    static std::set<Where> const none;
    auto const found = places_.find(key);
    return found == places_.end() ? none : found->second;
}

} // namespace hearthcell::archive
