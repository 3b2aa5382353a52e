#pragma once
// Which layouts an archive has, and what their formulas compute.

#include "extension/archive/inventory/layouts.hpp"

namespace hearthcell::archive {

struct Inventory {
    struct Sheet {
        std::size_t workbook = 0; // in the order in which they were added
        std::string name;
        std::optional<std::size_t> layout;
        std::uint64_t formulas = 0, ours = 0;
    };
    /// A recognised formula, on all sheets of a layout.
    struct Formula {
        SheetFormula first; // as it stands on the first of them
        std::optional<std::size_t> layout;
        std::size_t sheet = 0; // the first
        std::uint64_t cells = 0, sheets = 0, workbooks = 0;
    };

    std::vector<Sheet> sheets;
    std::vector<Layout> layouts;
    std::vector<Formula> formulas; // by layout, the most frequent first

    [[nodiscard]] std::uint64_t workbooks_of(Layout const& layout) const;
};

class InventoryBuilder {
public:
    explicit InventoryBuilder(SameWords same) : layouts_(std::move(same)) {}

    void add(std::size_t workbook, SheetFacts&& sheet);
    [[nodiscard]] Inventory finish();

private:
    Layouts layouts_;
    Inventory inventory_;
    std::vector<std::vector<SheetFormula>> recognised_; // of each sheet
};

} // namespace hearthcell::archive
