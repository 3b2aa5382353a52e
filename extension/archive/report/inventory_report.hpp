#pragma once
// layouts.csv, formulas.csv and the words that may be the same; and the pages of an inventory.

#include "extension/archive/inventory/inventory.hpp"
#include "extension/archive/report/pages.hpp"

namespace hearthcell::archive {

class InventoryReport {
public:
    explicit InventoryReport(SameWords same) : builder_(std::move(same)) {}

    /// A workbook, whose sheets' facts lie in a file.
    void workbook(Origin const& origin, std::filesystem::path const& facts);
    void finish(); // when all are there

    [[nodiscard]] InventoryCounts counts() const;
    [[nodiscard]] std::vector<Page> pages(Summary const& summary) const;
    /// Words that the user has confirmed in same-words.txt stay.
    void put_in_place(std::filesystem::path const& output) const;

    static void remove(std::filesystem::path const& output); // of an earlier run with other options

private:
    [[nodiscard]] Origin const& origin_of(std::size_t sheet) const {
        return origins_[inventory_.sheets[sheet].workbook];
    }
    [[nodiscard]] Page page_of_layouts(Summary const& summary) const;
    [[nodiscard]] Page page_of_formulas() const;

    InventoryBuilder builder_;
    Inventory inventory_;
    std::vector<Origin> origins_;
};

} // namespace hearthcell::archive
