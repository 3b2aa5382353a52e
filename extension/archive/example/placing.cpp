#include "extension/archive/example/placing.hpp"

#include "extension/archive/files/shown.hpp"

#include <algorithm>

namespace hearthcell::archive {

LabelledSheet::Where by(LabelledSheet::Where const& from, Step const& step) {
    return {from.first + step.rows, from.second + step.columns};
}

Placing::Placing(FitWish const& wish, SeenWorkbook const& target, int sheet)
    : wish_(wish), old_(wish.workbooks.old()), target_(target), sheet_(sheet), before_(old_.sheet(wish.sheet.number)),
      now_(target.sheet(sheet)), carrier_(old_, wish.sheet.number, target, sheet) {
    place_words();
    place_formulas();
    carry_formulas();
}

/// A cell that is empty on the old sheet: by its labels, or else by a word that is carried, too.
std::variant<Placing::Where, Refused> Placing::place_of_new(Where const& cell) const {
    if (!before_.to_the_left(cell))
        for (bool const of_row : {true, false}) {
            std::pair<Where, Where> const* nearest = nullptr;
            for (auto const& word : words)
                if (of_row ? word.first.first == cell.first && word.first.second < cell.second
                           : word.first.second == cell.second && word.first.first < cell.first)
                    nearest = &word;
            if (nearest != nullptr)
                return by(nearest->second, {cell.first - nearest->first.first, cell.second - nearest->first.second});
        }
    return carrier_.of(cell);
}

/// Beside an old result, with the same headings between.
std::variant<Placing::Where, Refused> Placing::place_beside(ExampleFormula const& formula, Where const& result) const {
    Step const step{formula.cell.first - formula.result->first, formula.cell.second - formula.result->second};
    Where const there = by(result, step);
    for (int column = 1; step.rows == 0 && column <= step.columns; ++column) {
        auto const before = before_.above(by(*formula.result, {0, column}));
        auto const now = now_.above(by(result, {0, column}), &before_);
        if (!is_same_word(before, now))
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

void Placing::place_words() {
    for (ExampleWord const& word : wish_.sheet.words) {
        auto const there = place_of_new(word.cell);
        auto const* const place = std::get_if<Where>(&there);
        if (place == nullptr)
            refuse(std::get<Refused>(there).why);
        else if (names_a_formula(word) && !is_free_for(word, *place))
            refuse(name_of(*place) + " is not empty, where the word '" + line_of(word.text, 40) + "' is to go");
        else
            words.emplace_back(word.cell, *place);
    }
}

bool Placing::names_a_formula(ExampleWord const& word) const {
    return std::ranges::any_of(wish_.sheet.formulas, [&](ExampleFormula const& one) {
        return !before_.to_the_left(one.cell) &&
               ((one.cell.first == word.cell.first && one.cell.second > word.cell.second) ||
                (one.cell.second == word.cell.second && one.cell.first > word.cell.first));
    });
}

bool Placing::is_free_for(ExampleWord const& word, Where const& place) const {
    ContentCell const* const cell = target_.cell({sheet_, place.first, place.second});
    return cell == nullptr || (!cell->is_result && written(cell->value) == word.text);
}

void Placing::place_formulas() {
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
        formulas.push_back({formula, place, result, {}, {}, {}, false});
    }
}

void Placing::carry_formulas() {
    std::set<Where> lost; // cells whose formula is not carried
    for (ExampleFormula const& formula : wish_.sheet.formulas)
        if (std::ranges::none_of(formulas, [&](Placed const& one) { return &one.example == &formula; }))
            lost.insert(formula.cell);
    for (bool again = true; again;) {
        again = false;
        for (auto one = formulas.begin(); one != formulas.end();) {
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
            one = formulas.erase(one);
            again = true;
        }
    }
    for (Placed& one : formulas)
        if (one.result) {
            auto const old_text = carrier_.of(one.example.old_text, old_);
            if (auto const* const carried = std::get_if<CarriedFormula>(&old_text))
                one.old_text = carried->text;
            else if (*one.result == *one.example.result)
                one.old_text = one.example.old_text;
        }
}

bool Placing::reads_any(CarriedFormula const& formula, std::set<Where> const& cells) const {
    return std::ranges::any_of(formula.reads, [&](ReadBlock const& block) {
        return block.before.first.sheet == wish_.sheet.number &&
               std::ranges::any_of(cells, [&](Where const& cell) { return has_cell(block.before, cell); });
    });
}

} // namespace hearthcell::archive
