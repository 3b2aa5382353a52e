#include "extension/menu/dialogs.hpp"

#include <com/sun/star/awt/MessageBoxButtons.hpp>
#include <com/sun/star/awt/MessageBoxType.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XMessageBoxFactory.hpp>
#include <com/sun/star/awt/XWindowPeer.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FilePicker.hpp>
#include <com/sun/star/ui/dialogs/TemplateDescription.hpp>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {

void show(Surroundings const& surroundings, Answer const& answer) {
    if (answer.words.isEmpty() || surroundings.unattended)
        return;
    Reference<css::awt::XWindowPeer> parent;
    if (auto const frame = answer.over.is() ? answer.over : surroundings.frame; frame.is())
        parent.set(frame->getContainerWindow(), css::uno::UNO_QUERY);
    Reference<css::awt::XMessageBoxFactory> const factory(css::awt::Toolkit::create(surroundings.context),
                                                          UNO_QUERY_THROW);
    auto const kind = answer.done ? css::awt::MessageBoxType_INFOBOX : css::awt::MessageBoxType_ERRORBOX;
    auto const box =
        factory->createMessageBox(parent, kind, css::awt::MessageBoxButtons::BUTTONS_OK, wide(our_name), answer.words);
    box->execute();
    Reference<css::lang::XComponent>(box, UNO_QUERY_THROW)->dispose();
}

OUString ask_where_to_save(Surroundings const& surroundings, OUString const& folder, OUString const& name) {
    auto const picker = css::ui::dialogs::FilePicker::createWithMode(
        surroundings.context, css::ui::dialogs::TemplateDescription::FILESAVE_AUTOEXTENSION);
    picker->setTitle(surroundings.say(Text::picker_title));
    OUString const ods = surroundings.say(Text::ods_files), xlsx = surroundings.say(Text::xlsx_files);
    picker->appendFilter(ods, "*.ods");
    picker->appendFilter(xlsx, "*.xlsx");
    picker->setCurrentFilter(ods);
    if (!folder.isEmpty())
        picker->setDisplayDirectory(folder);
    picker->setDefaultName(name + ".ods");
    OUString chosen, ending;
    if (picker->execute() == css::ui::dialogs::ExecutableDialogResults::OK) {
        auto const files = picker->getSelectedFiles();
        if (files.hasElements())
            chosen = files[0];
        ending = picker->getCurrentFilter() == xlsx ? OUString(".xlsx") : OUString(".ods");
    }
    Reference<css::lang::XComponent>(picker, UNO_QUERY_THROW)->dispose();
    bool const has_ending = chosen.endsWithIgnoreAsciiCase(".ods") || chosen.endsWithIgnoreAsciiCase(".xlsx");
    return chosen.isEmpty() || has_ending ? chosen : chosen + ending;
}

} // namespace hearthcell::menu
