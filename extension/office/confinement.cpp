#include "extension/office/confinement.hpp"

#include "extension/office/environment.hpp"
#include "extension/office/process.hpp"
#include "extension/office/socket_connection.hpp"

#include <chrono>

namespace hearthcell::office {
namespace {

namespace fs = std::filesystem;

constexpr auto patience = std::chrono::seconds(20);

/// What programs need of the system: libraries, fonts, names of users, the time zone.
constexpr char const* settings[] = {"/etc/alternatives",    "/etc/fonts",
                                    "/etc/group",           "/etc/ld.so.cache",
                                    "/etc/ld.so.conf",      "/etc/ld.so.conf.d",
                                    "/etc/libreoffice",     "/etc/localtime",
                                    "/etc/nsswitch.conf",   "/etc/passwd",
                                    "/etc/timezone",        "/var/cache/fontconfig",
                                    "/var/lib/libreoffice", "/var/spool/libreoffice"};

std::string bubblewrap() {
    std::string const path = setting("PATH");
    return program_in(path.empty() ? "/usr/bin:/bin" : path, "bwrap");
}

std::vector<std::string> common_words() {
    std::vector<std::string> words{bubblewrap(),        "--unshare-user", "--unshare-net", "--unshare-pid",
                                   "--unshare-ipc",     "--unshare-uts",  "--cap-drop",    "ALL",
                                   "--die-with-parent", "--ro-bind",      "/usr",          "/usr"};
    auto const add = [&](std::initializer_list<std::string> more) { words.insert(words.end(), more); };
    for (char const* place : {"/bin", "/lib", "/lib32", "/lib64", "/sbin"}) {
        std::error_code problem;
        if (fs::is_symlink(place, problem))
            add({"--symlink", fs::read_symlink(place, problem).string(), place});
        else
            add({"--ro-bind-try", place, place});
    }
    for (char const* place : settings)
        add({"--ro-bind-try", place, place});
    add({"--proc", "/proc", "--dev", "/dev"});
    return words;
}

bool try_it() {
    std::vector<std::string> words = common_words();
    if (words.front().empty())
        return false;
    words.emplace_back("/usr/bin/true");
    std::string const program = words.front();
    words.erase(words.begin());
    try {
        Process process(program, words, "/dev/null");
        return process.wait(patience) == 0;
    } catch (std::exception const&) {
        return false;
    }
}

class Bubblewrap : public Confining {
public:
    [[nodiscard]] std::vector<std::string> words(Confinement const& confinement) const override {
        std::vector<std::string> words = common_words();
        auto const add = [&](std::initializer_list<std::string> more) { words.insert(words.end(), more); };
        // In this order: the folders may lie below /tmp.
        add({"--bind", confinement.temporary, "/tmp"});
        if (!confinement.program.string().starts_with("/usr/"))
            add({"--ro-bind", confinement.program, confinement.program});
        for (fs::path const& folder : confinement.folders)
            add({"--bind", folder, folder});
        return words;
    }

    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>
    connected(Confinement const& confinement, std::string const& pipe,
              com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& own) const override {
        return connect_in(confinement.temporary, pipe, own);
    }
};

} // namespace

Confining const* confining() {
    static Bubblewrap const bubblewrap;
    static bool const possible = try_it();
    return possible ? &bubblewrap : nullptr;
}

} // namespace hearthcell::office
