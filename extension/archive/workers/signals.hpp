#pragma once
// The signals that stop a run.

#include <sys/signalfd.h>
#include <unistd.h>

#include <csignal>

namespace hearthcell::archive {

/// They are taken from a descriptor instead of a handler; and are as they were again afterwards.
class Signals {
public:
    Signals() {
        sigset_t stopping;
        ::sigemptyset(&stopping);
        for (int const signal : {SIGINT, SIGTERM, SIGHUP})
            ::sigaddset(&stopping, signal);
        ::sigprocmask(SIG_BLOCK, &stopping, &before_);
        descriptor_ = ::signalfd(-1, &stopping, SFD_CLOEXEC | SFD_NONBLOCK);
    }
    ~Signals() {
        ::close(descriptor_);
        ::sigprocmask(SIG_SETMASK, &before_, nullptr);
    }
    Signals(Signals const&) = delete;
    Signals& operator=(Signals const&) = delete;

    [[nodiscard]] int descriptor() const { return descriptor_; }

    int arrived() {
        signalfd_siginfo facts{};
        return ::read(descriptor_, &facts, sizeof facts) == sizeof facts ? static_cast<int>(facts.ssi_signo) : 0;
    }

private:
    sigset_t before_{};
    int descriptor_ = -1;
};

} // namespace hearthcell::archive
