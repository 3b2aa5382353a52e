#include "extension/archive/recalculation/pairs_of_example.hpp"

#include "extension/formulas/reference.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;

/// An address of the command line, of which the first cell counts: what was typed there goes down a column by itself.
Where first_cell(formulas::Address const& address) {
    return {address.block.top, address.block.left};
}

/// The formula that was typed into a cell of the example: it is known by the first cell of the column or row that it
/// goes along, whichever of them was typed into.
ExampleFormula const* formula_at(ExampleSheet const& sheet, Where const& cell) {
    ExampleFormula const* found = nullptr;
    for (ExampleFormula const& one : sheet.formulas) {
        bool const above = one.goes_down && one.cell.second == cell.second && one.cell.first <= cell.first;
        bool const left = one.goes_right && one.cell.first == cell.first && one.cell.second <= cell.second;
        if (one.cell == cell)
            return &one;
        if ((above || left) && (found == nullptr || found->cell < one.cell))
            found = &one;
    }
    return found;
}

ExampleFormula const* formula_at(Example const& example, int old_sheet, Where const& cell) {
    int const sheet = example.now().number_of(example.old().name(old_sheet));
    ContentCell const* const typed = sheet < 0 ? nullptr : example.now().cell({sheet, cell.first, cell.second});
    if (typed == nullptr || !typed->is_result)
        return nullptr;
    for (ExampleSheet const& one : example.sheets())
        if (one.number == old_sheet)
            return formula_at(one, cell);
    return nullptr;
}

/// The old result beside a new cell. Nothing where the two go along in different ways.
std::optional<Place> old_beside(ExampleFormula const& formula, Place const& now, Where const& old, bool same_row,
                                bool same_column) {
    if (formula.goes_down)
        return same_row ? std::optional(Place{now.sheet, now.row, old.second}) : std::nullopt;
    if (formula.goes_right)
        return same_column ? std::optional(Place{now.sheet, old.first, now.column}) : std::nullopt;
    return Place{now.sheet, old.first, old.second};
}

bool is_of_an_example(ComparedPair const& pair, ExampleSet const& examples) {
    auto const now = formulas::address_in(pair.now);
    return now && std::ranges::any_of(examples.examples, [&](std::unique_ptr<Example> const& one) {
               return one->old().number_of(now->sheet) >= 0;
           });
}

std::vector<CellPair> cells_by_example(std::size_t number, ComparedPair const& pair, ExampleSet const& examples,
                                       Plan const& plan, std::vector<bool>& found) {
    std::vector<CellPair> cells;
    bool has_now = false, has_old = false;
    auto const now = formulas::address_in(pair.now), old = formulas::address_in(pair.old);
    for (Fit const& fit : plan.fits) {
        Example const& example = *examples.examples.at(fit.example);
        std::string const& sheet = example.old().name(fit.old_sheet);
        if (!now || !old || now->sheet != sheet || old->sheet != sheet)
            continue;
        auto const* const formula = formula_at(example, fit.old_sheet, first_cell(*now));
        auto const result = fit.results.find(first_cell(*old));
        has_now = has_now || formula != nullptr;
        has_old = has_old || result != fit.results.end();
        if (formula == nullptr || result == fit.results.end())
            continue;
        for (Writing const& writing : fit.writings)
            if (writing.is_formula && writing.example == formula->cell)
                if (auto const beside =
                        old_beside(*formula, writing.place, result->second, now->block.top == old->block.top,
                                   now->block.left == old->block.left))
                    cells.push_back({number, writing.place, *beside, true});
    }
    found.push_back(has_now);
    found.push_back(has_old);
    return cells;
}

} // namespace

std::vector<CellPair> cells_to_compare(office::Document const& workbook, std::vector<ComparedPair> const& pairs,
                                       ExampleSet const* examples, Plan const* plan, std::vector<bool>& found,
                                       std::vector<Problem>& problems) {
    std::vector<CellPair> cells;
    for (std::size_t number = 0; number < pairs.size(); ++number) {
        bool const by_example = examples != nullptr && is_of_an_example(pairs[number], *examples);
        auto const more = by_example ? cells_by_example(number, pairs[number], *examples, *plan, found)
                                     : cells_of_pair(workbook, number, pairs[number], found, problems);
        cells.insert(cells.end(), more.begin(), more.end());
    }
    return cells;
}

} // namespace hearthcell::archive
