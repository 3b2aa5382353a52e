#include "extension/archive/example/fit.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/formulas/moved.hpp"

#include <algorithm>

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;

constexpr std::size_t most_writings = 50'000; // of a sheet

class Fitting {
public:
    Fitting(FitWish const& wish, SeenWorkbook const& target, int sheet)
        : wish_(wish), old_(wish.workbooks.old()), target_(target), sheet_(sheet), placing_(wish, target, sheet) {}

    std::variant<Fit, Refused> result() {
        fit_.not_carried = std::move(placing_.refused);
        if (fit_.not_carried.empty() || (wish_.partly && !placing_.formulas.empty())) {
            find_steps();
            write_words();
            write_formulas();
            drop_failed();
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
    bool refuse(std::string why) {
        fit_.not_carried.push_back({std::move(why)});
        return false;
    }

    [[nodiscard]] Place at(Where const& where) const { return {sheet_, where.first, where.second}; }
    [[nodiscard]] Place at_old(Where const& where) const { return {wish_.sheet.number, where.first, where.second}; }

    void find_steps() {
        Reach const reach(wish_, target_, sheet_);
        for (Placed& one : placing_.formulas)
            if (auto const refused = reach.find_steps(one, fit_.left)) {
                refuse(refused->why);
                failed_.insert(one.example.cell);
            }
    }

    void leave(Place const& place, std::string const& why) { fit_.left.push_back({place, why}); }

    void write_words() {
        for (ExampleWord const& word : wish_.sheet.words) {
            auto const there = std::ranges::find(placing_.words, word.cell,
                                                 [](std::pair<Where, Where> const& one) { return one.first; });
            if (there == placing_.words.end())
                continue;
            if (target_.cell(at(there->second)) == nullptr)
                fit_.writings.push_back({at(there->second), word.cell, false, false, word.text});
            else if (!placing_.is_free_for(word, there->second))
                leave(at(there->second), "the word '" + line_of(word.text, 40) + "' is not put over what stands there");
        }
    }

    void write_formulas() {
        std::set<Place> written;
        std::vector<std::pair<Placed const*, Step>> waiting;
        for (Placed const& one : placing_.formulas)
            for (Step const& step : one.steps)
                if (is_free(one, step))
                    waiting.emplace_back(&one, step);
        // What reads nothing but empty cells stays blank; and what reads nothing but that.
        for (bool again = true; again;) {
            again = false;
            for (auto one = waiting.begin(); one != waiting.end();)
                if (reads_something(*one->first, one->second, written)) {
                    write(*one->first, one->second);
                    written.insert(at(by(one->first->there, one->second)));
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
        if (cell != nullptr && !stands_there(target_, sheet_, one, step))
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
            if (failed_.contains(one.example.cell))
                return;
            if (!has_same_labels(one, block, step) || !has_same_qualifier(block))
                failed_.insert(one.example.cell);
            if (!is_new(block.before.first))
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
    bool has_same_labels(Placed const& one, ReadBlock const& block, Step const& step) {
        bool const moves = (step.rows > 0 && block.follows_rows) || (step.columns > 0 && block.follows_columns);
        if (!moves)
            return true;
        LabelledSheet const& labels = target_.sheet(block.now.first.sheet);
        formulas::Range const range = moved(block, step);
        bool const down = step.rows > 0;
        int const cells = down ? range.last.column - range.first.column : range.last.row - range.first.row;
        for (int at = 0; at <= cells; ++at) {
            Where const first{block.now.first.row + (down ? 0 : at), block.now.first.column + (down ? at : 0)};
            Where const here{range.first.row + (down ? 0 : at), range.first.column + (down ? at : 0)};
            auto const label = down ? labels.above(first) : labels.to_the_left(first);
            auto const label_here = down ? labels.above(here) : labels.to_the_left(here);
            auto const unit = labels.unit_of(first), unit_here = labels.unit_of(here);
            if (!label || !label_here || label->where != label_here->where)
                return refuse(name_of(by(one.there, step)) + ": it would read " + name_of(here) +
                              ", which is not named as " + name_of(first) + " is");
            if (!is_same_word(unit, unit_here))
                return refuse(name_of(here) + ": its unit is another one than that of " + name_of(first));
        }
        return true;
    }

    /// A cell of the example that is empty in OLD.
    bool is_new(Place const& place) const {
        return place.sheet == wish_.sheet.number &&
               std::ranges::any_of(wish_.sheet.formulas, [&](ExampleFormula const& one) {
                   return !one.is_over && one.cell == Where(place.row, place.column);
               });
    }

    /// A word behind a reading, as 'dry basis', that names nothing behind it.
    static std::optional<LabelledSheet::Named> qualifier(SeenWorkbook const& workbook, Place const& of) {
        ContentCell const* const behind = workbook.cell({of.sheet, of.row, of.column + 2});
        bool const names = behind != nullptr && (behind->is_result || std::holds_alternative<double>(behind->value));
        return names ? std::nullopt : workbook.sheet(of.sheet).text_at({of.row, of.column + 1});
    }

    bool has_same_qualifier(ReadBlock const& block) {
        auto const before = qualifier(old_, block.before.first), now = qualifier(target_, block.now.first);
        LabelledSheet const& labels = old_.sheet(block.before.first.sheet);
        if (!before || !labels.is_label(before->where) || is_unit(before->key))
            return true;
        if (!now || now->key != before->key)
            return refuse(cell_name(block.now.first) + " has " + (now ? "'" + now->text + "'" : "no word") +
                          " behind it, not '" + before->text + "'");
        return true;
    }

    /// A formula that would read something else somewhere goes nowhere, nor does what reads it.
    void drop_failed() {
        for (bool again = true; again;) {
            again = false;
            for (Placed const& one : placing_.formulas)
                if (!failed_.contains(one.example.cell) && placing_.reads_any(one.carried, failed_)) {
                    failed_.insert(one.example.cell);
                    again = !refuse(name_of(one.example.cell) + ": it reads what is not carried");
                }
        }
        std::erase_if(fit_.writings,
                      [&](Writing const& one) { return one.is_formula && failed_.contains(one.example); });
    }

    void note_results() {
        for (ContentCell const& cell : old_.contents().cells()) {
            if (cell.place.sheet != wish_.sheet.number || !cell.is_result)
                continue;
            Where const where{cell.place.row, cell.place.column};
            auto const there = placing_.carrier().of(where);
            if (auto const* const found = std::get_if<Where>(&there))
                fit_.results[where] = *found;
        }
    }

    FitWish const& wish_;
    SeenWorkbook const& old_;
    SeenWorkbook const& target_;
    int const sheet_;
    Placing placing_;
    std::set<Where> failed_; // cells of the example sheet whose formula reads something else somewhere
    Fit fit_;
};

} // namespace

std::variant<Fit, Refused> fit(FitWish const& wish, SeenWorkbook const& target, int sheet) {
    return Fitting(wish, target, sheet).result();
}

} // namespace hearthcell::archive
