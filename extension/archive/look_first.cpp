#include "extension/archive/look_first.hpp"

#include "extension/archive/example/constants.hpp"
#include "extension/archive/example/example_file.hpp"
#include "extension/archive/example/families.hpp"
#include "extension/archive/inventory/look.hpp"
#include "extension/archive/inventory/words.hpp"
#include "extension/archive/records/finished.hpp"
#include "extension/archive/what_goes_where.hpp"
#include "extension/archive/workers/pool.hpp"

#include <algorithm>
#include <array>
#include <fstream>

namespace hearthcell::archive {
namespace {

using Where = LabelledSheet::Where;
using LabelsOfSheets = std::vector<std::vector<Label>>;

/// The facts of all sheets, kept apart from the records of the recalculation.
Task task_of_the_look(Task const& task) {
    Task look = task;
    look.options.inventory = true;
    look.output = Records(task.output).folder() / "sheets";
    look.key_of_options = "look 2 " + std::to_string(task.options.size_limit);
    look.examples = nullptr;
    return look;
}

std::vector<SheetFacts> facts_of(Records const& records, std::string const& relative) {
    std::vector<SheetFacts> sheets;
    if (!records.find(relative))
        return sheets;
    std::ifstream lines(records.rows_of_changes(relative), std::ios::binary);
    for (std::string line; std::getline(lines, line);)
        sheets.push_back(sheet_facts_in(line));
    return sheets;
}

class Looking {
public:
    Looking(Task& task, Records const& records)
        : task_(task), records_(records), set_(std::make_shared<ExampleSet>()), layouts_(task.same_words),
          families_(task.same_words) {}

    LookedFirst result() {
        read_sheets();
        find_labels();
        read_examples();
        count();
        looked_.to_confirm = write_what_goes_where(task_.output, *set_, task_.inputs.workbooks, counts_);
        set_->confirmed = looked_.to_confirm;
        task_.examples = set_;
        return std::move(looked_);
    }

private:
    struct Sheet {
        std::size_t workbook; // of old ones: behind those of the task
        std::vector<std::array<int, 4>> merged;
        std::vector<Label> labels;
    };

    void add(std::size_t workbook, std::vector<SheetFacts> sheets) {
        for (SheetFacts& facts : sheets) {
            layouts_.add(facts);
            families_.add(facts);
            sheets_.push_back({workbook, std::move(facts.merged), {}});
        }
    }

    void read_sheets() {
        std::size_t number = 0;
        for (Input const& input : task_.inputs.workbooks)
            add(number++, facts_of(records_, input.relative));
        for (Options::ExamplePair const& pair : task_.options.examples)
            add(number++, read_example_file(pair.old, [&](Format format) {
                    return look_at(pair.old, format, task_.options.size_limit << 20).sheets;
                }));
    }

    void find_labels() {
        LabelsOfSheets by_layout(sheets_.size());
        for (Layout const& layout : layouts_.find())
            for (std::size_t const sheet : layout.sheets)
                by_layout[sheet] = layout.labels;
        std::vector<std::size_t> old;
        for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
            if (sheets_[sheet].workbook >= task_.inputs.workbooks.size())
                old.push_back(sheet);
        LabelsOfSheets labels = families_.labels(std::move(by_layout), old);
        for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
            sheets_[sheet].labels = std::move(labels[sheet]);
        for (std::size_t workbook = 0; workbook < task_.inputs.workbooks.size(); ++workbook)
            set_->labels.push_back(labels_of(workbook));
    }

    LabelsOfSheets labels_of(std::size_t workbook) const {
        LabelsOfSheets labels;
        auto const [first, last] = std::ranges::equal_range(sheets_, workbook, {}, &Sheet::workbook);
        for (auto sheet = first; sheet != last; ++sheet)
            labels.push_back(sheet->labels);
        return labels;
    }

    void read_examples() {
        Options const& options = task_.options;
        set_->same = task_.same_words;
        set_->partly = options.partly;
        if (!options.values_by_folder.empty())
            set_->other_values = other_values_in(options.values_by_folder);
        std::size_t number = task_.inputs.workbooks.size();
        for (Options::ExamplePair const& pair : options.examples) {
            LabelsOfSheets const labels = labels_of(number++);
            set_->examples.push_back(std::make_unique<Example>(std::filesystem::absolute(pair.now),
                                                               std::filesystem::absolute(pair.old),
                                                               options.size_limit << 20, labels, set_->same));
            set_->labels_of_old.insert(set_->labels_of_old.end(), labels.begin(), labels.end());
            if (set_->examples.back()->sheets().empty() && !options.plan) // a plan lists what is not carried, and why
                throw std::invalid_argument(shown(pair.now.string()) + " has nothing to carry that " +
                                            shown(pair.old.string()) + " has not" + why_nothing());
        }
        check_other_values();
    }

