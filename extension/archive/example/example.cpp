#include "extension/archive/example/example.hpp"

#include "extension/archive/example/example_file.hpp"
#include "extension/archive/example/result_lines.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/plain.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;

bool is_formula(ContentCell const* cell) {
    return cell != nullptr && cell->is_result;
}

std::string shown_in(ContentCell const* cell) {
    if (cell == nullptr)
        return {};
    return cell->is_result ? formulas::plain(cell->formula) : written(cell->value);
}

bool is_same_number(double one, double other) {
    return std::abs(one - other) <= 1e-14 * std::max(std::abs(one), std::abs(other));
}

/// Two formats may write the same in other ways.
bool is_same(ContentCell const* before, ContentCell const* after) {
    if (before == nullptr || after == nullptr)
        return before == after;
    if (before->is_result != after->is_result)
        return false;
    if (before->is_result)
        return formulas::comparable(before->formula) == formulas::comparable(after->formula);
    auto const *const number = std::get_if<double>(&before->value), *const other = std::get_if<double>(&after->value);
    if (number != nullptr && other != nullptr)
        return is_same_number(*number, *other);
    return written(before->value) == written(after->value);
}

/// Why a difference is not carried; empty where it is.
std::string why_not_carried(ContentCell const* before, ContentCell const* after) {
    if (after == nullptr)
        return "what was cleared is not carried";
    if (!after->is_result) {
        if (!std::holds_alternative<std::string>(after->value))
            return "numbers are not carried: type them into the formula";
        return before == nullptr ? "" : "a word that replaces something is not carried";
    }
    if (after->formula.empty() || after->is_array)
        return "a formula of an array is not carried";
    if (before == nullptr)
        return {};
    if (!before->is_result)
        return "it stands over what was typed, not over a formula, and is not carried";
    return before->formula.empty() || before->is_array ? "it stands over a formula that cannot be compared" : "";
}

/// The nearest old result in its row, with nothing but words between; else the one above it.
std::optional<Place> result_beside(SeenWorkbook const& old, Place const& place) {
    auto const looked_at = [&](Place const& at) -> std::optional<bool> { // nothing: look further
        ContentCell const* const cell = old.cell(at);
        if (cell == nullptr || (!cell->is_result && std::holds_alternative<std::string>(cell->value)))
            return std::nullopt;
        return cell->is_result && !cell->formula.empty() && !cell->is_array;
    };
    constexpr int furthest = 12;
    for (int by = 1; by <= furthest && by <= place.column; ++by)
        if (auto const is_result = looked_at({place.sheet, place.row, place.column - by}))
            return *is_result ? std::optional(Place{place.sheet, place.row, place.column - by}) : std::nullopt;
    for (int by = 1; by <= furthest && by <= place.row; ++by)
        if (auto const is_result = looked_at({place.sheet, place.row - by, place.column}))
            return *is_result ? std::optional(Place{place.sheet, place.row - by, place.column}) : std::nullopt;
    return std::nullopt;
}

} // namespace

Example::Example(std::filesystem::path now, std::filesystem::path old, std::uint64_t largest,
                 std::vector<std::vector<Label>> const& labels, SameWords const& same)
    : now_file(std::move(now)), old_file(std::move(old)), room_(Room::for_workbooks_up_to(largest)),
      old_contents_(room_), now_contents_(room_) {
    read_example_file(old_file, [&](Format format) { read_contents(old_file, format, largest, room_, old_contents_); });
    read_example_file(now_file, [&](Format format) { read_contents(now_file, format, largest, room_, now_contents_); });
    old_.emplace(old_contents_, labels, same);
    now_.emplace(now_contents_, std::vector<std::vector<Label>>(), same);
    for (int sheet = 0; sheet < int(old_->size()); ++sheet)
        if (int const other = now_->number_of(old_->name(sheet)); other >= 0)
            compare(sheet, other);
}

void Example::compare(int sheet, int sheet_now) {
    std::set<Where> cells;
    for (auto const& [workbook, number] : {std::pair(&*old_, sheet), std::pair(&*now_, sheet_now)})
        for (ContentCell const& cell : workbook->contents().cells())
            if (cell.place.sheet == number)
                cells.insert({cell.place.row, cell.place.column});
    ExampleSheet found{sheet, {}, {}};
    for (auto const& [row, column] : cells)
        compare({sheet, row, column}, old_->cell({sheet, row, column}), now_->cell({sheet_now, row, column}), found);
    drop_what_reads_numbers(found);
    if (!found.formulas.empty() || !found.words.empty())
        sheets_.push_back(std::move(found));
}

