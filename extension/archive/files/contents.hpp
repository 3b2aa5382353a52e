#pragma once
// All that a workbook holds, read without an office.

#include "extension/archive/files/cells.hpp"
#include "extension/archive/files/format.hpp"

#include <deque>
#include <vector>

namespace hearthcell::archive {

struct ContentCell {
    Place place;
    Value value; // of a formula: the result that is stored
    bool is_result = false;
    std::string formula; // may be missing, see FoundCell
    bool is_array = false;
};

class Contents : public CellSink {
public:
    explicit Contents(Room& room) : room_(room) {}

    [[nodiscard]] std::vector<std::string> const& sheets() const { return sheets_; }
    [[nodiscard]] std::vector<formulas::Range> const& merged() const { return merged_; }
    std::vector<formulas::Definition> take_names() { return std::move(names_); }

    /// In the order of their places.
    [[nodiscard]] std::deque<ContentCell> const& cells() const { return cells_; }
    [[nodiscard]] ContentCell const* find(Place const& place) const;

    void sort(); // once, when all is there

private:
    [[nodiscard]] bool wants_all() const override { return true; }
    void cell(FoundCell&& found) override;
    void sheet(std::string_view name) override;
    void merged(formulas::Range const& range) override;
    void named(formulas::Definition&& name) override;

    Room& room_;
    std::vector<std::string> sheets_;
    std::vector<formulas::Range> merged_;
    std::vector<formulas::Definition> names_;
    std::deque<ContentCell> cells_;
};

/// Of a workbook that is no larger than that. Throws Trouble.
void read_contents(std::filesystem::path const& file, Format format, std::uint64_t largest, Room& room,
                   Contents& contents);

} // namespace hearthcell::archive
