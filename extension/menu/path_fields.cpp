#include "extension/menu/path_fields.hpp"

#include "extension/menu/package_files.hpp"

#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XTextComponent.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FilePicker.hpp>
#include <com/sun/star/ui/dialogs/FolderPicker.hpp>
#include <com/sun/star/ui/dialogs/TemplateDescription.hpp>

#include <algorithm>
#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 choose_width = 56, field_line = 14;
constexpr auto picked = css::ui::dialogs::ExecutableDialogResults::OK;

OUString folder_of(OUString const& path) {
    return path.copy(0, std::max<sal_Int32>(path.lastIndexOf('/'), 0));
}

OUString without_slash(OUString const& path) {
    return path.getLength() > 1 && path.endsWith("/") ? path.copy(0, path.getLength() - 1) : path;
}

OUString ask_for_folder(Surroundings const& surroundings, Text title, OUString const& known) {
    auto const picker = css::ui::dialogs::FolderPicker::create(surroundings.context);
    picker->setTitle(surroundings.say(title));
    if (!known.isEmpty())
        picker->setDisplayDirectory(url_of(known));
    return picker->execute() == picked ? without_slash(path_of(picker->getDirectory())) : OUString();
}

} // namespace

OUString ask_for_workbook(Surroundings const& surroundings, Text title, OUString const& known) {
    auto const picker = css::ui::dialogs::FilePicker::createWithMode(
        surroundings.context, css::ui::dialogs::TemplateDescription::FILEOPEN_SIMPLE);
    picker->setTitle(surroundings.say(title));
    picker->appendFilter(surroundings.say(Text::workbook_files), "*.ods;*.fods;*.xlsx;*.xls");
    if (!known.isEmpty())
        picker->setDisplayDirectory(url_of(folder_of(known)));
    OUString path;
    if (picker->execute() == picked && picker->getSelectedFiles().hasElements())
        path = path_of(picker->getSelectedFiles()[0]);
    Reference<css::lang::XComponent>(picker, UNO_QUERY_THROW)->dispose();
    return path;
}

PathFields::PathFields(Dialog& shown, Surroundings const& around, std::string button, Text beside_source)
    : dialog_(shown), surroundings_(around), agree_(std::move(button)), name_of_results_(beside_source) {}

OUString PathFields::path(std::string const& name) const {
    OUString value;
    dialog_.get(name, "Text") >>= value;
    return value.trim();
}

void PathFields::add(PathField const& field, Area const& area, OUString const& known) {
    dialog_.add_text("text of " + field.name, {area.x, area.y, area.width, 9}, surroundings_.say(field.label));
    auto const edit = dialog_.add("Edit", field.name, {area.x, area.y + 10, area.width - choose_width - 4, field_line});
    edit->setPropertyValue("Text", Any(known));
    dialog_.add_button("choose " + field.name,
                       {area.x + area.width - choose_width, area.y + 10, choose_width, field_line},
                       surroundings_.say(Text::choose_folder));
    fields_.push_back(field);
}

void PathFields::listen() {
    for (PathField const& field : fields_) {
        Reference<css::awt::XButton> const choose(dialog_.control("choose " + field.name), UNO_QUERY_THROW);
        choose->setActionCommand(wide(field.name));
        choose->addActionListener(this);
        Reference<css::awt::XTextComponent>(dialog_.control(field.name), UNO_QUERY_THROW)->addTextListener(this);
    }
    look_again();
}

void SAL_CALL PathFields::actionPerformed(css::awt::ActionEvent const& event) {
    auto const field = std::find_if(fields_.begin(), fields_.end(),
                                    [&](PathField const& each) { return wide(each.name) == event.ActionCommand; });
    if (field == fields_.end())
        return;
    OUString const known = path(field->name);
    OUString const now = field->kind == PathField::Kind::folder
                             ? ask_for_folder(surroundings_, field->picker_title, known)
                             : ask_for_workbook(surroundings_, field->picker_title, known);
    if (now.isEmpty())
        return;
    dialog_.set(field->name, "Text", Any(now));
    if (field->name == "source" && path("results").isEmpty())
        dialog_.set("results", "Text", Any(surroundings_.say(name_of_results_, path("source"))));
    look_again();
}

void PathFields::look_again() const {
    dialog_.set(agree_, "Enabled", Any(std::none_of(fields_.begin(), fields_.end(), [&](PathField const& field) {
                    return path(field.name).isEmpty();
                })));
}

} // namespace hearthcell::menu
