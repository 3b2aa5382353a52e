#pragma once
// The program hearthcell-archive, beside the office. No UNO here.

#include <sys/types.h>

#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace hearthcell::menu {

/// Where it is: in the package's own folder, so that both are of one edition; else on the path, or where
/// extension/install puts it. Empty where it is not installed.
std::string installed_archive_program(std::string const& package);

/// Where extension/install puts programs, as people write it.
std::string folder_of_own_programs();

/// It at work, as a process of its own: what it does cannot harm the office. Started without a shell.
class ArchiveProgram {
public:
    /// Throws std::system_error. office: the folder of the LibreOffice that is to do the work.
    ArchiveProgram(std::string const& program, std::vector<std::string> const& arguments, std::string const& office);
    ~ArchiveProgram();
    ArchiveProgram(ArchiveProgram const&) = delete;
    ArchiveProgram& operator=(ArchiveProgram const&) = delete;

    /// What it says of its progress and its troubles; waits. Nothing when it has ended.
    std::optional<std::string> next_line();

    /// Its exit status; waits. 128 + the signal when a signal ended it.
    int wait();

    /// Asks it to stop as Ctrl-C does. From any thread; harmless when it has ended.
    void interrupt();

private:
    std::mutex reaping_; // a number must not be signalled once it has been given back to the system
    pid_t id_ = -1;
    bool ended_ = false;
    int lines_ = -1; // its standard error
    std::string unread_;
};

} // namespace hearthcell::menu
