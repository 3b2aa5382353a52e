#include "extension/menu/dialog_end.hpp"

#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>

#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::menu {

DialogEnd::DialogEnd(Heard who) : heard_(std::move(who)) {}

void DialogEnd::listen(Dialog const& dialog, std::vector<std::string> const& buttons) {
    for (std::string const& name : buttons) {
        Reference<css::awt::XButton> const button(dialog.control(name), UNO_QUERY_THROW);
        button->setActionCommand(wide(name));
        button->addActionListener(this);
    }
    Reference<css::awt::XTopWindow>(dialog.window(), UNO_QUERY_THROW)->addTopWindowListener(this);
}

void DialogEnd::end(rtl::OUString const& button) {
    if (auto const heard = std::exchange(heard_, nullptr))
        heard(button);
}

} // namespace hearthcell::menu
