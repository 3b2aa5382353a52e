#include "extension/checking/result.hpp"

#include "extension/checking/marks.hpp"
#include "extension/checking/runs.hpp"
#include "extension/checking/shown.hpp"
#include "extension/checking/texts.hpp"
#include "extension/formulas/our_functions.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace hearthcell::checking {
namespace {

constexpr std::size_t most_labels = 12, most_by_hand = 20;

std::string figure_in_words(Figure const& figure, Language language) {
    return figure.is_share ? share_in_language(figure.number, language) : in_language(figure.number, language);
}

std::string effect_of(Finding const& finding, Language language) {
    if (!finding.meant)
        return "";
    std::string const meant = figure_in_words(*finding.meant, language);
    if (!finding.result)
        return say(Text::would_be, language, {meant});
    double const by = finding.meant->number - finding.result->number;
    bool const is_share = finding.result->is_share;
    double const size = is_share ? 100 * by : finding.result->number == 0 ? 0 : 100 * by / finding.result->number;
    double const rounded = std::abs(size) < 10 ? std::round(10 * std::abs(size)) / 10 : std::round(std::abs(size));
    return say(is_share ? Text::points : Text::per_cent, language,
               {meant, figure_in_words(*finding.result, language), in_language(rounded, language)});
}

std::string sentence_of(Finding const& finding, Language language) {
    return finding.kind == Finding::Kind::empty_cell ? say(Text::empty_cell, language, {finding.sentence})
                                                     : finding.sentence;
}

std::string list_of(std::set<std::string> const& words) {
    std::string list;
    for (std::string const& word : words)
        list += (list.empty() ? "" : "; ") + word;
    return list;
}

class Judge {
public:
    Judge(Contents const& contents, Questions const& questions, Columns const& columns, Language language,
          std::vector<ByHand> const& by_hand, Seen const& seen, std::vector<Range> const& selection)
        : contents_(contents), questions_(questions), language_(language), seen_(seen), selection_(selection),
          runs_(contents, questions, columns),
          by_neighbours_(remarks_by_neighbours(contents, questions, columns, language)), by_hand_(by_hand) {
        result_.sheets = contents.defined.sheets;
    }

    Result judge() {
        for (Question const& question : questions_.all)
            take(question);
        for (Remark& remark : by_neighbours_) {
            Content const& content = *contents_.at(remark.cell);
            keep(std::move(remark), content.formula, "neighbours");
        }
        join_down_columns();
        sort_by_runs();
        add_whole();
        summarise();
        return std::move(result_);
    }

private:
    bool is_selected(Place const& cell) const {
        return selection_.empty() || std::ranges::any_of(selection_, [&](Range const& range) {
                   return cell.sheet == range.first.sheet && cell.row >= range.first.row &&
                          cell.row <= range.last.row && cell.column >= range.first.column &&
                          cell.column <= range.last.column;
               });
    }

    std::string place_of(Question const& question) const {
        if (question.rule == nullptr)
            return "";
        Remark const at{.cell = question.rule->first, .last_row = question.rule->first.row};
        switch (question.rule->kind) {
        case Rule::Kind::name:
            return say(Text::in_name, language_, {question.rule->name});
        case Rule::Kind::conditional_format:
            return say(Text::in_conditional_format, language_, {at.cells()});
        case Rule::Kind::validity:
            break;
        }
        return say(Text::in_validity, language_, {at.cells()});
    }

