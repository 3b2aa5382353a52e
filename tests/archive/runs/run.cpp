#include "tests/archive/runs/run.hpp"

#include "tests/archive/runs/processes.hpp"
#include "tests/support/all_below.hpp"
#include "tests/support/content.hpp"

#include <fcntl.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <sstream>
#include <stdexcept>
#include <system_error>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

fs::path folder_of(std::string const& name) {
    return fs::path(RUNS) / name;
}

[[noreturn]] void become(char* const* arguments, std::vector<char*> const& environment, fs::path const& folder,
                         Setting const& setting) {
    ::prctl(PR_SET_PDEATHSIG, SIGTERM); // a test program that is ended leaves no run behind
    int const in = ::open((folder / "stdin").c_str(), O_RDONLY);
    int const out = ::open((folder / "stdout").c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    int const err = ::open((folder / "stderr").c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    ::dup2(in, STDIN_FILENO);
    ::dup2(out, STDOUT_FILENO);
    ::dup2(err, STDERR_FILENO);
    ::close_range(3, ~0U, 0);
    for (auto const& [kind, most] : setting.limits) {
        rlimit const limit{most, most};
        ::setrlimit(static_cast<__rlimit_resource_t>(kind), &limit);
    }
    if (setting.user != 0 && (::setgid(setting.user) != 0 || ::setuid(setting.user) != 0))
        ::_exit(126);
    ::execve(arguments[0], arguments, environment.data());
    ::_exit(127);
}

std::vector<char*> pointers(Words& words) {
    std::vector<char*> list;
    for (std::string& word : words)
        list.push_back(word.data());
    list.push_back(nullptr);
    return list;
}

} // namespace

fs::path fresh_folder(std::string const& name) {
    fs::remove_all(folder_of(name));
    fs::create_directories(folder_of(name));
    return folder_of(name);
}

fs::path output_of(std::string const& name) {
    return folder_of(name) / "output";
}

Running::Running(std::string const& name, Words const& arguments, Setting const& setting)
    : folder_(folder_of(name)), output_(output_of(name)), temporary_(folder_ / "temporary") {
    fs::create_directories(folder_);
    fs::remove_all(temporary_);
    for (fs::path const& place : {temporary_ / "scratch", temporary_ / "home"}) {
        fs::create_directories(place);
        fs::permissions(place, fs::perms::all);
    }
    std::ofstream(folder_ / "stdin", std::ios::binary) << setting.standard_input;
    Words words{ARCHIVE_TOOL};
    words.insert(words.end(), arguments.begin(), arguments.end());
    // By this each process of the run is known, whatever else goes on on this machine.
    mark_ = "HEARTHCELL_RUN=" + std::to_string(::getpid()) + "." +
            std::to_string(std::chrono::system_clock::now().time_since_epoch().count());
    Words variables = setting.variables; // the first of two of one name counts
    variables.push_back(mark_);
    for (std::string const& usual :
         {"TMPDIR=" + (temporary_ / "scratch").string(), "HOME=" + (temporary_ / "home").string(),
          std::string("PATH=/usr/bin:/bin"), std::string("LC_ALL=C.UTF-8")})
        variables.push_back(usual);
    std::vector<char*> const argv = pointers(words), environment = pointers(variables);
    id_ = ::fork();
    if (id_ < 0)
        throw std::system_error(errno, std::generic_category(), "fork");
    if (id_ == 0)
        become(argv.data(), environment, folder_, setting);
}

Running::~Running() {
    if (status_)
        return;
    ::kill(id_, SIGTERM);
    for (int i = 0; i < 200 && running(); ++i)
        std::this_thread::sleep_for(50ms);
    if (!status_) {
        ::kill(id_, SIGKILL);
        ::waitpid(id_, nullptr, 0);
    }
}

bool Running::running() {
    note_sockets();
    int status = 0;
    if (!status_ && ::waitpid(id_, &status, WNOHANG) == id_)
        status_ = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return !status_;
}

int Running::wait() {
    auto const end = std::chrono::steady_clock::now() + 1h; // however busy the machine is
    while (running()) {
        if (std::chrono::steady_clock::now() > end)
            throw std::runtime_error("the run does not end; so far it said: " + said() + complained());
        std::this_thread::sleep_for(10ms);
    }
    return *status_;
}

void Running::send(int signal) const {
    if (!status_)
        ::kill(id_, signal);
}

std::vector<pid_t> Running::workers() const {
    return children_of({id_}, "hearthcell-arch"); // names of processes are cut after 15 letters
}

std::vector<pid_t> Running::offices() const {
    std::vector<pid_t> parents = workers(); // and the processes that confine their offices: each starts the next
    for (std::vector<pid_t> between = parents; !between.empty();) {
        between = children_of(between, "bwrap");
        parents.insert(parents.end(), between.begin(), between.end());
    }
    return children_of(parents, "soffice.bin");
}

void Running::note_sockets() {
    // scratch / of this run / of a worker / of its office / note
    std::vector<fs::path> folders{temporary_ / "scratch"};
    for (int level = 0; level < 3; ++level) {
        std::vector<fs::path> below;
        for (fs::path const& folder : folders) {
            std::error_code gone;
            for (fs::directory_iterator entry(folder, gone); !gone && entry != fs::directory_iterator();
                 entry.increment(gone))
                below.push_back(entry->path());
        }
        folders = std::move(below);
    }
    for (fs::path const& folder : folders) {
        std::istringstream note(content(folder / "sockets"));
        for (std::string socket; std::getline(note, socket);)
            noted_.insert(socket);
    }
}

Words Running::sockets() {
    note_sockets();
    Words paths;
    std::error_code gone;
    for (fs::path const& file : all_below(temporary_ / "scratch"))
        if (fs::is_socket(file, gone))
            paths.push_back(file); // of an office that is confined
    for (std::string const& socket : noted_)
        if (fs::is_socket(socket, gone))
            paths.push_back(socket);
    return paths;
}

void Running::kill_all() const {
    auto all = offices();
    for (pid_t const worker : workers())
        all.push_back(worker);
    ::kill(id_, SIGSTOP); // it would see its workers end
    all.push_back(id_);
    for (pid_t const process : all)
        ::kill(process, SIGKILL);
}

std::string Running::said() const {
    return content(folder_ / "stdout");
}

std::string Running::complained() const {
    return content(folder_ / "stderr");
}

Words Running::left_behind() const {
    Words left;
    for (char const* place : {"scratch", "home"})
        for (fs::path const& file : all_below(temporary_ / place))
            left.push_back(file);
    for (pid_t const process : all_processes()) {
        std::string const at = "/proc/" + std::to_string(process);
        if (content(at + "/environ").find(mark_) != std::string::npos)
            left.push_back("process " + std::to_string(process) + " " + facts_of(process).name);
    }
    for (std::string const& socket : noted_)
        if (fs::exists(fs::symlink_status(socket)))
            left.push_back(socket);
    return left;
}

Ended run(std::string const& name, Words const& arguments, Setting const& setting) {
    Running under_way(name, arguments, setting);
    int const status = under_way.wait();
    return {status, under_way.said(), under_way.complained(), under_way.output(), under_way.left_behind()};
}

} // namespace hearthcell::tests::archive
