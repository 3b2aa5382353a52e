// The reports of several runs as those of one.

#include "extension/archive/records/output_folder.hpp"
#include "extension/archive/run_reports.hpp"

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace hearthcell::archive {

struct Join::Run {
    explicit Run(std::filesystem::path const& output)
        : quiet(output), index(output), records(output), place{output, index.facts.base}, entry(index.next()) {}

    QuietFolder quiet;
    IndexReader index;
    Records records;
    RunPlace place;
    std::optional<RunEntry> entry; // the one that is due
};

namespace {

std::string name_of(RunPlace const& place) {
    return place.output.string();
}

/// What was confirmed for all runs, without the number of sheets that it went into in one of them.
std::string without_counts(std::string const& confirmed) {
    std::istringstream lines(confirmed);
    std::string words;
    for (std::string line; std::getline(lines, line);)
        words += line.substr(0, line.rfind(" goes into ")) + "\n";
    return words;
}

} // namespace

Join::Join(std::vector<std::filesystem::path> const& outputs, std::filesystem::path const& joined) {
    for (std::filesystem::path const& output : outputs) {
        auto const path = std::filesystem::absolute(output).lexically_normal();
        runs_.push_back(std::make_unique<Run>(path.has_filename() ? path : path.parent_path()));
        if (std::error_code none; std::filesystem::equivalent(runs_.back()->place.output, joined, none))
            throw std::invalid_argument("the joined reports need an output folder of their own");
        Run const &run = *runs_.back(), &first = *runs_.front();
        for (auto const& known : runs_)
            if (known != runs_.back() && std::filesystem::equivalent(known->place.output, run.place.output))
                throw std::invalid_argument(name_of(run.place) + " is given twice");
        if (run.index.facts.key_of_options != first.index.facts.key_of_options)
            throw std::invalid_argument("the runs in " + name_of(first.place) + " and " + name_of(run.place) +
                                        " were made with different packages or options, so that their results do not "
                                        "belong together");
    }
}

Join::~Join() = default;

RunFacts Join::facts() const {
    RunFacts facts = runs_.front()->index.facts;
    if (runs_.size() > 1)
        facts.confirmed = without_counts(facts.confirmed);
    return facts;
}

std::vector<Join::Run*> Join::due() const {
    std::vector<Run*> due;
    for (auto const& run : runs_) {
        if (!run->entry || (!due.empty() && due.front()->entry->relative < run->entry->relative))
            continue;
        if (!due.empty() && run->entry->relative < due.front()->entry->relative)
            due.clear();
        due.push_back(run.get());
    }
    return due;
}

void Join::fill(Reports& reports) {
    for (auto due_runs = due(); !due_runs.empty(); due_runs = due()) {
        add(reports, due_runs);
        for (Run* const run : due_runs)
            run->entry = run->index.next();
    }
}

/// One name, in the runs that have it. What is finished counts, and of that the first.
void Join::add(Reports& reports, std::vector<Run*> const& runs) {
    RunEntry const& entry = *runs.front()->entry;
    RunPlace const* counted = nullptr;
    std::string key;
    for (Run const* const run : runs) {
        auto const finished = run->entry->problem ? std::nullopt : run->records.find(entry.relative);
        if (!finished)
            continue;
        if (counted == nullptr) {
            counted = &run->place;
            key = finished->key;
            reports.finished(entry.relative, *counted, *finished);
        } else if (finished->key != key) {
            reports.list_of_workbook({entry.relative, run->place.base / entry.relative},
                                     {Reason::differs, "another workbook has this name in " + name_of(run->place) +
                                                           "; the one in " + name_of(*counted) + " is counted"});
        }
    }
    if (counted == nullptr)
        reports.failed(entry.relative, runs.front()->place, entry.problem.value_or(record_lost), entry.workbook);
    if (runs.size() > 1 && entry.workbook)
        reports.in_several_runs();
}

} // namespace hearthcell::archive
