#include "extension/menu/archive_job.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/progress_dialog.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/weakref.hxx>
#include <osl/file.hxx>
#include <rtl/ref.hxx>

#include <atomic>
#include <csignal>
#include <cstdio>
#include <thread>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr int with_problems = 1, stopped = 128 + SIGINT; // exit statuses of the program

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

class Job final : public cppu::WeakImplHelper2<css::awt::XCallback, css::frame::XTerminateListener> {
public:
    Job(Surroundings const& around, OUString const& folder, std::unique_ptr<ArchiveProgram> work)
        : surroundings_(around), results_(folder), program_(std::move(work)), frame_(around.frame) {
        surroundings_.frame.clear(); // it may be closed meanwhile, and must not be kept from that
    }

    /// In the office's main thread, as all below but follow().
    void start() {
        callbacks_ = css::awt::AsyncCallback::create(surroundings_.context);
        desktop_ = css::frame::Desktop::create(surroundings_.context);
        desktop_->addTerminateListener(this);
        if (!surroundings_.unattended)
            dialog_ =
                std::make_unique<ProgressDialog>(surroundings_, surroundings_.say(Text::recalculating), results_,
                                                 surroundings_.say(Text::looking_for_workbooks), [this] { stop(); });
        // Not waited for: it may wait for the office while the office would wait for it.
        std::thread([self = rtl::Reference<Job>(this)] { self->follow(); }).detach();
    }

    void SAL_CALL notify(Any const& news) override {
        Progress progress;
        {
            std::lock_guard const guard(telling_);
            pending_ = false;
            progress = latest_;
        }
        if (bool ended = false; (news >>= ended) && ended)
            finish();
        else
            show_progress(progress);
    }

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {}
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        office_ends_ = true;
        acquire(); // for good: nothing may be torn down by the thread that follows when the office is no more
        program_->interrupt();
        dialog_.reset();
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
        show(surroundings_, answer());
    }

    Answer answer() {
        if (status_ == stopped)
            return {true, surroundings_.say(Text::stopped, results_)};
        if (status_ > with_problems)
            return {false, with_cause_of_program(surroundings_, wide(said_))};
        for (char const* name : {"summary-of-archive.ods", "summary.ods"}) {
            OUString url;
            osl::FileBase::getFileURLFromSystemPath(results_ + "/" + OUString::createFromAscii(name), url);
            if (exists(url))
                return open_file(surroundings_, url);
        }
        return {true, surroundings_.say(Text::recalculated, results_)};
    }

    static bool exists(OUString const& url) {
        osl::DirectoryItem item;
        return osl::DirectoryItem::get(url, item) == osl::FileBase::E_None;
    }

    Surroundings surroundings_;
    OUString const results_;
    std::unique_ptr<ArchiveProgram> const program_;
    css::uno::WeakReference<css::frame::XFrame> const frame_;
    Reference<css::awt::XRequestCallback> callbacks_;
    Reference<css::frame::XDesktop2> desktop_;
    std::unique_ptr<ProgressDialog> dialog_;

    std::atomic<bool> office_ends_ = false;
    std::atomic<int> status_ = 0;
    std::mutex telling_; // what follows is shared with the thread
    Progress latest_;
    bool pending_ = false;
    std::string said_;
};

} // namespace

void start_archive_job(Surroundings const& surroundings, OUString const& results,
                       std::unique_ptr<ArchiveProgram> program) {
    rtl::Reference<Job>(new Job(surroundings, results, std::move(program)))->start();
}

OUString with_cause_of_program(Surroundings const& surroundings, OUString const& cause) {
    OUString const words = surroundings.say(Text::not_recalculated);
    return cause.isEmpty() ? words : words + "\n\n" + cause.trim();
}

} // namespace hearthcell::menu