    std::string why_nothing() const {
        auto const& differences = set_->examples.back()->differences();
        return differences.empty() ? std::string()
                                   : ": " + name_of(differences.front().cell) + ": " + differences.front().note;
    }

    void check_other_values() const {
        for (OtherValue const& value : set_->other_values) {
            if (!names_a_constant(value.argument))
                throw std::invalid_argument("--values-by-folder: no carried formula has a constant as '" +
                                            value.argument + "'");
            if (std::ranges::none_of(task_.inputs.workbooks,
                                     [&](Input const& input) { return holds_for(value, input.relative); }))
                throw std::invalid_argument("--values-by-folder: '" + value.where +
                                            "' is no folder, year or workbook of this run");
        }
    }

    bool names_a_constant(std::string const& argument) const {
        for (auto const& example : set_->examples)
            for (ExampleSheet const& sheet : example->sheets())
                for (ExampleFormula const& formula : sheet.formulas)
                    for (Constant const& constant : constants_in(formula.text))
                        if (constant.is_whole && word_key(constant.argument) == word_key(argument))
                            return true;
        return false;
    }

    /// On how many sheets each example may fit, by their labels alone.
    void count() {
        struct Wanted {
            LabelledSheet const* sheet;
            std::vector<Where> cells;
        };
        std::vector<Wanted> wanted;
        for (auto const& example : set_->examples)
            for (ExampleSheet const& sheet : example->sheets()) {
                Wanted one{&example->old().sheet(sheet.number), {}};
                for (Place const& place : example->read_by(sheet))
                    if (place.sheet == sheet.number && example->old().cell(place) != nullptr)
                        one.cells.emplace_back(place.row, place.column);
                for (ExampleFormula const& formula : sheet.formulas)
                    if (formula.result)
                        one.cells.push_back(*formula.result);
                wanted.push_back(std::move(one));
            }
        counts_.assign(wanted.size(), std::vector<std::size_t>(task_.inputs.workbooks.size()));
        looked_.sheets_fit.resize(task_.inputs.workbooks.size());
        for (Sheet const& sheet : sheets_) {
            if (sheet.workbook >= task_.inputs.workbooks.size())
                continue;
            std::vector<formulas::Range> merged;
            for (auto const& [row, column, last_row, last_column] : sheet.merged)
                merged.push_back({{0, row, column}, {0, last_row, last_column}});
            LabelledSheet const target(sheet.labels, merged);
            for (std::size_t at = 0; at < wanted.size(); ++at) {
                Correspondence const correspondence(*wanted[at].sheet, target);
                if (std::ranges::any_of(wanted[at].cells, [&](Where const& cell) {
                        return std::holds_alternative<Refused>(correspondence.of(cell));
                    }))
                    continue;
                ++counts_[at][sheet.workbook];
                ++looked_.sheets_fit[sheet.workbook];
                break; // the first that fits
            }
        }
    }

    Task& task_;
    Records const& records_;
    std::shared_ptr<ExampleSet> set_;
    Layouts layouts_;
    Families families_;
    std::vector<Sheet> sheets_;                    // by workbook
    std::vector<std::vector<std::size_t>> counts_; // of each sheet of an example: sheets of each workbook
    LookedFirst looked_;
};

Telling telling_of(Options const& options) {
    return options.progress_lines ? Telling::lines_of_json : options.quiet ? Telling::nothing : Telling::words;
}

} // namespace

LookedFirst look_first(Task& task) {
    Task const look = task_of_the_look(task);
    std::filesystem::create_directories(look.output);
    {
        Progress progress(look.inputs.workbooks.size(), telling_of(task.options));
        Pool pool(look, progress);
        if (Ran const ran = pool.run(); ran.signal != 0)
            return {ran.signal, {}, {}};
    }
    return Looking(task, Records(look.output)).result();
}

} // namespace hearthcell::archive
