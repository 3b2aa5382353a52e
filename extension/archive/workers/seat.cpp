#include "extension/archive/workers/seat.hpp"

#include "extension/archive/workers/message.hpp"
#include "extension/archive/workers/scratch.hpp"
#include "extension/archive/workers/worker.hpp"

#include <nlohmann/json.hpp>

#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <system_error>
#include <thread>

namespace hearthcell::archive {
namespace {

using std::chrono::seconds;
using std::chrono::steady_clock;

constexpr seconds longest_start{300}; // of an office, on a machine that has much to do

/// In the child: nothing of the scheduler's but the one socket.
void forget_scheduler(int socket) {
    for (int const signal : {SIGTERM, SIGHUP})
        ::signal(signal, SIG_DFL);
    ::signal(SIGINT, SIG_IGN); // Ctrl-C reaches all processes of the terminal; the scheduler tells us
    sigset_t none;
    ::sigemptyset(&none);
    ::sigprocmask(SIG_SETMASK, &none, nullptr);
    ::close_range(3, static_cast<unsigned>(socket) - 1, 0);
    ::close_range(static_cast<unsigned>(socket) + 1, ~0U, 0);
}

} // namespace

Seat::Seat(Task const& task, std::filesystem::path const& common_scratch, unsigned number)
    : task_(task), scratch_(common_scratch / std::to_string(number)) {}

Seat::~Seat() {
    leave();
}

void Seat::start() {
    int ends[2] = {-1, -1};
    if (::socketpair(AF_UNIX, SOCK_SEQPACKET | SOCK_CLOEXEC, 0, ends) != 0)
        throw std::system_error(errno, std::generic_category(), "no socket for a worker");
    std::filesystem::create_directories(scratch_);
    std::fflush(nullptr);
    process_ = ::fork();
    if (process_ < 0) {
        int const why = errno;
        ::close(ends[0]);
        ::close(ends[1]);
        throw std::system_error(why, std::generic_category(), "could not start a worker");
    }
    if (process_ == 0) {
        forget_scheduler(ends[1]);
        work(task_, ends[1], scratch_);
    }
    ::close(ends[1]);
    socket_ = ends[0];
}

bool Seat::give(std::size_t workbook) {
    workbook_ = workbook;
    since_ = steady_clock::now();
    return send(socket_, {{"workbook", workbook}});
}

bool Seat::tell(nlohmann::json const& message) {
    return send(socket_, message);
}

std::optional<nlohmann::json> Seat::hear() {
    return receive(socket_);
}

bool Seat::overdue() const {
    return busy() &&
           steady_clock::now() - since_ > longest_start + 2 * std::chrono::duration<double>(task_.options.time_limit);
}

void Seat::ask_to_end() {
    if (taken())
        send(socket_, {{"end", true}});
}

void Seat::leave() {
    if (!taken())
        return;
    ::close(socket_); // a worker that lives ends itself and its office now
    auto const patience = steady_clock::now() + seconds(5);
    int status = 0;
    while (::waitpid(process_, &status, WNOHANG) == 0) {
        if (steady_clock::now() > patience)
            ::kill(process_, SIGKILL); // its office dies with it
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    clear_away(scratch_);
    workbook_.reset();
    process_ = -1;
    socket_ = -1;
}

} // namespace hearthcell::archive
