#include "extension/menu/archive_job.hpp"

#include "extension/menu/archive_program.hpp"
#include "extension/menu/dialogs.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/progress_dialog.hpp"
#include "extension/menu/safely.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <com/sun/star/util/theMacroExpander.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/weakref.hxx>
#include <rtl/ref.hxx>

#include <atomic>
#include <cstdio>
#include <memory>
#include <system_error>
#include <thread>
#include <utility>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

/// How far the program is.
struct Progress {
    sal_Int32 done = 0, all = -1, problems = 0; // all: -1 as long as nobody knows
};

/// A line such as {"all":300,"done":5,"problems":0}; false where it is something else.
bool read_progress(std::string const& line, Progress& progress) {
    int done = 0, all = 0, problems = 0;
    if (std::sscanf(line.c_str(), R"({"all":%d,"done":%d,"problems":%d})", &all, &done, &problems) != 3)
        return false;
    progress = {done, all, problems};
    return true;
}

class ArchiveJob final : public cppu::WeakImplHelper2<css::awt::XCallback, css::frame::XTerminateListener> {
public:
    ArchiveJob(Surroundings const& around, ArchiveRun to_do, std::unique_ptr<ArchiveProgram> work, AfterRun what_then)
        : surroundings_(around.without_frame()), run_(std::move(to_do)), program_(std::move(work)),
          after_(std::move(what_then)), frame_(around.frame) {}

    /// In the office's main thread, as all below but follow().
    void start() {
        callbacks_ = css::awt::AsyncCallback::create(surroundings_.context);
        desktop_ = css::frame::Desktop::create(surroundings_.context);
        desktop_->addTerminateListener(this);
        if (!surroundings_.unattended)
            dialog_ =
                std::make_unique<ProgressDialog>(surroundings_, surroundings_.say(run_.title), run_.results,
                                                 surroundings_.say(Text::looking_for_workbooks), [this] { stop(); });
        // Not waited for: it may wait for the office while the office would wait for it.
        std::thread([self = rtl::Reference<ArchiveJob>(this)] { self->follow(); }).detach();
    }

    void SAL_CALL notify(Any const& news) override {
        Progress progress;
        {
            std::lock_guard const guard(telling_);
            pending_ = false;
            progress = latest_;
        }
        bool ended = false;
        if ((news >>= ended) && ended)
            ended_ = true;
        if (showing_) // drawing can let other events in, this one, too: the window must not go away under itself
            return;
        showing_ = true;
        if (!ended_)
            show_progress(progress);
        showing_ = false;
        if (ended_)
            finish();
    }

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {}
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        office_ends_ = true;
        acquire(); // for good: nothing may be torn down by the thread that follows when the office is no more
        program_->interrupt();
        dialog_.reset();
        after_ = nullptr; // and with it what it keeps, such as a private copy of a document
    }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    /// The thread beside the office. It only reads, and asks the office to look.
    void follow() {
        while (auto const line = program_->next_line()) {
            std::lock_guard const guard(telling_);
            if (!read_progress(*line, latest_))
                said_ += *line + "\n";
            else if (!std::exchange(pending_, true))
                ask(false);
        }
        status_ = program_->wait();
        ask(true);
    }

    void ask(bool ended) {
        try {
            if (!office_ends_)
                callbacks_->addCallback(this, Any(ended));
        } catch (css::uno::Exception const&) { // the office is ending
        }
    }

    void show_progress(Progress const& progress) {
        if (!dialog_ || progress.all < 0)
            return;
        dialog_->show(progress.done, progress.all,
                      progress.done == progress.all
                          ? surroundings_.say(Text::writing_reports)
                          : surroundings_.say(Text::workbooks_done, OUString::number(progress.done),
                                              OUString::number(progress.all)));
        if (progress.problems > 0)
            dialog_->remark(surroundings_.say(Text::problems_so_far, OUString::number(progress.problems)));
    }

    void stop() {
        program_->interrupt();
        if (dialog_)
            dialog_->show_last(surroundings_.say(Text::stopping));
    }

    void finish() {
        if (office_ends_)
            return;
        desktop_->removeTerminateListener(this);
        dialog_.reset();
        surroundings_.frame = Reference<css::frame::XFrame>(frame_);
        AfterRun const after = std::exchange(after_, nullptr);
        show(surroundings_, safely(surroundings_, [&] {
                 return after(surroundings_, run_, RunEnd{status_, wide(said_)});
             }));
    }

    Surroundings surroundings_;
    ArchiveRun const run_;
    std::unique_ptr<ArchiveProgram> const program_;
    AfterRun after_;
    css::uno::WeakReference<css::frame::XFrame> const frame_;
    Reference<css::awt::XRequestCallback> callbacks_;
    Reference<css::frame::XDesktop2> desktop_;
    std::unique_ptr<ProgressDialog> dialog_;
    bool showing_ = false, ended_ = false;

    std::atomic<bool> office_ends_ = false;
    std::atomic<int> status_ = 0;
    std::mutex telling_; // what follows is shared with the thread
    Progress latest_;
    bool pending_ = false;
    std::string said_;
};

/// The folder of the office that we are in.
std::string this_office(Surroundings const& surroundings) {
    return bytes(
        path_of(css::util::theMacroExpander::get(surroundings.context)->expandMacros("$BRAND_BASE_DIR/program")));
}

} // namespace

Answer start_archive_job(Surroundings const& surroundings, ArchiveRun const& run, AfterRun after) {
    try {
        std::vector<std::string> arguments = run.arguments;
        arguments.insert(arguments.end(), {"--output", bytes(run.results), "--quiet", "--progress-lines"});
        auto program =
            std::make_unique<ArchiveProgram>(archive_program(surroundings), arguments, this_office(surroundings));
        rtl::Reference<ArchiveJob>(new ArchiveJob(surroundings, run, std::move(program), std::move(after)))->start();
    } catch (std::system_error const& problem) {
        return not_done(surroundings, run, OUString::createFromAscii(problem.what()));
    }
    return {};
}

} // namespace hearthcell::menu
