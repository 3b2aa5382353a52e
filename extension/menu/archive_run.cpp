#include "extension/menu/archive_run.hpp"

#include "extension/menu/archive_program.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/package_files.hpp"

#include <csignal>

using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr int with_problems = 1, stopped_by_us = 128 + SIGINT; // exit statuses of the program

} // namespace

bool RunEnd::is_stopped() const {
    return status == stopped_by_us;
}

bool RunEnd::has_failed() const {
    return status > with_problems && !is_stopped();
}

std::string archive_program(Surroundings const& surroundings) {
    return installed_archive_program(bytes(path_of(package_folder(surroundings))));
}

OUString archive_program_missing(Surroundings const& surroundings) {
    if (!archive_program(surroundings).empty())
        return {};
    return surroundings.say(Text::program_missing, wide(folder_of_own_programs()));
}

Answer not_done(Surroundings const& surroundings, ArchiveRun const& run, OUString const& cause) {
    OUString const words = surroundings.say(run.failed);
    return {false, cause.isEmpty() ? words : words + "\n\n" + cause.trim()};
}

Answer open_summary(Surroundings const& surroundings, ArchiveRun const& run, RunEnd const& end) {
    if (end.is_stopped())
        return {true, surroundings.say(run.stopped, run.results)};
    if (end.has_failed())
        return not_done(surroundings, run, end.said);
    for (char const* name : {"summary-of-archive.ods", "summary.ods"}) {
        OUString const summary = run.results + "/" + OUString::createFromAscii(name);
        if (is_there(summary))
            return open_file(surroundings, url_of(summary));
    }
    return {true, surroundings.say(Text::recalculated, run.results)};
}

} // namespace hearthcell::menu
