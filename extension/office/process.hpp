#pragma once
// A program that is started beside this one and does not outlive it.

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::office {

/// A program that we started and that ends with us: when this object goes, and also when the thread that started it
/// dies without unwinding (a crash, a signal).
class Process {
public:
    /// Input comes from nowhere and output goes to the log, so that no pipe of ours is held open.
    /// settings: NAME=value, before those of our own environment.
    Process(std::filesystem::path const& program, std::vector<std::string> const& arguments,
            std::filesystem::path const& log, std::vector<std::string> const& settings = {});
    ~Process();
    Process(Process const&) = delete;
    Process& operator=(Process const&) = delete;

    [[nodiscard]] pid_t id() const { return id_; }

    /// The exit code once it has ended; 128 + the signal when a signal ended it.
    std::optional<int> exit_code();
    std::optional<int> wait(std::chrono::milliseconds at_most);

    /// Ends it and everything it started, at once. Another thread may call this.
    void kill();

private:
    std::mutex reaping_; // an id must not be signalled once it has been given back to the system
    pid_t id_ = -1;
    std::optional<int> exit_code_;
};

/// The processes that one has started and not yet seen the end of: their ids cannot have been given away.
std::vector<pid_t> children_of(pid_t process);

/// Whether a program that was started with this log, or what it started in turn, still runs; whoever asks.
bool is_written(std::filesystem::path const& log);

} // namespace hearthcell::office
