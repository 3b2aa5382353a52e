// hearthcell-archive: recalculates archives of workbooks and lists every result that changed.

#include "archive/options.hpp"
#include "archive/pool.hpp"
#include "archive/reports.hpp"
#include "archive/task.hpp"

#include <iostream>

namespace {

using namespace hearthcell::archive;

constexpr int all_well = 0, with_problems = 1, could_not_run = 2, stopped = 128;

Ran run_all(Task const& task) {
    Ran ran;
    {
        Progress progress(task.inputs.workbooks.size(), task.options.quiet);
        ran = run(task, progress);
    }
    if (ran.signal != 0 && !task.options.quiet)
        std::cerr << "Stopped. What is finished stays so: the same command goes on from there.\n";
    return ran;
}

int recalculate_archive(Options const& options) {
    Task const task = make_task(options);
    OutputFolder folder(task.output);
    Ran const ran = run_all(task);
    if (ran.signal != 0)
        return stopped + ran.signal;
    folder.release_room();
    Summary const summary = write_reports(task, ran);
    if (options.json)
        std::cout << json_of(summary).dump(2) << "\n";
    else if (!options.quiet)
        std::cout << text_of(summary) << "\nThe reports are in " << options.output.string() << "\n";
    return summary.problems.empty() ? all_well : with_problems;
}

} // namespace

int main(int count, char** words) {
    Read const read = read_options(count, words);
    if (!read.options)
        return read.status;
    try {
        return recalculate_archive(*read.options);
    } catch (std::exception const& problem) {
        std::cerr << "hearthcell-archive: " << problem.what() << "\n";
        return could_not_run;
    }
}
