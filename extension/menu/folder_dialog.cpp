#include "extension/menu/folder_dialog.hpp"

#include "extension/menu/path_fields.hpp"

#include <rtl/ref.hxx>

namespace css = com::sun::star;
using css::uno::Any;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 folder_width = 270, folder_height = 204, folder_edge = 8,
                    folder_inside = folder_width - 2 * folder_edge;

void build(Dialog& dialog, PathFields& fields, Surroundings const& around) {
    auto const say = [&](Text which) { return around.say(which); };
    dialog.add_text("words", {folder_edge, 6, folder_inside, 28}, say(Text::originals_stay));
    sal_Int32 y = 38;
    for (PathField const& field : {PathField{"source", Text::old_sheets, Text::choose_old_sheets},
                                   PathField{"results", Text::results_folder, Text::choose_results_folder}}) {
        fields.add(field, {folder_edge, y, folder_inside, PathFields::height});
        y += PathFields::height;
    }
    dialog.add_text("text of copies", {folder_edge, y, folder_inside, 9}, say(Text::what_to_write));
    y += 10;
    for (auto const& [name, text] : {std::pair("whole", Text::whole_copies), std::pair("shared", Text::shared_copies),
                                     std::pair("none", Text::reports_only)}) {
        auto const choice = dialog.add("RadioButton", name, {folder_edge + 4, y, folder_inside - 4, 10});
        choice->setPropertyValue("Label", Any(say(text)));
        choice->setPropertyValue("State", Any(sal_Int16(std::string_view(name) == "whole" ? 1 : 0)));
        y += 11;
    }
    dialog.add_text("text of collect", {folder_edge, y + 3, folder_inside, 18}, say(Text::what_to_collect));
    dialog.add("Edit", "collect", {folder_edge, y + 22, folder_inside, 14});
    dialog.add_answers("recalculate", {0, 0, folder_width, folder_height}, say(Text::recalculate));
}

bool is_chosen(Dialog const& dialog, std::string_view name) {
    sal_Int16 state = 0;
    dialog.get(name, "State") >>= state;
    return state == 1;
}

} // namespace

std::optional<FolderTask> ask_for_folder_task(Surroundings const& surroundings) {
    Dialog dialog(surroundings, surroundings.title_of(Text::recalculate_folder), folder_width, folder_height);
    rtl::Reference<PathFields> const fields(new PathFields(dialog, surroundings, "recalculate", Text::name_of_results));
    build(dialog, *fields, surroundings);
    dialog.open(false);
    fields->listen();
    if (!dialog.execute())
        return std::nullopt;
    OUString collect;
    dialog.get("collect", "Text") >>= collect;
    FolderTask task{fields->path("source"), fields->path("results"), collect.trim()};
    if (is_chosen(dialog, "shared"))
        task.copies = FolderTask::Copies::shared;
    else if (is_chosen(dialog, "none"))
        task.copies = FolderTask::Copies::none;
    return task;
}

} // namespace hearthcell::menu
