#include "extension/archive/recalculation/old_and_new.hpp"

#include "extension/archive/recalculation/cells_by_place.hpp"
#include "extension/archive/recalculation/named_cells.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/office/text.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

constexpr std::int64_t most_cells = 50'000; // of one pair in one workbook

using Size = std::pair<int, int>;

Size size_of(formulas::Range const& range) {
    return {range.last.row - range.first.row + 1, range.last.column - range.first.column + 1};
}

/// Whole columns are cut where their sheets end: the longer one counts.
Size common_size(ComparedPair const& pair, Target const& now, Target const& old) {
    auto const [rows, columns] = size_of(now.place);
    auto const [old_rows, old_columns] = size_of(old.place);
    if (rows == old_rows && columns == old_columns)
        return {rows, columns};
    bool const as_addresses = formulas::address_in(pair.now) && formulas::address_in(pair.old);
    return as_addresses ? Size{std::max(rows, old_rows), std::max(columns, old_columns)} : Size{0, 0};
}

std::string name_of_old(CellPair const& cells, std::vector<std::string> const& sheets) {
    std::string const cell = cell_name(cells.old);
    return cells.old.sheet == cells.now.sheet ? cell : sheets.at(std::size_t(cells.old.sheet)) + "." + cell;
}

} // namespace

std::vector<CellPair> cells_of_pair(office::Document const& workbook, std::size_t number, ComparedPair const& pair,
                                    std::vector<bool>& found, std::vector<Problem>& problems) {
    return office::asking("looking for the cells to compare", [&]() -> std::vector<CellPair> {
        auto const now = target_of(workbook, pair.now), old = target_of(workbook, pair.old);
        found.push_back(now && now->cells.is());
        found.push_back(old && old->cells.is());
        if (!now || !old || !now->cells.is() || !old->cells.is())
            return {};
        auto const [rows, columns] = common_size(pair, *now, *old);
        if (rows == 0 || std::int64_t{rows} * columns > most_cells) {
            problems.push_back({Reason::not_compared,
                                pair.now + " and " + pair.old +
                                    (rows == 0 ? " are blocks of different size" : " have more than 50,000 cells")});
            return {};
        }
        std::vector<CellPair> cells;
        Place const &from = now->place.first, &beside = old->place.first;
        for (int row = 0; row < rows; ++row)
            for (int column = 0; column < columns; ++column)
                cells.push_back({number,
                                 {from.sheet, from.row + row, from.column + column},
                                 {beside.sheet, beside.row + row, beside.column + column}});
        return cells;
    });
}

OldAndNew::OldAndNew(office::Document const& workbook, std::vector<CellPair> cells, StoredResults const& stored)
    : cells_(std::move(cells)) {
    std::set<Place> typed;
    for (CellPair const& one : cells_)
        if (Stored const* const result = stored.find(one.old))
            before_[one.old] = result->value;
        else
            typed.insert(one.old);
    office::asking("reading the old results", [&] { before_.merge(values_at(workbook, typed)); });
}

void OldAndNew::keep_written(std::set<Place> const& cells) {
    std::erase_if(cells_, [&](CellPair const& one) { return one.carried && !cells.contains(one.now); });
}

std::vector<ComparedRow> OldAndNew::rows(office::Office& office, office::Document const& workbook) const {
    return office::asking("comparing old and new results", [&] {
        std::set<Place> now;
        for (CellPair const& one : cells_)
            now.insert(one.now);
        auto const after = values_at(workbook, now);
        auto const formulas = formulas_at(workbook, now);
        auto const numbers = by_methods(workbook, now);
        auto const remarks = remarks_on(office, workbook, now);
        auto const sheets = workbook.model()->getSheets()->getElementNames();
        std::vector<std::string> names;
        for (rtl::OUString const& sheet : sheets)
            names.push_back(office::narrow(sheet));
        std::vector<ComparedRow> rows;
        for (CellPair const& one : cells_) {
            ComparedRow row{.pair = one.pair,
                            .sheet = names.at(std::size_t(one.now.sheet)),
                            .now_cell = cell_name(one.now),
                            .old_cell = name_of_old(one, names),
                            .row = one.now.row + 1,
                            .before = before_.at(one.old),
                            .after = after.at(one.now)};
            if (!set_beside(row, formulas.at(one.now)))
                continue;
            if (auto const found = numbers.find(one.now); found != numbers.end())
                row.by_methods = found->second;
            if (auto const found = remarks.find(one.now); found != remarks.end())
                row.remark += (row.remark.empty() ? "" : " ") + found->second;
            rows.push_back(std::move(row));
        }
        return rows;
    });
}

} // namespace hearthcell::archive
