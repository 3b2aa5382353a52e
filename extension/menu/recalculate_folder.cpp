#include "extension/menu/recalculate_folder.hpp"

#include "extension/menu/archive_job.hpp"
#include "extension/menu/folder_dialog.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/two_folders.hpp"

using rtl::OUString;

namespace hearthcell::menu {
namespace {

ArchiveRun run_of(FolderTask const& task) {
    ArchiveRun run{{bytes(task.source)}, task.results, Text::recalculating, Text::not_recalculated, Text::stopped};
    if (task.copies == FolderTask::Copies::shared)
        run.arguments.emplace_back("--values");
    if (task.copies == FolderTask::Copies::none)
        run.arguments.emplace_back("--dry-run");
    if (!task.collect.isEmpty())
        run.arguments.insert(run.arguments.end(), {"--collect", bytes(task.collect)});
    return run;
}

} // namespace

Answer recalculate_folder(Surroundings const& surroundings, OUString const& results) {
    if (OUString const missing = archive_program_missing(surroundings); !missing.isEmpty())
        return {false, missing};
    std::optional<FolderTask> task;
    if (!surroundings.source.isEmpty() && !results.isEmpty())
        task = FolderTask{path_of(surroundings.source), path_of(results), {}};
    else if (!surroundings.unattended)
        task = ask_for_folder_task(surroundings);
    if (!task)
        return {false, {}};
    if (OUString const trouble = trouble_with_folders(surroundings, task->source, task->results); !trouble.isEmpty())
        return {false, trouble};
    return start_archive_job(surroundings, run_of(*task), open_summary);
}

} // namespace hearthcell::menu
