#include "extension/archive/example/fit.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/formulas/moved.hpp"
#include "extension/formulas/plain.hpp"

#include <algorithm>
#include <list>

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;

constexpr std::size_t most_writings = 50'000; // of a sheet

struct Step { // from the first of its kind
    int rows = 0, columns = 0;
};

/// A formula of the example on this sheet.
struct Placed {
    ExampleFormula const& example;
    Where there;
    std::optional<Where> result;         // where the old result stands
    std::optional<std::string> old_text; // of that result, as it should read; nothing: that cannot be told
    CarriedFormula carried;
    std::vector<Step> steps = {};
    bool is_single = false;
};

Where by(Where const& from, Step const& step) {
    return {from.first + step.rows, from.second + step.columns};
}

class Fitting {
public:
    Fitting(FitWish const& wish, SeenWorkbook const& target, int sheet)
        : wish_(wish), old_(wish.workbooks.old()), target_(target), sheet_(sheet),
          before_(old_.sheet(wish.sheet.number)), now_(target.sheet(sheet)),
          carrier_(old_, wish.sheet.number, target, sheet) {}

    std::variant<Fit, Refused> result() {
        place_words();
        place_formulas();
        carry_formulas();
        if (fit_.not_carried.empty() || (wish_.partly && !placed_.empty())) {
            for (Placed& one : placed_)
                find_steps(one);
            write_words();
            write_formulas();
            note_results();
        }
        if (!fit_.not_carried.empty() && (!wish_.partly || fit_.writings.empty()))
            return fit_.not_carried.front();
        fit_.example = wish_.example;
        fit_.old_sheet = wish_.sheet.number;
        fit_.sheet = sheet_;
        return std::move(fit_);
    }

private:
    void refuse(std::string why) { fit_.not_carried.push_back({std::move(why)}); }

    [[nodiscard]] Place at(Where const& where) const { return {sheet_, where.first, where.second}; }
    [[nodiscard]] Place at_old(Where const& where) const { return {wish_.sheet.number, where.first, where.second}; }

    /// A cell that is empty on the old sheet: by its labels, or else by a word that is carried, too.
    std::variant<Where, Refused> place_of_new(Where const& cell) const {
        if (!before_.to_the_left(cell))
            for (bool const of_row : {true, false}) {
                std::pair<Where, Where> const* nearest = nullptr;
                for (auto const& word : words_)
                    if (of_row ? word.first.first == cell.first && word.first.second < cell.second
                               : word.first.second == cell.second && word.first.first < cell.first)
                        nearest = &word;
                if (nearest != nullptr)
                    return by(nearest->second,
                              {cell.first - nearest->first.first, cell.second - nearest->first.second});
            }
        return carrier_.of(cell);
    }

    /// Beside an old result, with the same headings between.
    std::variant<Where, Refused> place_beside(ExampleFormula const& formula, Where const& result) const {
        Step const step{formula.cell.first - formula.result->first, formula.cell.second - formula.result->second};
        Where const there = by(result, step);
        for (int column = 1; step.rows == 0 && column <= step.columns; ++column) {
            auto const before = before_.above(by(*formula.result, {0, column}));
            auto const now = now_.above(by(result, {0, column}), &before_);
            if (before.has_value() != now.has_value() || (before && before->key != now->key))
                return Refused{name_of(there) + " has " + (now ? "'" + now->text + "'" : "no label") +
                               " above it or beside it, not " + (before ? "'" + before->text + "'" : "none")};
        }
        auto const by_label = place_of_new(formula.cell);
        auto const* const labelled = std::get_if<Where>(&by_label);
        if (labelled != nullptr && *labelled != there)
            return Refused{name_of(formula.cell) + ": it would be " + name_of(*labelled) + " by its labels, and " +
                           name_of(there) + " by the result beside it"};
        return there;
    }

    void place_words() {
        for (ExampleWord const& word : wish_.sheet.words) {
            auto const there = place_of_new(word.cell);
            auto const* const place = std::get_if<Where>(&there);
            if (place == nullptr)
                refuse(std::get<Refused>(there).why);
            else if (names_a_formula(word) && !is_free_for(word, *place) && now_.is_label(*place))
                refuse(name_of(*place) + " is not empty, where the word '" + line_of(word.text, 40) + "' is to go");
            else
                words_.emplace_back(word.cell, *place);
        }
    }

    bool names_a_formula(ExampleWord const& word) const {
        return std::ranges::any_of(wish_.sheet.formulas, [&](ExampleFormula const& one) {
            return !before_.to_the_left(one.cell) &&
                   ((one.cell.first == word.cell.first && one.cell.second > word.cell.second) ||
                    (one.cell.second == word.cell.second && one.cell.first > word.cell.first));
        });
    }

