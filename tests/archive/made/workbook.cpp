#include "workbook.hpp"

#include <algorithm>
#include <cmath>

namespace hearthcell::tests::archive {
namespace {

bool is_error(Held const& held) {
    return std::holds_alternative<CellError>(held);
}

/// What differs in the last digits only is no change that counts.
bool same(Held const& before, Held const& after) {
    double const* const old = std::get_if<double>(&before);
    double const* const fresh = std::get_if<double>(&after);
    if (old != nullptr && fresh != nullptr)
        return std::abs(*old - *fresh) <= 1e-9 * std::abs(*old);
    return before == after;
}

std::string kind_of(Held const& before, Held const& after) {
    if (is_error(after))
        return "new error";
    if (is_error(before))
        return "error gone";
    return std::holds_alternative<double>(after) ? "number" : "text";
}

template <class Take> void each_formula(Workbook const& workbook, Take take) {
    for (Sheet const& sheet : workbook.sheets)
        for (std::size_t row = 0; row < sheet.rows.size(); ++row)
            for (std::size_t column = 0; column < sheet.rows[row].size(); ++column)
                if (Cell const& cell = sheet.rows[row][column]; !cell.formula.empty() && !cell.is_volatile)
                    take(sheet, cell_name(row, column), cell);
}

} // namespace

std::string cell_name(std::size_t row, std::size_t column) {
    return std::string(1, static_cast<char>('A' + column)) + std::to_string(row + 1);
}

std::vector<Change> expected_changes(Workbook const& workbook) {
    std::vector<Change> changes;
    each_formula(workbook, [&](Sheet const& sheet, std::string const& name, Cell const& cell) {
        if (!same(cell.stored, cell.now))
            changes.push_back({workbook.path.string(), sheet.name, name, cell.stored, cell.now,
                               kind_of(cell.stored, cell.now), cell.shown});
    });
    return changes;
}

bool has_new_errors(Workbook const& workbook) {
    std::vector<Change> const changes = expected_changes(workbook);
    return std::any_of(changes.begin(), changes.end(), [](Change const& change) { return change.kind == "new error"; });
}

} // namespace hearthcell::tests::archive
