#include "extension/archive/inventory/inventory.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace hearthcell::archive {
namespace {

auto kind_of(SheetFormula const& formula) {
    return std::tie(formula.function, formula.form, formula.methods, formula.is_part);
}

} // namespace

std::uint64_t Inventory::workbooks_of(Layout const& layout) const {
    std::uint64_t count = 0;
    for (std::size_t at = 0; at < layout.sheets.size(); ++at) // those of a workbook follow each other
        count += at == 0 || sheets[layout.sheets[at]].workbook != sheets[layout.sheets[at - 1]].workbook ? 1 : 0;
    return count;
}

void InventoryBuilder::add(std::size_t workbook, SheetFacts&& sheet) {
    layouts_.add(sheet);
    inventory_.sheets.push_back({workbook, std::move(sheet.name), {}, sheet.formulas, sheet.ours});
    recognised_.push_back(std::move(sheet.recognised));
}

Inventory InventoryBuilder::finish() {
    inventory_.layouts = layouts_.find();
    for (std::size_t layout = 0; layout < inventory_.layouts.size(); ++layout)
        for (std::size_t const sheet : inventory_.layouts[layout].sheets)
            inventory_.sheets[sheet].layout = layout;
    using Kind = std::tuple<std::optional<std::size_t>, std::string, std::string, std::vector<std::string>, bool>;
    struct Counted {
        Inventory::Formula formula;
        std::size_t last_sheet, last_workbook;
    };
    std::map<Kind, Counted> kinds;
    for (std::size_t sheet = 0; sheet < recognised_.size(); ++sheet) {
        auto const [workbook, name, layout, formulas, ours] = inventory_.sheets[sheet];
        for (SheetFormula& formula : recognised_[sheet]) {
            Kind kind = std::tuple_cat(std::tuple(layout), kind_of(formula));
            std::uint64_t const cells = formula.cells;
            auto const [known, is_new] = kinds.try_emplace(
                std::move(kind), Counted{{std::move(formula), layout, sheet, 0, 1, 1}, sheet, workbook});
            Counted& counted = known->second;
            counted.formula.cells += cells;
            counted.formula.sheets += std::exchange(counted.last_sheet, sheet) != sheet ? 1 : 0;
            counted.formula.workbooks += std::exchange(counted.last_workbook, workbook) != workbook ? 1 : 0;
        }
    }
    for (auto& [kind, counted] : kinds)
        inventory_.formulas.push_back(std::move(counted.formula));
    std::ranges::stable_sort(inventory_.formulas, [](Inventory::Formula const& a, Inventory::Formula const& b) {
        auto const place = [](Inventory::Formula const& one) { return one.layout.value_or(~std::size_t{0}); };
        return std::tuple(place(a), b.cells) < std::tuple(place(b), a.cells);
    });
    return std::move(inventory_);
}

} // namespace hearthcell::archive
