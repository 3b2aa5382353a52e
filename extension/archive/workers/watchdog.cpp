#include "extension/archive/workers/watchdog.hpp"

#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <fstream>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr int look_every = 50; // ms
constexpr int gone = 3;        // exit status of a worker without a scheduler

/// The processes that this one has started and not yet seen the end of: their ids cannot have been given away.
std::vector<pid_t> children() {
    std::vector<pid_t> ids;
    std::error_code problem;
    for (auto const& thread : std::filesystem::directory_iterator("/proc/self/task", problem)) {
        std::ifstream list(thread.path() / "children");
        for (pid_t id = 0; list >> id;)
            ids.push_back(id);
    }
    return ids;
}

bool runs(pid_t id) {
    std::ifstream facts("/proc/" + std::to_string(id) + "/stat");
    std::string text;
    std::getline(facts, text);
    auto const after_name = text.rfind(") ");
    return after_name != std::string::npos && text[after_name + 2] != 'Z';
}

} // namespace

Watchdog::Watchdog(int scheduler, std::filesystem::path scratch)
    : scheduler_(scheduler), scratch_(std::move(scratch)), thread_([this] { run(); }) {}

Watchdog::~Watchdog() {
    ending_ = true;
    thread_.join();
}

void Watchdog::watch(office::Office* office) {
    std::lock_guard const hold(guard_);
    office_ = office;
}

void Watchdog::arm(std::chrono::duration<double> limit) {
    std::lock_guard const hold(guard_);
    late_ = false;
    armed_ = true;
    deadline_ =
        std::chrono::steady_clock::now() + std::chrono::duration_cast<std::chrono::steady_clock::duration>(limit);
}

bool Watchdog::disarm() {
    std::lock_guard const hold(guard_);
    armed_ = false;
    return late_;
}

void Watchdog::run() {
    while (!ending_) {
        pollfd line{scheduler_, POLLRDHUP, 0};
        if (::poll(&line, 1, look_every) > 0 && !ending_)
            end_all();
        end_if_late();
    }
}

void Watchdog::end_if_late() {
    std::lock_guard const hold(guard_);
    if (!armed_ || late_ || std::chrono::steady_clock::now() < deadline_)
        return;
    late_ = true;
    if (office_ != nullptr)
        office_->kill();
}

void Watchdog::end_all() {
    std::vector<std::filesystem::path> sockets;
    {
        std::lock_guard const hold(guard_);
        if (office_ != nullptr)
            sockets = office_->sockets();
    }
    // The worker itself may be starting an office at this moment, and may go on to clear up what is cleared up here.
    std::error_code ignored;
    for (int tries = 0; tries < 500; ++tries) {
        auto const ids = children();
        for (pid_t const id : ids)
            ::kill(-id, SIGKILL); // each has a group of its own
        bool const quiet = std::none_of(ids.begin(), ids.end(), runs);
        std::filesystem::remove_all(scratch_, ignored);
        if (quiet && !std::filesystem::exists(scratch_, ignored))
            break;
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    for (auto const& socket : sockets)
        std::filesystem::remove(socket, ignored);
    std::filesystem::remove(scratch_.parent_path(), ignored); // the last one takes the common folder with it
    ::_exit(gone);
}

} // namespace hearthcell::archive
