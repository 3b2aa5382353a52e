#pragma once
// Runs hearthcell-archive as a user would: its own process, its own folder for temporary files.

#include <sys/types.h>

#include <cstdint>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace hearthcell::tests::archive {

using Words = std::vector<std::string>;

struct Setting {
    std::string standard_input{}; ///< what the program reads
    uid_t user = 0;               ///< runs as this user when it is not 0; only root can ask for that
    std::vector<std::pair<int, std::uint64_t>> limits{}; ///< of what it may take, as setrlimit has them
    Words variables{};                                   ///< further ones of its environment: NAME=value
};

/// A run under way. Whatever happens in a test, it is ended with this object.
class Running {
public:
    /// The name is that of the folder which this run gets in the build tree; an output folder in it that is there
    /// already is kept, so that a run can be resumed.
    Running(std::string const& name, Words const& arguments, Setting const& setting = {});
    ~Running();
    Running(Running const&) = delete;
    Running& operator=(Running const&) = delete;

    /// The exit status once it has ended, 128 + the signal when a signal ended it. Throws after an hour.
    int wait();
    [[nodiscard]] bool running();

    void send(int signal) const;
    [[nodiscard]] std::vector<pid_t> workers() const; ///< its own processes that do the work
    [[nodiscard]] std::vector<pid_t> offices() const; ///< the office processes of its workers
    [[nodiscard]] Words sockets();                    ///< those that its offices listen on now

    void kill_all() const; ///< the program, its workers and their offices, at once

    [[nodiscard]] std::string said() const;       ///< standard output
    [[nodiscard]] std::string complained() const; ///< standard error

    /// What a run may not leave: processes, temporary files, sockets that its offices listened on while it was looked
    /// at, anything in its user's home. Empty when all is well.
    [[nodiscard]] Words left_behind() const;

    [[nodiscard]] std::filesystem::path const& output() const { return output_; }

private:
    void note_sockets(); ///< outside the folder for temporary files they are known by its notes alone

    std::filesystem::path folder_, output_, temporary_;
    std::string mark_; ///< in the environment of all its processes
    std::set<std::string> noted_;
    pid_t id_ = -1;
    std::optional<int> status_;
};

/// The folder of a run, emptied; with an `output` of that name that does not exist yet.
std::filesystem::path fresh_folder(std::string const& name);
std::filesystem::path output_of(std::string const& name);

/// Runs to the end.
struct Ended {
    int status;
    std::string said, complained;
    std::filesystem::path output;
    Words left_behind;
};
Ended run(std::string const& name, Words const& arguments, Setting const& setting = {});

} // namespace hearthcell::tests::archive
