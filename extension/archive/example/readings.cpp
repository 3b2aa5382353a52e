#include "extension/archive/example/readings.hpp"

#include "extension/formulas/moved.hpp"
#include "extension/formulas/plain.hpp"

namespace hearthcell::archive {

std::optional<int> last_of_readings(SeenWorkbook const& workbook, int sheet, LabelledSheet::Where const& first) {
    LabelledSheet const& labels = workbook.sheet(sheet);
    std::string form; // of the formulas among them
    auto const is_reading = [&](ContentCell const& cell) {
        if (!cell.is_result)
            return std::holds_alternative<double>(cell.value);
        std::string const own = formulas::seen_from(cell.place, formulas::plain(cell.formula));
        if (form.empty())
            form = own;
        return !cell.formula.empty() && own == form;
    };
    int last = first.first - 1;
    bool is_over = false;
    for (ContentCell const* const cell : workbook.column(sheet, first.second)) {
        LabelledSheet::Where const where{cell->place.row, cell->place.column};
        if (where.first < first.first || workbook.cell(cell->place) == nullptr)
            continue;
        if (labels.is_label(where))
            break; // of the next table
        bool const is_total = labels.is_in_row_of_totals(where);
        is_over = is_over || is_total || where.first != last + 1 || !is_reading(*cell);
        if (!is_over)
            last = where.first;
        else if (!is_total || !cell->is_result)
            return std::nullopt;
    }
    // A mean without a word stands in a row that is emptier than those of readings.
    std::size_t const cells = workbook.row(sheet, first.first).size();
    return last >= first.first && 2 * workbook.row(sheet, last).size() >= cells ? std::optional(last) : std::nullopt;
}

} // namespace hearthcell::archive
