#include "extension/office/process.hpp"

#include <fstream>
#include <set>
#include <sstream>

namespace hearthcell::office {
namespace {

std::set<std::string> open_files(pid_t process) {
    std::set<std::string> targets;
    std::error_code ended; // the process may go, and with it the folder, while we read
    std::filesystem::directory_iterator file("/proc/" + std::to_string(process) + "/fd", ended);
    for (; !ended && file != std::filesystem::directory_iterator(); file.increment(ended))
        targets.insert(std::filesystem::read_symlink(file->path(), ended).string());
    return targets;
}

} // namespace

std::vector<std::filesystem::path> Process::sockets() const {
    std::set<std::string> const open = open_files(id_);
    std::vector<std::filesystem::path> paths;
    std::ifstream table("/proc/net/unix");
    std::string line;
    while (std::getline(table, line)) {
        std::istringstream columns(line);
        std::string skipped;
        std::string inode;
        std::string path;
        columns >> skipped >> skipped >> skipped >> skipped >> skipped >> skipped >> inode >> path;
        if (path.starts_with('/') && open.contains("socket:[" + inode + "]"))
            paths.emplace_back(path);
    }
    return paths;
}

} // namespace hearthcell::office
