#include "extension/menu/beside_dialog.hpp"

#include "extension/menu/dialog_end.hpp"
#include "extension/menu/dialogs.hpp"
#include "extension/menu/safely.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase2.hxx>
#include <rtl/ref.hxx>

#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

class Question final : public cppu::WeakImplHelper2<css::awt::XCallback, css::frame::XTerminateListener> {
public:
    Question(Surroundings const& around, std::unique_ptr<Dialog> to_show, Answered then)
        : surroundings_(around), dialog_(std::move(to_show)), answered_(std::move(then)),
          desktop_(css::frame::Desktop::create(around.context)) {}

    void open(std::vector<std::string> const& buttons) {
        dialog_->open(true);
        rtl::Reference<DialogEnd> const end(
            new DialogEnd([self = rtl::Reference<Question>(this)](OUString const& button) {
                css::awt::AsyncCallback::create(self->surroundings_.context)->addCallback(self.get(), Any(button));
            }));
        end->listen(*dialog_, buttons);
        desktop_->addTerminateListener(this);
    }

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
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    Surroundings const surroundings_;
    std::unique_ptr<Dialog> dialog_;
    Answered answered_;
    Reference<css::frame::XDesktop2> const desktop_;
};

} // namespace

void ask_beside(Surroundings const& surroundings, std::unique_ptr<Dialog> dialog, std::vector<std::string> buttons,
                Answered answered) {
    rtl::Reference<Question>(new Question(surroundings, std::move(dialog), std::move(answered)))->open(buttons);
}

} // namespace hearthcell::menu
