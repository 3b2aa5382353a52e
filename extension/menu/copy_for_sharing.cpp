#include "extension/menu/copy_for_sharing.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/progress_dialog.hpp"
#include "extension/menu/safely.hpp"
#include "extension/menu/shared_copy.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/TerminationVetoException.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/weakref.hxx>
#include <rtl/ref.hxx>
#include <rtl/uri.hxx>

#include <atomic>
#include <chrono>
#include <memory>
#include <thread>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using rtl::OUString;
using namespace std::chrono_literals;

namespace hearthcell::menu {
namespace {

Reference<css::sheet::XSpreadsheetDocument> document_of(Reference<css::frame::XFrame> const& frame) {
    Reference<css::frame::XController> controller;
    if (frame.is())
        controller = frame->getController();
    if (!controller.is())
        return {};
    return {controller->getModel(), UNO_QUERY};
}

OUString address_of(Reference<css::uno::XInterface> const& document) {
    Reference<css::frame::XModel> const model(document, UNO_QUERY);
    return model.is() ? model->getURL() : OUString();
}

/// Beside the document and named after it.
OUString ask_for_target(Surroundings const& surroundings, OUString const& address) {
    sal_Int32 const slash = address.lastIndexOf('/');
    OUString name = rtl::Uri::decode(address.copy(slash + 1), rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8);
    if (sal_Int32 const dot = name.lastIndexOf('.'); dot > 0)
        name = name.copy(0, dot);
    if (name.isEmpty())
        name = surroundings.say(Text::untitled);
    OUString const folder = address.startsWith("file:") ? address.copy(0, slash) : OUString();
    return ask_where_to_save(surroundings, folder, surroundings.say(Text::name_of_copy, name));
}

constexpr auto turn = 50ms, pause = 10ms; // of ours, and between two of ours, for the mouse and the keyboard
constexpr sal_Int32 whole_bar = 1000;

/// Makes the copy a little at a time while the office stays usable. A dialog shows how far it is and can stop it; then
/// nothing is left of it. What came of it is said at the end. An office that ends stops it, too.
class Job final : public cppu::WeakImplHelper2<css::awt::XCallback, css::frame::XTerminateListener> {
public:
    Job(Surroundings const& around, std::unique_ptr<SharedCopy> work, OUString const& to)
        : surroundings_(around), target_(to), copy_(std::move(work)), frame_(around.frame) {
        surroundings_.frame.clear(); // it may be closed meanwhile, and must not be kept from that
    }

    void start() {
        callbacks_ = css::awt::AsyncCallback::create(surroundings_.context);
        desktop_ = css::frame::Desktop::create(surroundings_.context);
        desktop_->addTerminateListener(this);
        dialog_ = std::make_unique<ProgressDialog>(surroundings_, surroundings_.say(Text::copying), path_of(target_),
                                                   surroundings_.say(Text::reading_document), [this] { stop(); });
        ask_for_a_turn();
    }

    /// In the office's main thread: our turn.
    void SAL_CALL notify(Any const&) override {
        rtl::Reference<Job> const alive(this);
        if (!copy_) // the office was about to end, but did not
            return finish({true, surroundings_.say(Text::copy_stopped)});
        at_work_ = true;
        Answer const answer = safely(surroundings_, [this] { return work(); });
        at_work_ = false;
        if (stopped_)
            finish({true, surroundings_.say(Text::copy_stopped)});
        else if (!answer.done || copy_->next() == SharedCopy::Step::none)
            finish(answer);
        else
            ask_for_a_turn();
    }

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {
        stopped_ = true;
        if (at_work_) // the office asks while it opens or stores something for us
            throw css::frame::TerminationVetoException();
        copy_.reset(); // the copy that is open out of sight would be in the way
        dialog_.reset();
    }
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        office_ends_ = true;
        acquire(); // for good: nothing may be torn down by the thread that waits when the office is no more
    }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    Answer work() {
        using Step = SharedCopy::Step;
        auto const end = std::chrono::steady_clock::now() + turn;
        do {
            if (stopped_)
                return {};
            if (copy_->next() == Step::save && !announced_) {
                dialog_->show_last(surroundings_.say(Text::saving_copy));
                announced_ = true; // and is drawn before the office is busy with it
                return {};
            }
            copy_->go_on();
            if (copy_->next() == Step::none)
                return copy_->answer();
        } while (copy_->next() == Step::replace && std::chrono::steady_clock::now() < end);
        dialog_->show(sal_Int32(copy_->done() * whole_bar), whole_bar, surroundings_.say(Text::replacing_formulas));
        return {};
    }

    /// Not at once: an office that has been asked for something by itself first does that, and would never come to the
    /// mouse.
    void ask_for_a_turn() {
        std::thread([self = rtl::Reference<Job>(this)] {
            std::this_thread::sleep_for(pause);
            try {
                if (!self->office_ends_)
                    self->callbacks_->addCallback(self.get(), {});
            } catch (css::uno::Exception const&) { // the office is ending
            }
        }).detach();
    }

    void stop() {
        stopped_ = true;
        dialog_->show_last(surroundings_.say(Text::stopping));
    }

    void finish(Answer const& answer) {
        desktop_->removeTerminateListener(this);
        copy_.reset();
        dialog_.reset();
        surroundings_.frame = Reference<css::frame::XFrame>(frame_);
        show(surroundings_, answer);
    }

    Surroundings surroundings_;
    OUString const target_;
    std::unique_ptr<SharedCopy> copy_;
    css::uno::WeakReference<css::frame::XFrame> const frame_;
    Reference<css::awt::XRequestCallback> callbacks_;
    Reference<css::frame::XDesktop2> desktop_;
    std::unique_ptr<ProgressDialog> dialog_;
    bool at_work_ = false, stopped_ = false, announced_ = false;
    std::atomic<bool> office_ends_ = false;
};

} // namespace

Answer copy_for_sharing(Surroundings const& surroundings, OUString const& given_target) {
    auto const document = document_of(surroundings.frame);
    if (!document.is())
        return {false, surroundings.say(Text::no_spreadsheet)};
    OUString target = given_target;
    if (target.isEmpty() && !surroundings.unattended)
        target = ask_for_target(surroundings, address_of(document));
    if (target.isEmpty())
        return {false, {}};
    if (is_open(surroundings, target))
        return {false, surroundings.say(Text::name_is_open, path_of(target))};
    auto copy = std::make_unique<SharedCopy>(surroundings, document, target);
    if (!surroundings.unattended) {
        rtl::Reference<Job>(new Job(surroundings, std::move(copy), target))->start();
        return {};
    }
    while (copy->next() != SharedCopy::Step::none)
        copy->go_on();
    return copy->answer();
}

} // namespace hearthcell::menu
