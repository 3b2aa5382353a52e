#include "extension/menu/recalculate_folder.hpp"

#include "extension/menu/archive_job.hpp"
#include "extension/menu/archive_program.hpp"
#include "extension/menu/folder_dialog.hpp"
#include "extension/menu/package_files.hpp"

#include <com/sun/star/util/theMacroExpander.hpp>

#include <system_error>

namespace css = com::sun::star;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

std::string bytes(OUString const& text) {
    rtl::OString const narrow = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {narrow.getStr(), std::size_t(narrow.getLength())};
}

std::vector<std::string> arguments_of(FolderTask const& task) {
    std::vector<std::string> arguments{bytes(task.source), "--output", bytes(task.results), "--quiet",
                                       "--progress-lines"};
    if (task.copies == FolderTask::Copies::shared)
        arguments.emplace_back("--values");
    if (task.copies == FolderTask::Copies::none)
        arguments.emplace_back("--dry-run");
    if (!task.collect.isEmpty())
        arguments.insert(arguments.end(), {"--collect", bytes(task.collect)});
    return arguments;
}

/// The folder of the office that we are in.
std::string this_office(Surroundings const& surroundings) {
    return bytes(
        path_of(css::util::theMacroExpander::get(surroundings.context)->expandMacros("$BRAND_BASE_DIR/program")));
}

} // namespace

Answer recalculate_folder(Surroundings const& surroundings, OUString const& results) {
    std::string const program = installed_archive_program(bytes(path_of(package_folder(surroundings))));
    if (program.empty())
        return {false, surroundings.say(Text::program_missing, wide(folder_of_own_programs()))};
    std::optional<FolderTask> task;
    if (!surroundings.source.isEmpty() && !results.isEmpty())
        task = FolderTask{path_of(surroundings.source), path_of(results), {}};
    else if (!surroundings.unattended)
        task = ask_for_folder_task(surroundings);
    if (!task)
        return {false, {}};
    try {
        start_archive_job(surroundings, task->results,
                          std::make_unique<ArchiveProgram>(program, arguments_of(*task), this_office(surroundings)));
    } catch (std::system_error const& problem) {
        return {false, with_cause_of_program(surroundings, OUString::createFromAscii(problem.what()))};
    }
    return {};
}

} // namespace hearthcell::menu