    bool is_free_for(ExampleWord const& word, Where const& place) const {
        ContentCell const* const cell = target_.cell(at(place));
        return cell == nullptr || (!cell->is_result && written(cell->value) == word.text);
    }

    void place_formulas() {
        for (ExampleFormula const& formula : wish_.sheet.formulas) {
            std::optional<Where> result;
            std::variant<Where, Refused> there = Refused{};
            if (formula.result) {
                there = carrier_.of(*formula.result);
                if (auto const* const found = std::get_if<Where>(&there)) {
                    result = *found;
                    if (!formula.is_over)
                        there = place_beside(formula, *result);
                }
            } else
                there = place_of_new(formula.cell);
            if (auto const* const why = std::get_if<Refused>(&there)) {
                refuse(why->why);
                continue;
            }
            Where const place = std::get<Where>(there);
            if (!formula.is_over)
                carrier_.place(formula.cell, place, formula.result);
            placed_.push_back({formula, place, result, {}, {}, {}, false});
        }
    }

    void carry_formulas() {
        std::set<Where> lost; // cells whose formula is not carried
        for (ExampleFormula const& formula : wish_.sheet.formulas)
            if (std::ranges::none_of(placed_, [&](Placed const& one) { return &one.example == &formula; }))
                lost.insert(formula.cell);
        for (bool again = true; again;) {
            again = false;
            for (auto one = placed_.begin(); one != placed_.end();) {
                auto carried = carrier_.of(one->example.text, wish_.workbooks.now());
                auto const* const why = std::get_if<Refused>(&carried);
                bool const reads_lost = why == nullptr && reads_any(std::get<CarriedFormula>(carried), lost);
                if (why == nullptr && !reads_lost) {
                    one->carried = std::get<CarriedFormula>(std::move(carried));
                    ++one;
                    continue;
                }
                refuse(why != nullptr ? why->why : name_of(one->example.cell) + ": it reads what is not carried");
                lost.insert(one->example.cell);
                one = placed_.erase(one);
                again = true;
            }
        }
        for (Placed& one : placed_)
            if (one.result) {
                auto const old_text = carrier_.of(one.example.old_text, old_);
                if (auto const* const carried = std::get_if<CarriedFormula>(&old_text))
                    one.old_text = carried->text;
                else if (*one.result == *one.example.result)
                    one.old_text = one.example.old_text;
            }
    }

    bool reads_any(CarriedFormula const& formula, std::set<Where> const& cells) const {
        return std::ranges::any_of(formula.reads, [&](ReadBlock const& block) {
            auto const [first, last] = block.before;
            return first.sheet == wish_.sheet.number && std::ranges::any_of(cells, [&](Where const& cell) {
                       return cell.first >= first.row && cell.first <= last.row && cell.second >= first.column &&
                              cell.second <= last.column;
                   });
        });
    }

    /// The old result, so far from its first, where it stands there.
    bool is_old_result(Placed const& one, Step const& step) const {
        ContentCell const* const cell = target_.cell(at(by(*one.result, step)));
        if (cell == nullptr || !cell->is_result || cell->formula.empty() || cell->is_array || !one.old_text)
            return false;
        return formulas::comparable(cell->formula) ==
               formulas::comparable(formulas::moved(*one.old_text, step.rows, step.columns));
    }

    /// How far it goes: exactly where the old result stands.
    void find_steps(Placed& one) {
        bool const goes_down = one.result && (one.example.goes_down ||
                                              (!one.example.goes_right && !before_.to_the_left(*one.example.result) &&
                                               may_go_down(old_, at_old(*one.example.result))));
        one.is_single = !goes_down && !one.example.goes_right;
        if (!one.result || (one.is_single && !one.example.is_over)) {
            if (!one.result || target_.cell(at(*one.result)) != nullptr)
                one.steps = {{}};
            return;
        }
        if (!one.old_text)
            return refuse(name_of(*one.result) + ": the old result " + name_of(*one.example.result) +
                          " cannot be followed to this sheet");
        std::vector<Step> steps;
        auto const look = [&](std::vector<ContentCell const*> const& cells, bool down) {
            for (ContentCell const* const cell : cells) {
                Step const step{down ? cell->place.row - one.result->first : 0,
                                down ? 0 : cell->place.column - one.result->second};
                if (step.rows >= 0 && step.columns >= 0)
                    steps.push_back(step);
            }
        };
        if (goes_down)
            look(target_.column(sheet_, one.result->second), true);
        else if (one.example.goes_right)
            look(target_.row(sheet_, one.result->first), false);
        else
            steps = {{}};
        auto const stands = [&](Step const& step) { return is_old_result(one, step) && may_go_to(one, step); };
        auto const last = std::find_if(steps.rbegin(), steps.rend(), stands);
        int next_row = last == steps.rend() ? 0 : last->rows + 1; // what goes on without a gap belongs to it, too
        for (Step const& step : steps) {
            bool const is_between = last != steps.rend() && (step.rows < last->rows || step.columns < last->columns);
            bool const is_next = goes_down && step.rows == next_row;
            next_row += is_next ? 1 : 0;
            bool const is_in_old =
                std::ranges::find(one.example.steps, step.rows + step.columns) != one.example.steps.end();
            if (stands(step))
                one.steps.push_back(step);
            else if ((is_between || is_next || (!goes_down && is_in_old) || (step.rows == 0 && step.columns == 0)) &&
                     may_go_to(one, step))
                look_at_other(one, step);
        }
    }

