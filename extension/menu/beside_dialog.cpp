#include "extension/menu/beside_dialog.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/safely.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XTopWindowListener.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase4.hxx>
#include <rtl/ref.hxx>

#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

class Question final : public cppu::WeakImplHelper4<css::awt::XActionListener, css::awt::XTopWindowListener,
                                                    css::awt::XCallback, css::frame::XTerminateListener> {
public:
    Question(Surroundings const& around, std::unique_ptr<Dialog> to_show, Answered then)
        : surroundings_(around), dialog_(std::move(to_show)), answered_(std::move(then)),
          desktop_(css::frame::Desktop::create(around.context)) {}

    void open(std::vector<std::string> const& buttons) {
        dialog_->open(true);
        for (std::string const& name : buttons) {
            Reference<css::awt::XButton> const button(dialog_->control(name), UNO_QUERY_THROW);
            button->setActionCommand(wide(name));
            button->addActionListener(this);
        }
        Reference<css::awt::XTopWindow>(dialog_->window(), UNO_QUERY_THROW)->addTopWindowListener(this);
        desktop_->addTerminateListener(this);
    }

    void SAL_CALL actionPerformed(css::awt::ActionEvent const& event) override { end(event.ActionCommand); }
    void SAL_CALL windowClosing(css::lang::EventObject const&) override { end({}); }

    /// After the button's own work, in which its dialog may not go away.
    void SAL_CALL notify(Any const& button) override {
        rtl::Reference<Question> const alive(this);
        OUString name;
        button >>= name;
        auto const dialog = std::exchange(dialog_, nullptr);
        auto const answered = std::exchange(answered_, nullptr);
        if (!dialog || !answered)
            return;
        show(surroundings_, safely(surroundings_, [&] {
                 desktop_->removeTerminateListener(this);
                 Reference<css::awt::XWindow>(dialog->window(), UNO_QUERY_THROW)->setVisible(false);
                 return answered(bytes(name), *dialog);
             }));
    }

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {}
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        dialog_.reset();
        answered_ = nullptr;
    }

    void SAL_CALL windowOpened(css::lang::EventObject const&) override {}
    void SAL_CALL windowClosed(css::lang::EventObject const&) override {}
    void SAL_CALL windowMinimized(css::lang::EventObject const&) override {}
    void SAL_CALL windowNormalized(css::lang::EventObject const&) override {}
    void SAL_CALL windowActivated(css::lang::EventObject const&) override {}
    void SAL_CALL windowDeactivated(css::lang::EventObject const&) override {}
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    void end(OUString const& button) {
        if (!std::exchange(ended_, true))
            css::awt::AsyncCallback::create(surroundings_.context)->addCallback(this, Any(button));
    }

    Surroundings const surroundings_;
    std::unique_ptr<Dialog> dialog_;
    Answered answered_;
    Reference<css::frame::XDesktop2> const desktop_;
    bool ended_ = false;
};

} // namespace

void ask_beside(Surroundings const& surroundings, std::unique_ptr<Dialog> dialog, std::vector<std::string> buttons,
                Answered answered) {
    rtl::Reference<Question>(new Question(surroundings, std::move(dialog), std::move(answered)))->open(buttons);
}

} // namespace hearthcell::menu
