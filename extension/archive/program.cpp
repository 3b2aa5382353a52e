#include "extension/archive/program.hpp"

#include "extension/archive/earlier_copies.hpp"
#include "extension/archive/files/shown.hpp"
#include "extension/archive/leave_a_few.hpp"
#include "extension/archive/look_first.hpp"
#include "extension/archive/picture.hpp"
#include "extension/archive/records/output_folder.hpp"
#include "extension/archive/run_reports.hpp"
#include "extension/archive/workers/package_edition.hpp"
#include "extension/archive/workers/pool.hpp"
#include "extension/archive/workers/task.hpp"
#include "extension/office/confinement.hpp"
#include "extension/office/environment.hpp"

#include <nlohmann/json.hpp>

#include <iostream>

namespace {

using namespace hearthcell::archive;

constexpr int all_well = 0, with_problems = 1, stopped = 128;

Telling telling(Options const& options) {
    return options.progress_lines ? Telling::lines_of_json : options.quiet ? Telling::nothing : Telling::words;
}

int say_stopped(Options const& options, int signal) {
    if (!options.quiet)
        std::cerr << "Stopped. What is finished stays so: the same command goes on from there.\n";
    return stopped + signal;
}

int say(Options const& options, Summary const& summary) {
    if (options.json)
        std::cout << json_of(summary).dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << "\n";
    else if (!options.quiet)
        std::cout << text_of(summary) << "\nThe reports are in " << harmless(options.output.string()) << "\n";
    bool const is_strict = options.strict && summary.remarks.remarks > 0;
    return summary.problems.empty() && !is_strict ? all_well : with_problems;
}

/// With the reports filled: the picture of them, then all of them in their places.
int finish(Pool& pool, Task const& task, Reports& reports) {
    reports.complete();
    if (!task.options.summary)
        remove_picture(task.output);
    else if (int const signal = make_picture(pool, task.output, reports); signal != 0)
        return say_stopped(task.options, signal);
    reports.put_in_place();
    return say(task.options, reports.summary());
}

/// What stands between a workbook and the world is one wall less here.
void say_if_not_confined(Options const& options) {
    if (!options.quiet && !options.progress_lines && hearthcell::office::confining() == nullptr)
        std::cerr
            << "Links are cut from each workbook's copy, but LibreOffice itself is not shut in: bubblewrap (bwrap) "
               "is not installed, or not allowed here.\n";
}

/// With an example: what is to be confirmed first, and the status to end with where that is all.
std::optional<int> prepare(Task& task) {
    Options const& options = task.options;
    LookedFirst const looked = look_first(task);
    if (looked.signal != 0)
        return say_stopped(options, looked.signal);
    if (options.plan)
        return all_well;
    if (!looked.to_confirm.empty() && !options.yes) {
        std::cout << "Please look whether this is right:\n"
                  << harmless(looked.to_confirm) << "\nWhat is carried is listed in carried.csv in "
                  << harmless(options.output.string()) << "\n";
        throw std::invalid_argument("nothing was computed yet: give the same command with --yes if this is right");
    }
    if (options.a_few)
        leave_a_few(task, looked.sheets_fit);
    return std::nullopt;
}

/// The menu says of which edition it is: what it shows would else not be what its LibreOffice computes.
void refuse_another_edition(Task const& task) {
    std::string const wanted = hearthcell::office::setting("HEARTHCELL_EDITION");
    if (!wanted.empty() && wanted != task.edition)
        throw std::runtime_error("this LibreOffice has " + wanted + ", and the program that was found computes with " +
                                 task.edition + " of " + task.package.string() +
                                 "; please install the program of the same edition");
}

/// An update of the package in LibreOffice is none of a program that was installed apart from it.
void say_if_of_another_edition(Task const& task) {
    std::string const own = edition_in_own_office();
    if (!task.options.quiet && !task.options.progress_lines && !own.empty() && own != task.edition)
        std::cerr << "Your LibreOffice has " << harmless(own) << "; this run computes with " << harmless(task.edition)
                  << " of " << harmless(task.package.string()) << ". --package takes another.\n";
}

int recalculate_archive(Options const& options) {
    Task task = make_task(options);
    refuse_another_edition(task);
    say_if_not_confined(options);
    say_if_of_another_edition(task);
    OutputFolder folder(task.output);
    if (!options.examples.empty())
        if (auto const status = prepare(task))
            return *status;
    std::optional<Progress> progress(std::in_place, task.inputs.workbooks.size(), telling(options));
    Pool pool(task, *progress);
    Ran const ran = pool.run();
    progress.reset();
    folder.release_room();
    EarlierCopies const earlier = remove_earlier_copies(task, ran);
    if (!options.quiet && !earlier.removed.empty())
        std::cerr << words_of(earlier) << "\n";
    if (ran.signal != 0)
        return say_stopped(options, ran.signal);
    Reports reports(task.output, task.facts(), task.same_words);
    fill_reports(reports, task, ran);
    for (auto const& [copy, why] : earlier.left)
        reports.list(copy, {Reason::not_written, "the copy of an earlier run is still there: " + why, 1});
    return finish(pool, task, reports);
}

int join_reports(Options const& options) {
    Task const task = make_task(options);
    Join join(options.inputs, task.output);
    OutputFolder folder(task.output);
    folder.release_room();
    Progress progress(0, Telling::nothing);
    Pool pool(task, progress);
    pool.run();
    Reports reports(task.output, join.facts(), task.same_words);
    join.fill(reports);
    return finish(pool, task, reports);
}

} // namespace

int hearthcell_archive(hearthcell::archive::Options const& options) {
    return options.merge ? join_reports(options) : recalculate_archive(options);
}