    /// Something else stands where the old result does elsewhere.
    void look_at_other(Placed& one, Step const& step) {
        Place const place = at(by(*one.result, step));
        ContentCell const* const cell = target_.cell(place);
        if (cell == nullptr)
            return;
        if (cell->is_result)
            return is_already_there(one, step) ? void() : leave(place, "another formula");
        if (!std::holds_alternative<double>(cell->value))
            return leave(place, "a note");
        if (one.example.is_over)
            leave(place, "typed over, " + written(cell->value));
        else
            one.steps.push_back(step);
    }

    bool is_already_there(Placed const& one, Step const& step) const {
        ContentCell const* const cell = target_.cell(at(by(one.there, step)));
        return cell != nullptr && cell->is_result &&
               formulas::comparable(cell->formula) ==
                   formulas::comparable(formulas::moved(one.carried.text, step.rows, step.columns));
    }

    bool may_go_to(Placed const& one, Step const& step) const {
        if (step.rows == 0 && step.columns == 0)
            return true;
        Where const result = by(*one.result, step);
        if (step.rows > 0) {
            auto const first = now_.above(*one.result), here = now_.above(result);
            return !now_.is_in_row_of_totals(result) && first.has_value() == here.has_value() &&
                   (!first || first->where == here->where);
        }
        return !now_.is_in_column_of_totals(result);
    }

    void leave(Place const& place, std::string const& why) { fit_.left.push_back({place, why}); }

    void write_words() {
        for (ExampleWord const& word : wish_.sheet.words) {
            auto const there =
                std::ranges::find(words_, word.cell, [](std::pair<Where, Where> const& one) { return one.first; });
            if (there == words_.end())
                continue;
            if (target_.cell(at(there->second)) == nullptr)
                fit_.writings.push_back({at(there->second), word.cell, false, false, word.text});
            else if (!is_free_for(word, there->second))
                leave(at(there->second), "the word '" + line_of(word.text, 40) + "' is not put over what stands there");
        }
    }

    void write_formulas() {
        std::set<Place> written;
        std::vector<std::pair<Placed const*, Step>> waiting;
        for (Placed const& one : placed_)
            for (Step const& step : one.steps)
                if (is_free(one, step))
                    waiting.emplace_back(&one, step);
        // What reads nothing but empty cells stays blank; and what reads nothing but that.
        for (bool again = true; again;) {
            again = false;
            for (auto one = waiting.begin(); one != waiting.end();)
                if (reads_something(*one->first, one->second, written)) {
                    write(*one->first, one->second);
                    written.insert(fit_.writings.back().place);
                    one = waiting.erase(one);
                    again = true;
                } else
                    ++one;
        }
    }

    /// Only where the target holds what OLD held there.
    bool is_free(Placed const& one, Step const& step) {
        if (one.example.is_over)
            return true;
        Place const place = at(by(one.there, step));
        ContentCell const* const cell = target_.cell(place);
        if (cell != nullptr && !is_already_there(one, step))
            leave(place, cell->is_result ? "another formula" : "not empty");
        return cell == nullptr;
    }

    static formulas::Range moved(ReadBlock const& block, Step const& step) {
        formulas::Range range = block.now;
        for (Place* const corner : {&range.first, &range.last}) {
            corner->row += block.follows_rows ? step.rows : 0;
            corner->column += block.follows_columns ? step.columns : 0;
        }
        return range;
    }

