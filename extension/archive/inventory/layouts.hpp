#pragma once
// Which layouts the sheets of an archive have: labels, and where they stand.
//
// A text that stands in the same place on most sheets of a group is a label; one that differs between them is an entry
// and makes no layout.

#include "extension/archive/inventory/sheet_facts.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace hearthcell::archive {

/// Words that mean the same: the key of each, and the key that stands for it.
using SameWords = std::map<std::string, std::string>;

/// As labels are compared: the key of a text, or of the word that it stands for.
std::string key_of(std::string_view text, SameWords const& same);

struct Label {
    int row = 0, column = 0;
    std::string key, text;
};

/// A label that stands where another layout has another one.
struct OtherWord {
    Label here;
    std::string there;
};

struct Layout {
    std::vector<std::size_t> sheets; // by the order in which they were added; the first is the example
    std::vector<Label> labels;       // by their places
    std::optional<std::size_t> near; // a layout before this one that is much the same
    std::string differs;             // in what
    std::vector<OtherWord> other_words;
};

class Layouts {
public:
    explicit Layouts(SameWords same) : same_(std::move(same)) {}

    void add(SheetFacts const& sheet);

    /// The most frequent first. Sheets without any label are in none.
    [[nodiscard]] std::vector<Layout> find() const;

private:
    struct Text { // what stands somewhere, on however many sheets
        Label label;
        std::uint64_t sheets = 0;
    };
    struct Sheet {
        std::vector<std::uint32_t> texts;  // their numbers, sorted
        std::vector<std::uint32_t> values; // of these: what stands like one
    };
    struct Group {
        std::vector<std::size_t> sheets;
        std::vector<std::uint32_t> core;
    };

    [[nodiscard]] std::vector<std::uint32_t> core_of(Sheet const& sheet) const;
    [[nodiscard]] std::vector<Group> groups() const;
    [[nodiscard]] std::vector<std::uint32_t> labels_of(Group const& group) const;
    void add_layouts(Group const& group, std::vector<Layout>& layouts) const;

    SameWords same_;
    std::vector<Text> texts_;
    std::unordered_map<std::string, std::uint32_t> numbers_; // by place and key
    std::vector<Sheet> sheets_;
};

/// Finds for each layout one before it that is much the same, and says in what they differ.
void compare(std::vector<Layout>& layouts);

} // namespace hearthcell::archive