    void take(Question const& question) {
        if (!question.is_reached() || (question.rule != nullptr && !selection_.empty()) || !is_selected(question.cell))
            return;
        Findings const found = findings_in(*question.answer);
        for (std::size_t at = 0; at < found.findings.size(); ++at) {
            Finding const& finding = found.findings[at];
            Content const* const content = question.rule == nullptr ? contents_.at(question.cell) : nullptr;
            Place const& cell = question.rule == nullptr ? question.cell : question.rule->first;
            keep({.weight = finding.kind == Finding::Kind::wrong ? Remark::Weight::wrong : Remark::Weight::odd,
                  .cell = cell,
                  .last_row = cell.row,
                  .place = place_of(question),
                  .function = "STOVE." + question.call.name,
                  .value = content == nullptr ? "" : shown(*content, language_),
                  .sentence = sentence_of(finding, language_),
                  .effect = effect_of(finding, language_)},
                 question.formula, question.call.name + std::to_string(at));
        }
        for (Note const& note : found.notes)
            notes_[note.kind].insert(note.kind == "runs"      ? cell_in_words(question.cell)
                                     : note.kind == "default" ? "STOVE." + note.text
                                                              : note.text);
    }

    std::string cell_in_words(Place const& cell) const {
        std::string const name = Remark{.cell = cell, .last_row = cell.row}.cells();
        return contents_.defined.sheets.size() > 1 ? contents_.defined.sheets[std::size_t(cell.sheet)] + "." + name
                                                   : name;
    }

    void keep(Remark remark, std::string const& formula, std::string_view which) {
        if (!is_selected(remark.cell))
            return;
        remark.mark = mark_of(contents_, questions_.reads(), remark.cell, formula, which);
        if (seen_.count(remark.mark) > 0)
            ++silenced_;
        else
            remarks_.push_back(std::move(remark));
    }

    /// One slip shows in every result of its run that rests on it, and is told once: where its effect is known, or else
    /// at the first. Equal ones below each other are one.
    void join_down_columns() {
        std::map<std::tuple<int, int, std::string, std::string>, std::size_t> first; // by sheet, row, place, sentence
        std::vector<Remark> once;
        for (Remark& remark : remarks_) {
            auto const [found, is_new] =
                first.try_emplace({remark.cell.sheet, remark.cell.row, remark.place, remark.sentence}, once.size());
            if (is_new)
                once.push_back(std::move(remark));
            else if (once[found->second].effect.empty() && !remark.effect.empty())
                once[found->second] = std::move(remark);
        }
        for (Remark const& remark : once)
            if (auto const run = remark.place.empty() ? runs_.of(remark.cell) : std::nullopt)
                unclean_.insert(*run);
        std::ranges::stable_sort(once, {}, [](Remark const& remark) {
            return std::tie(remark.cell.sheet, remark.cell.column, remark.function, remark.sentence, remark.cell.row);
        });
        remarks_.clear();
        for (Remark& remark : once)
            if (remarks_.empty() || !continues(remarks_.back(), remark))
                remarks_.push_back(std::move(remark));
            else
                remarks_.back().last_row = remark.cell.row;
    }

    static bool continues(Remark const& above, Remark const& below) {
        return above.place.empty() && below.place.empty() && above.cell.sheet == below.cell.sheet &&
               above.cell.column == below.cell.column && above.last_row + 1 == below.cell.row &&
               above.function == below.function && above.sentence == below.sentence;
    }

    std::string label_of(Remark const& remark) const {
        auto const run = remark.place.empty() ? runs_.of(remark.cell) : std::nullopt;
        if (!run)
            return "";
        if (remark.last_row == remark.cell.row || run->row < 0)
            return runs_.label(*run);
        return say(Text::up_to, language_, {runs_.label(*run), runs_.label({run->sheet, remark.last_row})});
    }

    void sort_by_runs() {
        std::ranges::stable_sort(remarks_, {}, [](Remark const& remark) {
            return std::tuple(remark.cell.sheet, remark.cell.row, -int(remark.weight), remark.cell.column);
        });
        std::map<std::string, std::size_t> places;
        for (Remark& remark : remarks_) {
            std::string const label = label_of(remark);
            auto const [found, is_new] = places.try_emplace(label, result_.remarks.size());
            if (is_new)
                result_.remarks.push_back({label, {}});
            result_.remarks[found->second].remarks.push_back(std::move(remark));
        }
        std::ranges::stable_sort(result_.remarks, {}, [](RunRemarks const& run) {
            int weight = 0;
            for (Remark const& remark : run.remarks)
                weight = std::max(weight, int(remark.weight));
            return std::tuple(run.label.empty(), -weight, -int(run.remarks.size()));
        });
    }