    bool reads_something(Placed const& one, Step const& step, std::set<Place> const& written) const {
        bool const has_followers = std::ranges::any_of(
            one.carried.reads, [](ReadBlock const& block) { return block.follows_rows || block.follows_columns; });
        int left = 5000;
        for (ReadBlock const& block : one.carried.reads) {
            if (has_followers && !block.follows_rows && !block.follows_columns)
                continue; // a constant of the sheet
            auto const [first, last] = moved(block, step);
            for (int row = first.row; row <= last.row; ++row)
                for (int column = first.column; column <= last.column; ++column) {
                    Place const place{first.sheet, row, column};
                    if (--left < 0 || written.contains(place) || !target_.is_empty(place))
                        return true;
                }
        }
        return one.carried.reads.empty();
    }

    void write(Placed const& one, Step const& step) {
        for (ReadBlock const& block : one.carried.reads) {
            check_labels(one, block, step);
            check_qualifier(block);
            if (old_.cell(block.before.first) != nullptr)
                fit_.formats.push_back({block.before.first, moved(block, step)});
        }
        if (one.example.is_over) {
            Place const place = at(by(one.there, step));
            fit_.formats.push_back({at_old(one.example.cell), {place, place}});
        }
        if (fit_.writings.size() >= most_writings)
            refuse("it would go into more than " + std::to_string(most_writings) + " cells");
        else
            fit_.writings.push_back({at(by(one.there, step)), one.example.cell, true, one.example.is_over,
                                     formulas::moved(one.carried.text, step.rows, step.columns)});
    }

    /// Further down a cell that is read must have the same heading; further to the right the same label in its row.
    void check_labels(Placed const& one, ReadBlock const& block, Step const& step) {
        bool const moves = (step.rows > 0 && block.follows_rows) || (step.columns > 0 && block.follows_columns);
        if (!moves)
            return;
        LabelledSheet const& labels = target_.sheet(block.now.first.sheet);
        Where const first{block.now.first.row, block.now.first.column};
        formulas::Range const range = moved(block, step);
        Where const here{range.first.row, range.first.column};
        auto const label = step.rows > 0 ? labels.above(first) : labels.to_the_left(first);
        auto const label_here = step.rows > 0 ? labels.above(here) : labels.to_the_left(here);
        auto const unit = labels.unit_of(first), unit_here = labels.unit_of(here);
        if (!label || !label_here || label->where != label_here->where)
            refuse(name_of(by(one.there, step)) + ": it would read " + name_of(here) + ", which is not named as " +
                   name_of(first) + " is");
        else if (unit.has_value() != unit_here.has_value() || (unit && unit->key != unit_here->key))
            refuse(name_of(here) + ": its unit is another one than that of " + name_of(first));
    }

    /// A word behind a reading, as 'dry basis', that names nothing behind it.
    static std::optional<LabelledSheet::Named> qualifier(SeenWorkbook const& workbook, Place const& of) {
        ContentCell const* const behind = workbook.cell({of.sheet, of.row, of.column + 2});
        bool const names = behind != nullptr && (behind->is_result || std::holds_alternative<double>(behind->value));
        return names ? std::nullopt : workbook.sheet(of.sheet).text_at({of.row, of.column + 1});
    }

    void check_qualifier(ReadBlock const& block) {
        auto const before = qualifier(old_, block.before.first), now = qualifier(target_, block.now.first);
        LabelledSheet const& labels = old_.sheet(block.before.first.sheet);
        if (!before || !labels.is_label(before->where) || is_unit(before->key))
            return;
        if (!now || now->key != before->key)
            refuse(cell_name(block.now.first) + " has " + (now ? "'" + now->text + "'" : "no word") +
                   " behind it, not '" + before->text + "'");
    }

    void note_results() {
        for (ContentCell const& cell : old_.contents().cells()) {
            if (cell.place.sheet != wish_.sheet.number || !cell.is_result)
                continue;
            Where const where{cell.place.row, cell.place.column};
            auto const there = carrier_.of(where);
            if (auto const* const found = std::get_if<Where>(&there))
                fit_.results[where] = *found;
        }
    }

    FitWish const& wish_;
    SeenWorkbook const& old_;
    SeenWorkbook const& target_;
    int const sheet_;
    LabelledSheet const& before_;
    LabelledSheet const& now_;
    Carrier carrier_;
    std::vector<std::pair<Where, Where>> words_; // that are carried, in their order, and where they go
    std::list<Placed> placed_;
    Fit fit_;
};

} // namespace

std::variant<Fit, Refused> fit(FitWish const& wish, SeenWorkbook const& target, int sheet) {
    return Fitting(wish, target, sheet).result();
}

} // namespace hearthcell::archive
