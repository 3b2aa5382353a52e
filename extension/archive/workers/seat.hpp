#pragma once
// A worker as the scheduler sees it: the process, the socket to it, the workbook it has.

#include "extension/archive/workers/task.hpp"

#include <nlohmann/json_fwd.hpp>

#include <chrono>
#include <filesystem>
#include <optional>
#include <vector>

namespace hearthcell::archive {

/// A place for a worker, as the scheduler sees it.
class Seat {
public:
    Seat(Task const& task, std::filesystem::path const& common_scratch, unsigned number);
    ~Seat();
    Seat(Seat const&) = delete;
    Seat& operator=(Seat const&) = delete;

    [[nodiscard]] bool taken() const { return process_ > 0; }
    [[nodiscard]] bool busy() const { return workbook_.has_value(); }
    [[nodiscard]] std::optional<std::size_t> workbook() const { return workbook_; }
    [[nodiscard]] int socket() const { return socket_; }

    void start(); // a worker
    bool give(std::size_t workbook);
    bool tell(nlohmann::json const& message); // false: it is gone
    std::optional<nlohmann::json> hear();     // what the worker says; nothing when it is gone
    void done() { workbook_.reset(); }

    /// A worker ends its own office when the time is over. This is for one that cannot.
    [[nodiscard]] bool overdue() const;

    void ask_to_end();
    void leave(); // gone or not, it is ended and cleared away, with its office and all their files

private:
    Task const& task_;
    std::filesystem::path scratch_;
    pid_t process_ = -1;
    int socket_ = -1;
    std::optional<std::size_t> workbook_;
    std::chrono::steady_clock::time_point since_;
};

} // namespace hearthcell::archive
