#include "extension/archive/example/reach.hpp"

#include "extension/archive/example/result_lines.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/plain.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

Place at(int sheet, LabelledSheet::Where const& where) {
    return {sheet, where.first, where.second};
}

} // namespace

Reach::Reach(FitWish const& wish, SeenWorkbook const& target, int sheet)
    : old_(wish.workbooks.old()), target_(target), old_sheet_(wish.sheet.number), sheet_(sheet) {}

std::optional<Refused> Reach::find_steps(Placed& one, std::vector<LeftCell>& left) const {
    bool const down = goes_down(one);
    one.is_single = !down && !one.example.goes_right;
    if (!one.result || (one.is_single && !one.example.is_over)) {
        if (!one.result || target_.cell(at(sheet_, *one.result)) != nullptr)
            one.steps = {Step{}};
        return std::nullopt;
    }
    if (!one.old_text)
        return Refused{name_of(*one.result) + ": the old result " + name_of(*one.example.result) +
                       " cannot be followed to this sheet"};
    std::vector<Step> const steps = possible_steps(one, down);
    auto const stands = [&](Step const& step) { return is_old_result(one, step) && may_go_to(one, step); };
    auto const last = std::find_if(steps.rbegin(), steps.rend(), stands);
    int next_row = last == steps.rend() ? 0 : last->rows + 1; // what goes on without a gap belongs to it, too
    for (Step const& step : steps) {
        bool const is_between = last != steps.rend() && (step.rows < last->rows || step.columns < last->columns);
        bool const is_next = down && step.rows == next_row;
        next_row += is_next ? 1 : 0;
        bool const is_in_old =
            std::ranges::find(one.example.steps, step.rows + step.columns) != one.example.steps.end();
        if (stands(step))
            one.steps.push_back(step);
        else if (is_old_result(one, step) && is_between)
            left.push_back({at(sheet_, by(*one.result, step)), "a row of totals, by its words"});
        else if ((is_between || is_next || (!down && is_in_old) || (step.rows == 0 && step.columns == 0)) &&
                 may_go_to(one, step))
            look_at_other(one, step, left);
    }
    return std::nullopt;
}

/// As it does in OLD; where the result stands in one row there, down the rows that a table has here.
bool Reach::goes_down(Placed const& one) const {
    if (!one.result || one.example.goes_down || one.example.goes_right)
        return one.result && one.example.goes_down;
    Where const& result = *one.example.result;
    return !old_.sheet(old_sheet_).to_the_left(result) && may_go_down(old_, at(old_sheet_, result));
}

/// To the cells of its column or row, from the first result on.
std::vector<Step> Reach::possible_steps(Placed const& one, bool goes_down) const {
    if (one.is_single)
        return {Step{}};
    std::vector<Step> steps;
    auto const [row, column] = *one.result;
    for (ContentCell const* const cell : goes_down ? target_.column(sheet_, column) : target_.row(sheet_, row)) {
        Step const step{goes_down ? cell->place.row - row : 0, goes_down ? 0 : cell->place.column - column};
        if (step.rows >= 0 && step.columns >= 0)
            steps.push_back(step);
    }
    return steps;
}

/// The old result, so far from its first, where it stands there.
bool Reach::is_old_result(Placed const& one, Step const& step) const {
    ContentCell const* const cell = target_.cell(at(sheet_, by(*one.result, step)));
    if (cell == nullptr || !cell->is_result || cell->formula.empty() || cell->is_array || !one.old_text)
        return false;
    return formulas::comparable(cell->formula) ==
           formulas::comparable(formulas::moved(*one.old_text, step.rows, step.columns));
}

bool Reach::may_go_to(Placed const& one, Step const& step) const {
    if (step.rows == 0 && step.columns == 0)
        return true;
    LabelledSheet const& labels = target_.sheet(sheet_);
    Where const result = by(*one.result, step);
    if (step.rows > 0)
        return !labels.is_in_row_of_totals(result) && is_same_label(labels.above(*one.result), labels.above(result));
    return !labels.is_in_column_of_totals(result);
}

/// Something else stands where the old result does elsewhere.
void Reach::look_at_other(Placed& one, Step const& step, std::vector<LeftCell>& left) const {
    Place const place = at(sheet_, by(*one.result, step));
    auto const leave = [&](std::string const& why) { left.push_back({place, why}); };
    ContentCell const* const cell = target_.cell(place);
    if (cell == nullptr)
        return one.example.is_over && one.is_single ? leave("empty") : void();
    if (cell->is_result)
        return stands_there(target_, sheet_, one, step) ? void() : leave("another formula");
    bool const is_own_place =
        step.columns == 0 || std::ranges::find(one.example.steps, step.columns) != one.example.steps.end();
    if (!std::holds_alternative<double>(cell->value)) // between tests side by side stand units
        return is_own_place ? leave("a note") : void();
    if (one.example.is_over)
        leave("typed over, " + written(cell->value));
    else
        one.steps.push_back(step);
}

bool stands_there(SeenWorkbook const& target, int sheet, Placed const& one, Step const& step) {
    ContentCell const* const cell = target.cell(at(sheet, by(one.there, step)));
    return cell != nullptr && cell->is_result &&
           formulas::comparable(cell->formula) ==
               formulas::comparable(formulas::moved(one.carried.text, step.rows, step.columns));
}

} // namespace hearthcell::archive
