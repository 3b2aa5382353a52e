#pragma once
// A sheet as its labels name its cells: the nearest one to the left, the nearest one above, and the unit beside.

#include "extension/archive/inventory/layouts.hpp"
#include "extension/formulas/place.hpp"

#include <map>
#include <set>

namespace hearthcell::archive {

/// Whether a text is a unit, which names no cell.
bool is_unit(std::string_view key);

class LabelledSheet {
public:
    using Where = std::pair<int, int>; // row and column

    /// Its labels, of which a merged one names every row and column that it spans.
    LabelledSheet(std::vector<Label> const& labels, std::vector<formulas::Range> const& merged);

    struct Named {
        Where where;
        std::string key, text;
    };
    [[nodiscard]] std::optional<Named> to_the_left(Where const& cell) const;
    /// The nearest above; where another sheet is given, the nearest whose word that one has, too.
    [[nodiscard]] std::optional<Named> above(Where const& cell, LabelledSheet const* other = nullptr) const;
    /// What stands between a label and a cell below it, units too: how far below the label, and its key.
    [[nodiscard]] std::vector<std::pair<int, std::string>> between(Named const& label, Where const& cell) const;
    /// To the right.
    [[nodiscard]] std::optional<Named> unit_of(Where const& cell) const;

    /// Where a word stands.
    [[nodiscard]] std::set<Where> const& places(std::string const& key) const;

private:
    void add(Where const& where, Label const& label);

    std::map<Where, Named> by_row_;                 // with units
    std::map<Where, Named> by_column_;              // column first
    std::map<std::string, std::set<Where>> places_; // but of units; of a merged one its first cell
};

} // namespace hearthcell::archive
