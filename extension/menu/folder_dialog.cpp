#include "extension/menu/folder_dialog.hpp"

#include "extension/menu/dialog_parts.hpp"
#include "extension/menu/package_files.hpp"

#include <com/sun/star/awt/PushButtonType.hpp>
#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XTextComponent.hpp>
#include <com/sun/star/awt/XTextListener.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FolderPicker.hpp>
#include <cppuhelper/implbase2.hxx>
#include <osl/file.hxx>
#include <rtl/ref.hxx>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 width = 270, height = 204, edge = 8, inside = width - 2 * edge, button = 56, line = 12;

void build(Dialog& dialog, Surroundings const& around) {
    auto const say = [&](Text which) { return around.say(which); };
    dialog.add_text("words", {edge, 6, inside, 28}, say(Text::originals_stay));
    sal_Int32 y = 38;
    for (auto const& [name, text] :
         {std::pair("source", Text::old_sheets), std::pair("results", Text::results_folder)}) {
        dialog.add_text("text of " + std::string(name), {edge, y, inside, 9}, say(text));
        dialog.add("Edit", name, {edge, y + 10, inside - button - 4, line + 2});
        dialog.add_button("choose " + std::string(name), {width - edge - button, y + 10, button, line + 2},
                          say(Text::choose_folder));
        y += 29;
    }
    dialog.add_text("text of copies", {edge, y, inside, 9}, say(Text::what_to_write));
    y += 10;
    for (auto const& [name, text] : {std::pair("whole", Text::whole_copies), std::pair("shared", Text::shared_copies),
                                     std::pair("none", Text::reports_only)}) {
        auto const choice = dialog.add("RadioButton", name, {edge + 4, y, inside - 4, 10});
        choice->setPropertyValue("Label", Any(say(text)));
        choice->setPropertyValue("State", Any(sal_Int16(std::string_view(name) == "whole" ? 1 : 0)));
        y += 11;
    }
    dialog.add_text("text of collect", {edge, y + 3, inside, 18}, say(Text::what_to_collect));
    dialog.add("Edit", "collect", {edge, y + 22, inside, line + 2});
    sal_Int32 const bottom = height - 20;
    dialog.add_button("recalculate", {width - edge - 2 * button - 14, bottom, button + 10, 14}, say(Text::recalculate),
                      css::awt::PushButtonType_OK);
    dialog.add_button("cancel", {width - edge - button, bottom, button, 14}, say(Text::cancel),
                      css::awt::PushButtonType_CANCEL);
    dialog.set("recalculate", "DefaultButton", Any(true));
    dialog.set("recalculate", "Enabled", Any(false));
}

OUString url_of(OUString const& path) {
    OUString url;
    osl::FileBase::getFileURLFromSystemPath(path, url);
    return url;
}

/// Chooses folders, and lets nobody start before there are two.
class Choices : public cppu::WeakImplHelper2<css::awt::XActionListener, css::awt::XTextListener> {
public:
    Choices(Dialog& shown, Surroundings const& around) : dialog_(shown), surroundings_(around) {}

    [[nodiscard]] OUString text(std::string_view name) const {
        OUString value;
        dialog_.get(name, "Text") >>= value;
        return value.trim();
    }

    void listen() {
        for (std::string_view const name : {"choose source", "choose results"}) {
            Reference<css::awt::XButton> const choose(dialog_.control(name), UNO_QUERY_THROW);
            choose->setActionCommand(wide(name.substr(7)));
            choose->addActionListener(this);
        }
        for (std::string_view const name : {"source", "results"})
            Reference<css::awt::XTextComponent>(dialog_.control(name), UNO_QUERY_THROW)->addTextListener(this);
    }

    void SAL_CALL actionPerformed(css::awt::ActionEvent const& event) override {
        bool const source = event.ActionCommand == "source";
        auto const picker = css::ui::dialogs::FolderPicker::create(surroundings_.context);
        picker->setTitle(surroundings_.say(source ? Text::choose_old_sheets : Text::choose_results_folder));
        if (OUString const known = text(source ? "source" : "results"); !known.isEmpty())
            picker->setDisplayDirectory(url_of(known));
        if (picker->execute() != css::ui::dialogs::ExecutableDialogResults::OK)
            return;
        OUString path = path_of(picker->getDirectory());
        if (path.getLength() > 1 && path.endsWith("/"))
            path = path.copy(0, path.getLength() - 1);
        dialog_.set(source ? "source" : "results", "Text", Any(path));
        if (source && text("results").isEmpty()) // beside it
            dialog_.set("results", "Text", Any(surroundings_.say(Text::name_of_results, path)));
        look_again();
    }
    void SAL_CALL textChanged(css::awt::TextEvent const&) override { look_again(); }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    void look_again() const {
        dialog_.set("recalculate", "Enabled", Any(!text("source").isEmpty() && !text("results").isEmpty()));
    }

    Dialog& dialog_;
    Surroundings const& surroundings_;
};

bool is_chosen(Dialog const& dialog, std::string_view name) {
    sal_Int16 state = 0;
    dialog.get(name, "State") >>= state;
    return state == 1;
}

} // namespace

std::optional<FolderTask> ask_for_folder_task(Surroundings const& surroundings) {
    OUString const label = surroundings.say(Text::recalculate_folder).replaceAll("~", "");
    OUString const title = label.copy(0, label.getLength() - 1); // without the dots
    Dialog dialog(surroundings, title, width, height);
    build(dialog, surroundings);
    rtl::Reference<Choices> const choices(new Choices(dialog, surroundings));
    dialog.open(false);
    choices->listen();
    if (!dialog.execute())
        return std::nullopt;
    FolderTask task{choices->text("source"), choices->text("results"), choices->text("collect")};
    if (is_chosen(dialog, "shared"))
        task.copies = FolderTask::Copies::shared;
    else if (is_chosen(dialog, "none"))
        task.copies = FolderTask::Copies::none;
    return task;
}

} // namespace hearthcell::menu
