#include "extension/archive/workers/watchdog.hpp"

#include "extension/archive/files/value.hpp"
#include "extension/archive/workers/memory.hpp"
#include "extension/archive/workers/message.hpp"
#include "extension/archive/workers/scratch.hpp"
#include "extension/office/socket_files.hpp"

#include <nlohmann/json.hpp>

#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <fstream>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr int look_every = 50; // ms
constexpr int gone = 3;        // exit status of a worker without a scheduler, or that had to be ended
constexpr unsigned to_mib = 20;

/// From the end of an office until our own code must have seen it.
constexpr std::chrono::seconds patience{5};

bool runs(pid_t id) {
    std::ifstream facts("/proc/" + std::to_string(id) + "/stat");
    std::string text;
    std::getline(facts, text);
    auto const after_name = text.rfind(") ");
    return after_name != std::string::npos && text[after_name + 2] != 'Z';
}

} // namespace

Watchdog::Watchdog(int scheduler, std::filesystem::path scratch, Limits const& limits)
    : scheduler_(scheduler), scratch_(std::move(scratch)), limits_(limits), at_first_(own_memory(::getpid())),
      thread_([this] { run(); }) {}

Watchdog::~Watchdog() {
    ending_ = true;
    thread_.join();
}

Watchdog::Reading::Reading(Watchdog& watchdog, std::size_t workbook) : watchdog_(watchdog) {
    watchdog.arm(watchdog.limits_.seconds, workbook, true);
}

void Watchdog::watch(office::Office* office) {
    std::lock_guard const hold(guard_);
    office_ = office;
}

void Watchdog::arm(double seconds, std::optional<std::size_t> workbook, bool ours) {
    std::lock_guard const hold(guard_);
    armed_ = true;
    ours_ = ours;
    passed_.reset();
    workbook_ = workbook;
    seconds_ = seconds;
    deadline_ = Clock::now() + std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(seconds));
}

std::optional<Trouble> Watchdog::disarm() {
    std::lock_guard const hold(guard_);
    armed_ = false;
    return passed_;
}

void Watchdog::run() {
    while (!ending_) {
        pollfd line{scheduler_, POLLRDHUP, 0};
        if (::poll(&line, 1, look_every) > 0 && !ending_)
            end_all();
        look();
    }
}

std::optional<Trouble> Watchdog::passed_limit() const {
    if (Clock::now() >= deadline_)
        return Trouble(Reason::timed_out, "longer than " + written(seconds_) + " s");
    std::uint64_t const own = own_memory(::getpid());
    std::uint64_t const all = (own > at_first_ ? own - at_first_ : 0) + memory_below(::getpid());
    if (all > limits_.bytes)
        return Trouble(Reason::memory_limit, "more than " + std::to_string(limits_.bytes >> to_mib) + " MiB");
    return std::nullopt;
}

void Watchdog::look() {
    std::lock_guard const hold(guard_); // what disarms waits until it is settled who has the last word
    if (!armed_)
        return;
    if (!passed_) {
        passed_ = passed_limit();
        if (!passed_)
            return;
        if (ours_ || office_ == nullptr)
            give_up();
        office_->kill();
        give_up_at_ = Clock::now() + patience;
    }
    if (Clock::now() >= give_up_at_ || own_memory(::getpid()) > at_first_ + limits_.bytes)
        give_up();
}

void Watchdog::give_up() {
    nlohmann::json last_words;
    if (workbook_)
        last_words = {{"last_words", true},
                      {"workbook", *workbook_},
                      {"finished", false},
                      {"reason", words(passed_->reason)},
                      {"detail", passed_->what()}};
    else
        last_words = {{"not_drawn", std::string(words(passed_->reason)) + ": " + passed_->what()}};
    send(scheduler_, last_words);
    end_all();
}

void Watchdog::end_all() {
    // The worker itself may be starting an office at this moment, and may go on to clear up what is cleared up here.
    std::error_code ignored;
    for (int tries = 0; tries < 500; ++tries) {
        auto const ids = office::children_of(::getpid());
        for (pid_t const id : ids)
            ::kill(-id, SIGKILL); // each has a group of its own
        bool const quiet = std::none_of(ids.begin(), ids.end(), runs);
        office::remove_noted_sockets(scratch_);
        std::filesystem::remove_all(scratch_, ignored);
        if (quiet && !std::filesystem::exists(scratch_, ignored))
            break;
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    clear_away_if_last(scratch_.parent_path());
    ::_exit(gone);
}

} // namespace hearthcell::archive