void Example::compare(Place const& place, ContentCell const* before, ContentCell const* after, ExampleSheet& sheet) {
    if (is_same(before, after))
        return;
    Difference difference{place.sheet,      {place.row, place.column}, is_formula(after) ? "formula" : "word",
                          shown_in(before), shown_in(after),           why_not_carried(before, after)};
    if (difference.note.empty() && is_formula(after))
        add_formula(place, before, difference.after, sheet);
    else if (difference.note.empty())
        sheet.words.push_back({difference.cell, difference.after});
    else if (!is_formula(after) && (after == nullptr || !std::holds_alternative<std::string>(after->value)))
        difference.kind = "number";
    differences_.push_back(std::move(difference));
}

/// Whether a formula of the line that a cell stands in was met before; then it must be the same.
bool Example::is_known(Place const& place, std::string const& text, ExampleSheet const& sheet) const {
    auto const line = in_line_.find(place);
    if (line == in_line_.end())
        return false;
    auto const& [formula, rows, columns] = line->second;
    if (formulas::comparable(sheet.formulas[formula].text) !=
        formulas::comparable(formulas::moved(text, -rows, -columns)))
        throw std::invalid_argument(old_->name(place.sheet) + "." + name_of({place.row, place.column}) +
                                    " holds another formula than the cells in line with it: which one is to be "
                                    "carried? Type the same into all of them, or only one");
    return true;
}

/// Formulas that are the same down a column of results, or along a row of them, are one.
void Example::add_formula(Place const& place, ContentCell const* before, std::string text, ExampleSheet& sheet) {
    if (is_known(place, text, sheet))
        return;
    ExampleFormula formula{{place.row, place.column}, std::move(text), {}, {}, before != nullptr, false, false};
    auto const result = formula.is_over ? std::optional(place) : result_beside(*old_, place);
    if (result) {
        bool const is_beside = formula.is_over || result->row == place.row;
        bool const is_below = formula.is_over || result->column == place.column;
        std::vector<Place> const down = same_down(*old_, *result), right = same_to_the_right(*old_, *result);
        formula.goes_down = is_beside && down.size() > 1 && may_go_down(*old_, *result);
        formula.goes_right = !formula.goes_down && is_below && right.size() > 1 && may_go_right(*old_, *result);
        Place const first = formula.goes_down ? down.front() : formula.goes_right ? right.front() : *result;
        int const rows = first.row - result->row, columns = first.column - result->column;
        formula.cell = {place.row + rows, place.column + columns};
        formula.text = formulas::moved(formula.text, rows, columns);
        formula.result = Where(first.row, first.column);
        formula.old_text = formulas::plain(old_->cell(first)->formula);
        for (Place const& one : formula.goes_down ? down : formula.goes_right ? right : std::vector<Place>())
            formula.steps.push_back(formula.goes_down ? one.row - first.row : one.column - first.column);
    }
    for (int const step : formula.steps) {
        int const rows = formula.goes_down ? step : 0, columns = formula.goes_right ? step : 0;
        in_line_[{place.sheet, formula.cell.first + rows, formula.cell.second + columns}] = {sheet.formulas.size(),
                                                                                             rows, columns};
    }
    sheet.formulas.push_back(std::move(formula));
}

std::vector<Place> Example::read_by(ExampleSheet const& sheet) const {
    std::vector<Place> cells;
    for (ExampleFormula const& formula : sheet.formulas) {
        Place const place{now_->number_of(old_->name(sheet.number)), formula.cell.first, formula.cell.second};
        for (formulas::Range const& range : now_->reads().of(formula.text, place))
            if (int const own = old_->number_of(now_->name(range.first.sheet)); own >= 0)
                cells.push_back({own, range.first.row, range.first.column});
        if (formula.is_over)
            cells.push_back({sheet.number, formula.cell.first, formula.cell.second});
    }
    return cells;
}

/// A formula that reads a number which only NEW has would read nothing elsewhere.
void Example::drop_what_reads_numbers(ExampleSheet& sheet) {
    std::set<Where> only_here;
    for (Difference const& one : differences_)
        if (one.sheet == sheet.number && one.before.empty() && !one.note.empty())
            only_here.insert(one.cell);
    for (bool again = true; again;) {
        again = false;
        for (auto formula = sheet.formulas.begin(); formula != sheet.formulas.end();) {
            Place const place{now_->number_of(old_->name(sheet.number)), formula->cell.first, formula->cell.second};
            std::optional<Where> reads;
            for (formulas::Range const& range : now_->reads().of(formula->text, place))
                for (Where const& one : only_here)
                    if (range.first.sheet == place.sheet && has_cell(range, one))
                        reads = one;
            if (!reads) {
                ++formula;
                continue;
            }
            for (Difference& one : differences_)
                if (one.sheet == sheet.number && one.cell == formula->cell)
                    one.note = "it reads " + name_of(*reads) + ", which is not carried";
            only_here.insert(formula->cell);
            formula = sheet.formulas.erase(formula);
            again = true;
        }
    }
}

} // namespace hearthcell::archive
