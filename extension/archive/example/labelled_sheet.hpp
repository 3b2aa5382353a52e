#pragma once
// A sheet as its labels name its cells: the nearest one to the left, the nearest one above, and the unit beside.

#include "extension/archive/inventory/layouts.hpp"
#include "extension/formulas/place.hpp"

#include <map>
#include <set>

namespace hearthcell::archive {

/// Whether a text is a unit, which names no cell.
bool is_unit(std::string_view key);

/// Whether a text says mean, total, standard deviation or the like, in any of our languages.
bool says_total(std::string_view text);

class LabelledSheet {
public:
    using Where = std::pair<int, int>; // row and column

    /// Its labels, of which a merged one names every row and column that it spans; and what else is written on it.
    LabelledSheet(std::vector<Label> const& labels, std::vector<formulas::Range> const& merged,
                  std::vector<Label> const& entries = {});

    struct Named {
        Where where;
        std::string key, text;
    };
    [[nodiscard]] std::optional<Named> to_the_left(Where const& cell) const;
    /// The nearest above; where another sheet is given, not counting rows of which that one has not a single word.
    [[nodiscard]] std::optional<Named> above(Where const& cell, LabelledSheet const* other = nullptr) const;
    /// What stands between a label and a cell below it, units too: how far below the label, and its key.
    [[nodiscard]] std::vector<std::pair<int, std::string>> between(Named const& label, Where const& cell) const;
    /// Units right behind or below a label, before a cell of its row or column.
    [[nodiscard]] std::vector<std::string> units_after(Where const& label, Where const& cell) const;
    /// To the right.
    [[nodiscard]] std::optional<Named> unit_of(Where const& cell) const;
    /// Whether its row is one of means, totals and the like, by any text to the left; or its column, by any above.
    [[nodiscard]] bool is_in_row_of_totals(Where const& cell) const;
    [[nodiscard]] bool is_in_column_of_totals(Where const& cell) const;
    /// What is written there, label or not.
    [[nodiscard]] std::optional<Named> text_at(Where const& cell) const;
    [[nodiscard]] bool is_label(Where const& cell) const { return by_row_.contains(cell); }

    /// Where a word stands.
    [[nodiscard]] std::set<Where> const& places(std::string const& key) const;

    /// Of its labels.
    [[nodiscard]] std::set<std::string> const& words() const { return words_; }

private:
    void add(Where const& where, Label const& label);
    [[nodiscard]] bool is_row_without_words_of(LabelledSheet const& other, int row) const;

    std::map<Where, Named> by_row_;                 // with units
    std::map<Where, Named> by_column_;              // column first
    std::map<std::string, std::set<Where>> places_; // but of units; of a merged one its first cell
    std::set<std::string> words_;
    std::map<Where, Named> entries_;
    std::set<Where> totals_; // texts that say mean, total
};

/// Whether two cells are named by the same word, wherever it stands; or both by none.
bool is_same_word(std::optional<LabelledSheet::Named> const& one, std::optional<LabelledSheet::Named> const& other);

/// Whether two cells are named by one and the same label; or both by none.
bool is_same_label(std::optional<LabelledSheet::Named> const& one, std::optional<LabelledSheet::Named> const& other);

} // namespace hearthcell::archive
