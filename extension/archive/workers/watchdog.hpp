#pragma once
// Ends an office that takes too long, and a worker whose scheduler is gone.

#include "extension/office/office.hpp"

#include <atomic>
#include <chrono>
#include <filesystem>
#include <mutex>
#include <thread>

namespace hearthcell::archive {

/// A thread beside a worker that waits for its office. A call to an office that hangs never comes back, but it throws
/// as soon as the office is dead: so this ends the office when the time of a workbook is over. And it ends the worker
/// with all that belongs to it when the scheduler is gone.
class Watchdog {
public:
    Watchdog(int scheduler, std::filesystem::path scratch);
    ~Watchdog();
    Watchdog(Watchdog const&) = delete;
    Watchdog& operator=(Watchdog const&) = delete;

    void watch(office::Office* office); // null: there is none
    void arm(std::chrono::duration<double> limit);
    bool disarm(); // whether the time was over

private:
    void run();
    void end_if_late();
    [[noreturn]] void end_all();

    int const scheduler_;
    std::filesystem::path const scratch_;
    std::mutex guard_;
    office::Office* office_ = nullptr;
    bool armed_ = false;
    bool late_ = false;
    std::chrono::steady_clock::time_point deadline_;
    std::atomic<bool> ending_ = false;
    std::thread thread_; // last: it uses all of the above
};

} // namespace hearthcell::archive
