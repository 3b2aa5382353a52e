#pragma once
// Ends what takes too long or too much memory, and a worker whose scheduler is gone.

#include "extension/archive/files/problem.hpp"
#include "extension/office/office.hpp"

#include <atomic>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <mutex>
#include <optional>
#include <thread>

namespace hearthcell::archive {

/// A thread beside a worker that looks at the clock and at the memory of the worker and its office. A call to an office
/// that hangs never comes back, but it throws as soon as the office is dead: so this ends the office when a limit is
/// passed. Where it is our own code that does not come to an end, nothing can be thrown into it: then this tells the
/// scheduler why the workbook failed, and ends the worker. And it ends the worker with all that belongs to it when the
/// scheduler is gone.
class Watchdog {
public:
    struct Limits {
        double seconds;
        std::uint64_t bytes; // of the worker, since it began, and its office
    };

    Watchdog(int scheduler, std::filesystem::path scratch, Limits const& limits);
    ~Watchdog();
    Watchdog(Watchdog const&) = delete;
    Watchdog& operator=(Watchdog const&) = delete;

    void watch(office::Office* office); // null: there is none

    /// The office has something to do: for a workbook (by number), or a summary to draw.
    void arm(double seconds, std::optional<std::size_t> workbook) { arm(seconds, workbook, false); }
    std::optional<Trouble> disarm(); // the limit that was passed

    /// For as long as it lives, our own code reads a workbook.
    class Reading {
    public:
        Reading(Watchdog& watchdog, std::size_t workbook);
        ~Reading() { watchdog_.disarm(); }
        Reading(Reading const&) = delete;
        Reading& operator=(Reading const&) = delete;

    private:
        Watchdog& watchdog_;
    };

private:
    using Clock = std::chrono::steady_clock;
    void arm(double seconds, std::optional<std::size_t> workbook, bool ours);
    void run();
    void look();
    [[nodiscard]] std::optional<Trouble> passed_limit() const;
    [[noreturn]] void give_up();
    [[noreturn]] void end_all();

    int const scheduler_;
    std::filesystem::path const scratch_;
    Limits const limits_;
    std::uint64_t const at_first_; // memory of the worker, much of which it shares with the scheduler
    std::mutex guard_;
    office::Office* office_ = nullptr;
    bool armed_ = false, ours_ = false; // ours: no office has to do with it
    double seconds_ = 0;
    std::optional<std::size_t> workbook_;
    std::optional<Trouble> passed_;
    Clock::time_point deadline_, give_up_at_;
    std::atomic<bool> ending_ = false;
    std::thread thread_; // last: it uses all of the above
};

} // namespace hearthcell::archive
