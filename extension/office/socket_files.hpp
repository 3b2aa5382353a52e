#pragma once
// The files of the sockets that an office listens on, which lie outside its folder and stay when it is killed.

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::office {

/// Those of an office that will run with this profile (a URL) and accept calls on this pipe. They are noted in a folder
/// before the office can make them, so that whoever deletes that folder can delete them, too; and they are deleted with
/// this object. The office must be dead by then.
class SocketFiles {
public:
    SocketFiles(std::string const& profile, std::string const& pipe, std::filesystem::path const& folder);
    ~SocketFiles();
    SocketFiles(SocketFiles const&) = delete;
    SocketFiles& operator=(SocketFiles const&) = delete;

    [[nodiscard]] std::vector<std::filesystem::path> const& paths() const { return paths_; }

private:
    std::vector<std::filesystem::path> paths_;
    std::filesystem::path note_;
};

/// Deletes the sockets that are noted in the folder of a profile or, one level deeper, below it. The office must have
/// been killed, if by nobody then by the end of who started it: this waits until it is dead.
void remove_noted_sockets(std::filesystem::path const& folder);

} // namespace hearthcell::office