    void add_whole() {
        std::set<std::string> from_memory = notes_["method"];
        from_memory.merge(notes_["source"]);
        add_whole(Text::from_memory, from_memory);
        add_whole(Text::default_pressure, notes_["default"]);
        add_whole(Text::few_runs, notes_["runs"]);
        add_by_hand();
        for (std::string const& caution : notes_["caution"])
            result_.whole.push_back(caution);
        add_whole(Text::led_outside, questions_.not_looked_at.outside);
        add_whole(Text::left_alone, questions_.not_looked_at.too_many);
        add_whole(Text::seen_before, silenced_);
    }

    void add_by_hand() {
        std::set<std::string> words;
        for (ByHand const& one : by_hand_)
            if (is_selected(one.first) && words.size() < most_by_hand) {
                std::string methods;
                for (std::string_view const method : one.form.methods)
                    methods.append(methods.empty() ? "" : ", ").append(method);
                words.insert(cell_in_words(one.first) + " STOVE." + one.form.function +
                             (methods.empty() ? "" : " (" + methods + ")"));
            }
        add_whole(Text::by_hand, words);
    }

    void add_whole(Text text, std::set<std::string> const& words) {
        if (!words.empty())
            result_.whole.push_back(say(text, language_, {list_of(words)}));
    }
    void add_whole(Text text, std::size_t count) {
        if (count > 0)
            result_.whole.push_back(say(text, language_, {std::to_string(count)}));
    }

    std::string labels_to_look_at() const {
        std::string list;
        std::size_t count = 0, named = 0;
        for (RunRemarks const& run : result_.remarks) {
            if (run.label.empty())
                continue;
            if (++count <= most_labels) {
                list += (list.empty() ? "" : ", ") + run.label;
                ++named;
            }
        }
        return count > named ? say(Text::and_more, language_, {list, std::to_string(count - named)}) : list;
    }

    void summarise() {
        result_.runs =
            std::size_t(std::ranges::count_if(runs_.all(), [&](Run const& run) { return is_in_selection(run); }));
        result_.clean = result_.runs - std::min(result_.runs, unclean_.size());
        std::string const runs = std::to_string(result_.runs);
        std::string const labels = labels_to_look_at();
        bool const nothing =
            questions_.all.empty() && questions_.not_looked_at.outside == 0 && questions_.not_looked_at.too_many == 0;
        result_.summary = contents_.too_large ? say(Text::too_large, language_, {std::to_string(most_cells)})
                          : nothing           ? std::string(text(Text::nothing_of_ours, language_))
                          : labels.empty()
                              ? say(Text::all_clean, language_, {runs})
                              : say(Text::look_at, language_, {runs, std::to_string(result_.clean), labels});
    }

    bool is_in_selection(Run const& run) const {
        return selection_.empty() || std::ranges::any_of(selection_, [&](Range const& range) {
                   return run.sheet == range.first.sheet &&
                          (run.row < 0 || (run.row >= range.first.row && run.row <= range.last.row));
               });
    }

    Contents const& contents_;
    Questions const& questions_;
    Language const language_;
    Seen const& seen_;
    std::vector<Range> const& selection_;
    Runs const runs_;
    std::vector<Remark> by_neighbours_, remarks_;
    std::set<Run> unclean_;
    std::map<std::string, std::set<std::string>> notes_;
    std::vector<ByHand> const& by_hand_;
    std::size_t silenced_ = 0;
    Result result_;
};

} // namespace

Result judge(Contents const& contents, Questions const& questions, Columns const& columns, Language language,
             std::vector<ByHand> const& by_hand, Seen const& seen, std::vector<Range> const& selection) {
    return Judge(contents, questions, columns, language, by_hand, seen, selection).judge();
}

} // namespace hearthcell::checking
