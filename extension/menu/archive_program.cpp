#include "extension/menu/archive_program.hpp"

#include "extension/office/environment.hpp"
#include "functions/edition.hpp"

#include <dirent.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <memory>
#include <system_error>

namespace hearthcell::menu {
namespace {

constexpr char program_name[] = "hearthcell-archive";

/// Files that are open in this process and that another program would get. (There is a call that closes them all, but
/// not in the C library of every system that the package runs on.)
std::vector<int> files_to_close() {
    std::vector<int> found;
    std::unique_ptr<DIR, int (*)(DIR*)> const listed(::opendir("/proc/self/fd"), ::closedir);
    if (!listed)
        return found;
    while (dirent const* const entry = ::readdir(listed.get())) {
        std::string_view const digits = entry->d_name;
        int file = -1;
        std::from_chars(digits.data(), digits.data() + digits.size(), file);
        if (file > STDERR_FILENO)
            found.push_back(file);
    }
    return found;
}

/// What the child is to be like. Freed with this object.
struct Arrangements {
    Arrangements() {
        ::posix_spawn_file_actions_init(&files);
        ::posix_spawnattr_init(&attributes);
    }
    ~Arrangements() {
        ::posix_spawn_file_actions_destroy(&files);
        ::posix_spawnattr_destroy(&attributes);
    }
    Arrangements(Arrangements const&) = delete;
    Arrangements& operator=(Arrangements const&) = delete;

    /// Nothing of the office's but a line to talk on; no signal held back or handled in its way.
    void settle(int line) {
        ::posix_spawn_file_actions_addopen(&files, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
        ::posix_spawn_file_actions_addopen(&files, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
        ::posix_spawn_file_actions_adddup2(&files, line, STDERR_FILENO);
        for (int const file : files_to_close())
            ::posix_spawn_file_actions_addclose(&files, file); // one that is closed already does not matter
        sigset_t none, all;
        ::sigemptyset(&none);
        ::sigfillset(&all);
        ::posix_spawnattr_setsigmask(&attributes, &none);
        ::posix_spawnattr_setsigdefault(&attributes, &all);
        ::posix_spawnattr_setpgroup(&attributes, 0);
        ::posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETSIGMASK | POSIX_SPAWN_SETSIGDEF | POSIX_SPAWN_SETPGROUP);
    }

    posix_spawn_file_actions_t files{};
    posix_spawnattr_t attributes{};
};

std::vector<char*> pointers(std::vector<std::string>& words) {
    std::vector<char*> list;
    for (std::string& word : words)
        list.push_back(word.data());
    list.push_back(nullptr);
    return list;
}

std::vector<std::string> environment_with(std::string const& office) {
    std::vector<std::string> variables;
    for (char** variable = environ; *variable != nullptr; ++variable)
        // What the office's own start-up set for its libraries is not meant for other programs.
        if (!std::string_view(*variable).starts_with("LD_LIBRARY_PATH=") &&
            !std::string_view(*variable).starts_with("HEARTHCELL_OFFICE=") &&
            !std::string_view(*variable).starts_with("HEARTHCELL_EDITION="))
            variables.emplace_back(*variable);
    variables.push_back("HEARTHCELL_OFFICE=" + office);
    std::string_view const of_menu = edition;
    variables.emplace_back("HEARTHCELL_EDITION=").append(of_menu); // one of another refuses to run
    return variables;
}

} // namespace

std::string folder_of_own_programs() {
    return office::setting("HOME") + "/.local/bin";
}

std::string installed_archive_program(std::string const& package) {
    // By itself: a folder's name may hold what parts the folders of a path.
    std::string const own = package + "program/" + program_name;
    if (package.starts_with('/') && ::access(own.c_str(), X_OK) == 0)
        return own;
    return office::program_in(office::setting("PATH") + ":" + folder_of_own_programs(), program_name);
}

ArchiveProgram::ArchiveProgram(std::string const& program, std::vector<std::string> const& arguments,
                               std::string const& office) {
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0)
        throw std::system_error(errno, std::generic_category(), program);
    std::vector<std::string> words{program};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<std::string> variables = environment_with(office);
    Arrangements arrangements;
    arrangements.settle(ends[1]);
    int const problem = ::posix_spawn(&id_, program.c_str(), &arrangements.files, &arrangements.attributes,
                                      pointers(words).data(), pointers(variables).data());
    ::close(ends[1]);
    if (problem != 0) {
        ::close(ends[0]);
        throw std::system_error(problem, std::generic_category(), program);
    }
    lines_ = ends[0];
}

ArchiveProgram::~ArchiveProgram() {
    ::close(lines_);
}

std::optional<std::string> ArchiveProgram::next_line() {
    std::array<char, 4096> buffer{};
    for (;;) {
        if (std::size_t const end = unread_.find('\n'); end != std::string::npos) {
            std::string line = unread_.substr(0, end);
            unread_.erase(0, end + 1);
            return line;
        }
        ssize_t const got = ::read(lines_, buffer.data(), buffer.size());
        if (got > 0)
            unread_.append(buffer.data(), static_cast<std::size_t>(got));
        else if (got == 0 || errno != EINTR)
            return std::nullopt;
    }
}

int ArchiveProgram::wait() {
    constexpr int unknown = 2; // as where it could not run
    siginfo_t facts{};
    while (::waitid(P_PID, static_cast<id_t>(id_), &facts, WEXITED | WNOWAIT) != 0)
        if (errno != EINTR)
            return unknown;
    std::lock_guard const guard(reaping_);
    ended_ = true;
    int status = 0;
    if (::waitpid(id_, &status, 0) != id_)
        return unknown;
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

void ArchiveProgram::interrupt() {
    std::lock_guard const guard(reaping_);
    if (!ended_)
        ::kill(id_, SIGINT);
}

} // namespace hearthcell::menu
