#include "extension/archive/example/seen_workbook.hpp"

#include "extension/formulas/letters.hpp"
#include "extension/formulas/reference.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

std::vector<ContentCell const*> const no_cells;

bool holds_text(ContentCell const& cell) {
    return !cell.is_result && std::holds_alternative<std::string>(cell.value);
}

bool shows_nothing(ContentCell const& cell) {
    auto const* const text = std::get_if<std::string>(&cell.value);
    return text != nullptr && text->find_first_not_of(" \t\r\n") == std::string::npos;
}

} // namespace

bool has_cell(formulas::Range const& block, LabelledSheet::Where const& cell) {
    auto const [row, column] = cell;
    return row >= block.first.row && row <= block.last.row && column >= block.first.column &&
           column <= block.last.column;
}

std::string name_of(LabelledSheet::Where const& cell) {
    return formulas::cell_name(cell.second, cell.first);
}

Label label_of(int row, int column, std::string const& text, SameWords const& same) {
    return {row, column, key_of(text, same), text};
}

SeenWorkbook::SeenWorkbook(Contents& contents, std::vector<std::vector<Label>> const& labels, SameWords const& same)
    : contents_(contents), names_(contents.take_names()), reads_(contents.sheets(), names_, no_tables_) {
    std::vector<std::vector<Label>> entries(contents.sheets().size()), more = labels;
    more.resize(entries.size());
    std::vector<std::vector<formulas::Range>> merged(entries.size());
    for (formulas::Range const& range : contents.merged())
        if (range.first.sheet >= 0 && std::size_t(range.first.sheet) < merged.size())
            merged[std::size_t(range.first.sheet)].push_back(range);
    for (ContentCell const& cell : contents.cells()) {
        auto const [sheet, row, column] = cell.place;
        if (sheet < 0 || std::size_t(sheet) >= entries.size())
            continue;
        columns_[{sheet, column}].push_back(&cell);
        rows_[{sheet, row}].push_back(&cell);
        if (!holds_text(cell))
            continue;
        auto const& known = std::size_t(sheet) < labels.size() ? labels[std::size_t(sheet)] : std::vector<Label>();
        bool const is_label =
            std::ranges::any_of(known, [&](Label const& one) { return one.row == row && one.column == column; });
        if (is_label)
            continue;
        Label text = label_of(row, column, std::get<std::string>(cell.value), same);
        bool const is_first = rows_[{sheet, row}].size() == 1;
        // 'Mean' names its row, though that is another one on each sheet.
        (is_first && says_total(text.text) ? more : entries)[std::size_t(sheet)].push_back(std::move(text));
    }
    for (std::size_t sheet = 0; sheet < entries.size(); ++sheet)
        sheets_.emplace_back(more[sheet], merged[sheet], entries[sheet]);
}

int SeenWorkbook::number_of(std::string_view sheet) const {
    auto const& sheets = contents_.sheets();
    auto const found =
        std::ranges::find_if(sheets, [&](std::string const& one) { return formulas::is_same_name(one, sheet); });
    return found == sheets.end() ? -1 : int(found - sheets.begin());
}

ContentCell const* SeenWorkbook::cell(Place const& place) const {
    ContentCell const* const found = contents_.find(place);
    return found == nullptr || (!found->is_result && shows_nothing(*found)) ? nullptr : found;
}

std::vector<ContentCell const*> const& SeenWorkbook::column(int sheet, int column) const {
    auto const found = columns_.find({sheet, column});
    return found == columns_.end() ? no_cells : found->second;
}

std::vector<ContentCell const*> const& SeenWorkbook::row(int sheet, int row) const {
    auto const found = rows_.find({sheet, row});
    return found == rows_.end() ? no_cells : found->second;
}

bool SeenWorkbook::is_empty(Place const& place) const {
    constexpr int most_steps = 5, most_cells = 5000; // of formulas that read formulas; looked at in all
    int left = most_cells;
    return is_empty(place, most_steps, left);
}

bool SeenWorkbook::is_empty(Place const& place, int steps, int& cells) const {
    ContentCell const* const found = cell(place);
    if (found == nullptr)
        return true;
    if (!found->is_result || found->formula.empty() || steps == 0)
        return false;
    auto const ranges = reads_.of(found->formula, place);
    for (formulas::Range const& range : ranges)
        for (int row = range.first.row; row <= range.last.row; ++row)
            for (int column = range.first.column; column <= range.last.column; ++column)
                if (--cells < 0 || !is_empty({range.first.sheet, row, column}, steps - 1, cells))
                    return false;
    return !ranges.empty();
}

} // namespace hearthcell::archive
