#include "extension/office/process.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <fstream>
#include <system_error>
#include <thread>

namespace hearthcell::office {
namespace {

constexpr int could_not_start = 127;

// Between fork and exec only what is safe in a process whose other threads have vanished.
[[noreturn]] void become(char const* program, char* const* arguments, char* const* environment, char const* log,
                         pid_t parent) {
    ::setpgid(0, 0);
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
    if (::getppid() != parent)
        ::_exit(could_not_start);
    int const nothing = ::open("/dev/null", O_RDONLY);
    int const output = ::open(log, O_WRONLY | O_CREAT | O_APPEND, 0600);
    if (nothing < 0 || output < 0)
        ::_exit(could_not_start);
    ::flock(output, LOCK_SH | LOCK_NB); // held by all who inherit it, until the last of them is dead
    ::dup2(nothing, STDIN_FILENO);
    ::dup2(output, STDOUT_FILENO);
    ::dup2(output, STDERR_FILENO);
    ::close_range(3, ~0U, 0);
    ::execve(program, arguments, environment);
    ::_exit(could_not_start);
}

/// "NAME=value", among others of that kind.
bool is_set_in(std::vector<std::string> const& settings, std::string_view variable) {
    std::string_view const name = variable.substr(0, variable.find('=') + 1);
    return std::ranges::any_of(settings, [&](std::string const& setting) { return setting.starts_with(name); });
}

std::vector<char*> pointers(std::vector<std::string>& words) {
    std::vector<char*> list;
    list.reserve(words.size() + 1);
    for (std::string& word : words)
        list.push_back(word.data());
    list.push_back(nullptr);
    return list;
}

} // namespace

Process::Process(std::filesystem::path const& program, std::vector<std::string> const& arguments,
                 std::filesystem::path const& log, std::vector<std::string> const& settings) {
    std::vector<std::string> words{program.string()};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<std::string> variables = settings;
    for (char** variable = environ; *variable != nullptr; ++variable) // of two with one name each system takes another
        if (!is_set_in(settings, *variable))
            variables.emplace_back(*variable);
    std::vector<char*> const argv = pointers(words);
    std::vector<char*> const environment = pointers(variables);

    pid_t const parent = ::getpid();
    id_ = ::fork();
    if (id_ < 0)
        throw std::system_error(errno, std::generic_category(), "could not start " + program.string());
    if (id_ == 0)
        become(program.c_str(), argv.data(), environment.data(), log.c_str(), parent);
    ::setpgid(id_, id_); // here too: whichever of the two comes first, the group exists from now on
}

Process::~Process() {
    kill();
}

std::optional<int> Process::exit_code() {
    std::lock_guard const guard(reaping_);
    int status = 0;
    if (!exit_code_ && ::waitpid(id_, &status, WNOHANG) == id_)
        exit_code_ = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return exit_code_;
}

std::optional<int> Process::wait(std::chrono::milliseconds at_most) {
    auto const end = std::chrono::steady_clock::now() + at_most;
    while (!exit_code() && std::chrono::steady_clock::now() < end)
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    return exit_code();
}

void Process::kill() {
    std::lock_guard const guard(reaping_);
    if (exit_code_)
        return;
    ::kill(-id_, SIGKILL);
    int status = 0;
    while (::waitpid(id_, &status, 0) < 0 && errno == EINTR) {
    }
    exit_code_ = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

std::vector<pid_t> children_of(pid_t process) {
    std::vector<pid_t> ids;
    std::error_code ended; // threads come and go while we read
    std::filesystem::directory_iterator thread("/proc/" + std::to_string(process) + "/task", ended);
    for (; !ended && thread != std::filesystem::directory_iterator(); thread.increment(ended)) {
        std::ifstream list(thread->path() / "children");
        for (pid_t id = 0; list >> id;)
            ids.push_back(id);
    }
    return ids;
}

bool is_written(std::filesystem::path const& log) {
    int const file = ::open(log.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
    if (file < 0)
        return false;
    bool const held = ::flock(file, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
    ::close(file);
    return held;
}

} // namespace hearthcell::office
