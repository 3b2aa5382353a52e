#include "extension/menu/sliced_work.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/progress_dialog.hpp"
#include "extension/menu/safely.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/TerminationVetoException.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/weakref.hxx>
#include <rtl/ref.hxx>

#include <atomic>
#include <chrono>
#include <memory>
#include <thread>
#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using namespace std::chrono_literals;

namespace hearthcell::menu {
namespace {

constexpr auto turn = 50ms, pause = 10ms; // of ours, and between two of ours, for the mouse and the keyboard
constexpr sal_Int32 whole_bar = 1000;

class Job final : public cppu::WeakImplHelper2<css::awt::XCallback, css::frame::XTerminateListener> {
public:
    Job(Surroundings const& around, std::unique_ptr<SlicedWork> to_do, WorkTexts what_to_say)
        : surroundings_(around.without_frame()), texts_(std::move(what_to_say)), work_(std::move(to_do)),
          frame_(around.frame) {}

    void start() {
        callbacks_ = css::awt::AsyncCallback::create(surroundings_.context);
        desktop_ = css::frame::Desktop::create(surroundings_.context);
        desktop_->addTerminateListener(this);
        dialog_ = std::make_unique<ProgressDialog>(surroundings_, surroundings_.say(texts_.title), texts_.subject,
                                                   surroundings_.say(texts_.at_first), [this] { stop(); });
        ask_for_a_turn();
    }

    /// In the office's main thread: our turn.
    void SAL_CALL notify(Any const&) override {
        rtl::Reference<Job> const alive(this);
        if (!work_) // the office was about to end, but did not
            return finish({true, surroundings_.say(texts_.stopped)});
        at_work_ = true;
        Answer const answer = safely(surroundings_, [this] { return work(); });
        at_work_ = false;
        if (stopped_)
            finish({true, surroundings_.say(texts_.stopped)});
        else if (!answer.done || work_->is_done())
            finish(answer);
        else
            ask_for_a_turn();
    }

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {
        stopped_ = true;
        if (at_work_) // the office asks while it opens or stores something for us
            throw css::frame::TerminationVetoException();
        work_.reset(); // a document that is open out of sight would be in the way
        dialog_.reset();
    }
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        office_ends_ = true;
        acquire(); // for good: nothing may be torn down by the thread that waits when the office is no more
    }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    Answer work() {
        auto const end = std::chrono::steady_clock::now() + turn;
        do {
            if (stopped_)
                return {};
            if (work_->is_last() && !announced_) {
                dialog_->show_last(surroundings_.say(texts_.last));
                announced_ = true; // and is drawn before the office is busy with it
                return {};
            }
            work_->go_on();
            if (work_->is_done())
                return work_->answer();
        } while (work_->is_short() && std::chrono::steady_clock::now() < end);
        dialog_->show(sal_Int32(work_->done() * whole_bar), whole_bar, surroundings_.say(texts_.doing));
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
        work_.reset();
        dialog_.reset();
        surroundings_.frame = Reference<css::frame::XFrame>(frame_);
        show(surroundings_, answer);
    }

    Surroundings surroundings_;
    WorkTexts const texts_;
    std::unique_ptr<SlicedWork> work_;
    css::uno::WeakReference<css::frame::XFrame> const frame_;
    Reference<css::awt::XRequestCallback> callbacks_;
    Reference<css::frame::XDesktop2> desktop_;
    std::unique_ptr<ProgressDialog> dialog_;
    bool at_work_ = false, stopped_ = false, announced_ = false;
    std::atomic<bool> office_ends_ = false;
};

} // namespace

Answer work_in_slices(Surroundings const& surroundings, std::unique_ptr<SlicedWork> work, WorkTexts const& texts) {
    if (!surroundings.unattended) {
        rtl::Reference<Job>(new Job(surroundings, std::move(work), texts))->start();
        return {};
    }
    while (!work->is_done())
        work->go_on();
    return work->answer();
}

} // namespace hearthcell::menu
