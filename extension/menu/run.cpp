#include "extension/menu/run.hpp"

#include "extension/menu/check_workbook.hpp"
#include "extension/menu/copy_for_sharing.hpp"
#include "extension/menu/dialogs.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/recalculate_folder.hpp"
#include "extension/menu/safely.hpp"
#include "extension/menu/same_in_folder.hpp"
#include "extension/menu/start_from_old.hpp"
#include "functions/edition.hpp"

using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr std::string_view templates = "template/Hearthcell/";

Answer about(Surroundings const& surroundings) {
    OUString const package = package_folder(surroundings);
    OUString const licence =
        package.isEmpty() ? OUString("https://www.mozilla.org/MPL/2.0/") : path_of(package + "LICENSE");
    return {true, surroundings.say(Text::about_words, wide(edition), licence)};
}

Answer carry_out(Command command, Surroundings const& surroundings, OUString const& target) {
    switch (command) {
    case Command::new_bench_record:
        return open_as_new(surroundings, templates, "bench-record.ots");
    case Command::new_comparison:
        return open_as_new(surroundings, templates, "comparison.ots");
    case Command::new_log_import:
        return open_as_new(surroundings, templates, "logger-import.ots");
    case Command::new_campaign:
        return open_as_new(surroundings, templates, "campaign.ots");
    case Command::function_guide:
        return open_as_new(surroundings, "guide/", std::string(tag_of(surroundings.language).substr(0, 2)) + ".ods");
    case Command::check_workbook:
        return check_workbook(surroundings, false);
    case Command::check_selection:
        return check_workbook(surroundings, true);
    case Command::leave_seen:
        return leave_seen_remarks(surroundings);
    case Command::copy_for_sharing:
        return copy_for_sharing(surroundings, target);
    case Command::start_from_old:
        return start_from_old_sheet(surroundings);
    case Command::same_in_folder:
        return same_in_folder(surroundings, target);
    case Command::recalculate_folder:
        return recalculate_folder(surroundings, target);
    case Command::about:
        return about(surroundings);
    }
    return {false, surroundings.say(Text::unexpected)};
}

} // namespace

Answer run(Command command, Surroundings const& surroundings, OUString const& target) noexcept {
    try {
        Answer answer = safely(surroundings, [&] { return carry_out(command, surroundings, target); });
        show(surroundings, answer);
        return answer;
    } catch (...) { // not even a dialog can be shown
        return {false, {}};
    }
}

} // namespace hearthcell::menu
