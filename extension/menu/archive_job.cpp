#include "extension/menu/archive_job.hpp"

#include "extension/menu/dialogs.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/progress_dialog.hpp"

#include <com/sun/star/awt/AsyncCallback.hpp>
#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XTopWindowListener.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTerminateListener.hpp>
#include <cppuhelper/implbase4.hxx>
#include <cppuhelper/weakref.hxx>
#include <osl/file.hxx>
#include <rtl/ref.hxx>

#include <atomic>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <thread>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr int with_problems = 1, stopped = 128 + SIGINT; // exit statuses of the program

/// A line such as {"all":300,"done":5,"problems":0}; false where it is something else.
bool read_progress(std::string const& line, Progress& progress) {
    int done = 0, all = 0, problems = 0;
    if (std::sscanf(line.c_str(), R"({"all":%d,"done":%d,"problems":%d})", &all, &done, &problems) != 3)
        return false;
    progress = {done, all, problems};
    return true;
}

class Job final : public cppu::WeakImplHelper4<css::awt::XCallback, css::awt::XActionListener,
                                               css::awt::XTopWindowListener, css::frame::XTerminateListener> {
public:
    Job(Surroundings const& around, OUString const& folder, std::unique_ptr<ArchiveProgram> work)
        : surroundings(around), results(folder), program(std::move(work)), frame(around.frame) {
        surroundings.frame.clear(); // it may be closed meanwhile, and must not be kept from that
    }

    /// In the office's main thread, as all below but follow().
    void start() {
        callbacks = css::awt::AsyncCallback::create(surroundings.context);
        desktop = css::frame::Desktop::create(surroundings.context);
        desktop->addTerminateListener(this);
        if (!surroundings.unattended) {
            dialog = std::make_unique<ProgressDialog>(surroundings, results, this);
            Reference<css::awt::XTopWindow>(dialog->window(), UNO_QUERY_THROW)->addTopWindowListener(this);
        }
        // Not waited for: it may wait for the office while the office would wait for it.
        std::thread([self = rtl::Reference<Job>(this)] { self->follow(); }).detach();
    }

    void SAL_CALL notify(Any const& news) override {
        Progress progress;
        {
            std::lock_guard const guard(telling);
            pending = false;
            progress = latest;
        }
        if (bool ended = false; (news >>= ended) && ended)
            finish();
        else if (dialog)
            dialog->show(progress);
    }

    void SAL_CALL actionPerformed(css::awt::ActionEvent const&) override { stop(); }
    void SAL_CALL windowClosing(css::lang::EventObject const&) override { stop(); }
    void SAL_CALL windowOpened(css::lang::EventObject const&) override {}
    void SAL_CALL windowClosed(css::lang::EventObject const&) override {}
    void SAL_CALL windowMinimized(css::lang::EventObject const&) override {}
    void SAL_CALL windowNormalized(css::lang::EventObject const&) override {}
    void SAL_CALL windowActivated(css::lang::EventObject const&) override {}
    void SAL_CALL windowDeactivated(css::lang::EventObject const&) override {}

    void SAL_CALL queryTermination(css::lang::EventObject const&) override {}
    void SAL_CALL notifyTermination(css::lang::EventObject const&) override {
        office_ends = true;
        acquire(); // for good: nothing may be torn down by the thread that follows when the office is no more
        program->interrupt();
        dialog.reset();
    }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    /// The thread beside the office. It only reads, and asks the office to look.
    void follow() {
        while (auto const line = program->next_line()) {
            std::lock_guard const guard(telling);
            if (!read_progress(*line, latest))
                said += *line + "\n";
            else if (!std::exchange(pending, true))
                ask(false);
        }
        status = program->wait();
        ask(true);
    }

    void ask(bool ended) {
        try {
            if (!office_ends)
                callbacks->addCallback(this, Any(ended));
        } catch (css::uno::Exception const&) { // the office is ending
        }
    }

    void stop() {
        program->interrupt();
        if (dialog)
            dialog->show_stopping();
    }

    void finish() {
        if (office_ends)
            return;
        desktop->removeTerminateListener(this);
        dialog.reset();
        surroundings.frame = Reference<css::frame::XFrame>(frame);
        show(surroundings, answer());
    }

    Answer answer() {
        if (status == stopped)
            return {true, surroundings.say(Text::stopped, results)};
        if (status > with_problems)
            return {false, with_cause_of_program(surroundings, wide(said))};
        for (char const* name : {"summary-of-archive.ods", "summary.ods"}) {
            OUString url;
            osl::FileBase::getFileURLFromSystemPath(results + "/" + OUString::createFromAscii(name), url);
            if (exists(url))
                return open_file(surroundings, url);
        }
        return {true, surroundings.say(Text::recalculated, results)};
    }

    static bool exists(OUString const& url) {
        osl::DirectoryItem item;
        return osl::DirectoryItem::get(url, item) == osl::FileBase::E_None;
    }

    Surroundings surroundings;
    OUString const results;
    std::unique_ptr<ArchiveProgram> const program;
    css::uno::WeakReference<css::frame::XFrame> const frame;
    Reference<css::awt::XRequestCallback> callbacks;
    Reference<css::frame::XDesktop2> desktop;
    std::unique_ptr<ProgressDialog> dialog;

    std::atomic<bool> office_ends = false;
    std::atomic<int> status = 0;
    std::mutex telling; // what follows is shared with the thread
    Progress latest;
    bool pending = false;
    std::string said;
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
