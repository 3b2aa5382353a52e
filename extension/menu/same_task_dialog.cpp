#include "extension/menu/same_task_dialog.hpp"

#include "extension/menu/package_files.hpp"
#include "extension/menu/path_fields.hpp"
#include "extension/menu/two_folders.hpp"

#include <rtl/ref.hxx>

using rtl::OUString;

namespace hearthcell::menu {

std::optional<SameTask> ask_for_same_task(Surroundings const& surroundings, SameTask const& proposed) {
    constexpr sal_Int32 wide_as = 290, edge = 8, inside = wide_as - 2 * edge, words = 38;
    constexpr sal_Int32 high_as = words + 12 + 3 * PathFields::height + 24;
    Dialog dialog(surroundings, surroundings.title_of(Text::same_in_folder), wide_as, high_as);
    dialog.add_text("words", {edge, 6, inside, words}, surroundings.say(Text::same_words));
    rtl::Reference<PathFields> const fields(new PathFields(dialog, surroundings, "compare", Text::name_of_same));
    sal_Int32 y = words + 10;
    for (auto const& [field, path] :
         {std::pair(PathField{"original", Text::original_file, Text::choose_original, PathField::Kind::workbook},
                    proposed.original),
          std::pair(PathField{"source", Text::old_sheets, Text::choose_old_sheets}, proposed.source),
          std::pair(PathField{"results", Text::results_folder, Text::choose_results_folder}, proposed.results)}) {
        fields->add(field, {edge, y, inside, PathFields::height}, path);
        y += PathFields::height;
    }
    dialog.add_answers("compare", {0, 0, wide_as, high_as}, surroundings.say(Text::compare_now));
    dialog.open(false);
    fields->listen();
    if (!dialog.execute())
        return std::nullopt;
    return SameTask{fields->path("original"), fields->path("source"), fields->path("results")};
}

OUString trouble_with(Surroundings const& surroundings, SameTask const& task) {
    if (!is_there(task.original))
        return surroundings.say(Text::original_missing, task.original);
    return trouble_with_folders(surroundings, task.source, task.results);
}

} // namespace hearthcell::menu
