#pragma once
// What the menu offers. Read by the component and by the generator, which writes the menu from it.

#include "extension/menu/texts.hpp"

#include <string>

namespace hearthcell::menu {

enum class Command {
    new_bench_record,
    new_comparison,
    new_log_import,
    new_campaign,
    function_guide,
    check_workbook,
    check_selection,
    leave_seen,
    copy_for_sharing,
    start_from_old,
    same_in_folder,
    recalculate_folder,
    about
};

struct Entry {
    Command command;
    std::string_view name; // "vnd.hearthcell:NAME" is what LibreOffice dispatches
    Text label;
    bool begins_a_group = false; // a line above it in the menu
};

inline constexpr std::string_view protocol = "vnd.hearthcell:";

inline constexpr std::array entries{
    Entry{Command::new_bench_record, "new-bench-record", Text::new_bench_record},
    Entry{Command::new_comparison, "new-comparison", Text::new_comparison},
    Entry{Command::new_log_import, "new-log-import", Text::new_log_import},
    Entry{Command::new_campaign, "new-campaign-overview", Text::new_campaign},
    Entry{Command::function_guide, "function-guide", Text::function_guide, true},
    Entry{Command::check_workbook, "check-this-workbook", Text::check_workbook, true},
    Entry{Command::check_selection, "check-selected-cells", Text::check_selection},
    Entry{Command::leave_seen, "seen-leave-it", Text::leave_seen},
    Entry{Command::copy_for_sharing, "copy-for-sharing", Text::copy_for_sharing, true},
    Entry{Command::start_from_old, "start-from-old-sheet", Text::start_from_old, true},
    Entry{Command::same_in_folder, "do-the-same-in-folder", Text::same_in_folder},
    Entry{Command::recalculate_folder, "recalculate-folder", Text::recalculate_folder},
    Entry{Command::about, "edition-and-licence", Text::about, true},
};

inline std::string url_of(Entry const& entry) {
    return std::string(protocol) + std::string(entry.name);
}

} // namespace hearthcell::menu
