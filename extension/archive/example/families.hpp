#pragma once
// Which texts are labels, seen from the sheets of an example: on all sheets that have most of its words, wherever rows
// and columns have gone meanwhile.

#include "extension/archive/inventory/layouts.hpp"

#include <cstdint>
#include <set>

namespace hearthcell::archive {

class Families {
public:
    explicit Families(SameWords const& same) : same_(same) {}

    /// The sheets in the order of their numbers.
    void add(SheetFacts const& facts);

    /// Labels of each sheet: `by_layout` are those that its layout tells, `old` the sheets of examples.
    [[nodiscard]] std::vector<std::vector<Label>> labels(std::vector<std::vector<Label>> by_layout,
                                                         std::vector<std::size_t> const& old) const;

private:
    struct Text {
        int row, column;
        std::uint32_t key;
        bool is_value, in_run;
    };
    using Keys = std::set<std::uint32_t>;
    struct Family {
        std::vector<std::size_t> sheets;
        Keys labels;
        Keys changing;      // words that are entries
        Keys rows, columns; // labels that name entries of their row, of their column
    };

    [[nodiscard]] Family family_of(std::size_t old, std::vector<std::size_t> sheets) const;
    [[nodiscard]] bool is_in_headings(std::size_t sheet, int row) const;
    void find_labels(Family& family, std::size_t old) const;
    void find_entries(Family& family) const;
    [[nodiscard]] Keys moving_words(Family const& family) const;
    [[nodiscard]] Keys changing_words(Family const& family) const;
    [[nodiscard]] std::vector<Label> labels_of(std::size_t sheet, Family const& family,
                                               std::vector<Label> const& by_layout) const;
    [[nodiscard]] Keys names(std::size_t sheet, int row, int column, Keys const& labels, bool of_row) const;

    SameWords const& same_;
    std::map<std::string, std::uint32_t> numbers_; // of keys
    std::vector<std::string> keys_;                // by number
    std::vector<bool> units_;
    std::vector<std::vector<Text>> sheets_;
    std::vector<Keys> words_;                     // of each sheet, but units
    std::vector<std::vector<std::string>> texts_; // of each sheet, as they stand there
};

} // namespace hearthcell::archive
