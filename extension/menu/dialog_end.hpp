#pragma once
// How a dialog beside the office is heard to end.

#include "extension/menu/dialog_parts.hpp"

#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XTopWindowListener.hpp>
#include <cppuhelper/implbase2.hxx>

#include <functional>
#include <string>
#include <vector>

namespace hearthcell::menu {

/// Hears once which button was pressed, by its name; "" where the dialog is closed. Kept by the dialog, too.
class DialogEnd final
    : public cppu::WeakImplHelper2<com::sun::star::awt::XActionListener, com::sun::star::awt::XTopWindowListener> {
public:
    using Heard = std::function<void(rtl::OUString const& button)>;

    explicit DialogEnd(Heard heard);

    /// When the dialog has been opened.
    void listen(Dialog const& dialog, std::vector<std::string> const& buttons);
    /// From now on nobody is told.
    void forget() { heard_ = nullptr; }

    void SAL_CALL actionPerformed(com::sun::star::awt::ActionEvent const& event) override { end(event.ActionCommand); }
    void SAL_CALL windowClosing(com::sun::star::lang::EventObject const&) override { end({}); }
    void SAL_CALL windowOpened(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL windowClosed(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL windowMinimized(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL windowNormalized(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL windowActivated(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL windowDeactivated(com::sun::star::lang::EventObject const&) override {}
    void SAL_CALL disposing(com::sun::star::lang::EventObject const&) override {}

private:
    void end(rtl::OUString const& button);

    Heard heard_;
};

} // namespace hearthcell::menu
