#include "extension/office/office.hpp"

#include "extension/office/environment.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/bridge/UnoUrlResolver.hpp>
#include <com/sun/star/connection/NoConnectException.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <rtl/bootstrap.hxx>

#include <langinfo.h>
#include <locale.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <fstream>
#include <sstream>
#include <thread>

namespace css = com::sun::star;
using namespace std::chrono_literals;

namespace hearthcell::office {
namespace {

constexpr auto starting_time = 120s; // a fresh profile takes 4 s on an idle machine
constexpr auto ending_time = 20s;
constexpr int wants_a_restart = 81; // what soffice.bin exits with when it has just written a fresh profile

/// Another LibreOffice than the one that this was built with: HEARTHCELL_OFFICE names its folder `program`.
std::string program_folder() {
    std::string const other = setting("HEARTHCELL_OFFICE");
    return other.empty() ? OFFICE_PROGRAM : other;
}

/// This program's own side of the connection; made once and kept, as the office's libraries expect it.
css::uno::Reference<css::uno::XComponentContext> const& own_context() {
    static css::uno::Reference<css::uno::XComponentContext> const context = [] {
        // Without the office's own types the bridge crashes on the first interface that it does not know.
        rtl::Bootstrap::set("URE_MORE_TYPES", file_url(program_folder() + "/types/offapi.rdb"));
        return asking("starting LibreOffice's libraries",
                      [] { return cppu::defaultBootstrap_InitialComponentContext(); });
    }();
    return context;
}

std::string fresh_pipe_name() {
    static std::atomic<unsigned> number = 0;
    auto const now = std::chrono::system_clock::now().time_since_epoch().count();
    return "hearthcell-" + std::to_string(::getpid()) + "-" + std::to_string(++number) + "-" + std::to_string(now);
}

/// The process that a confined program is: the last one of those that were started one by the other.
pid_t last_child(pid_t process) {
    for (std::vector<pid_t> children; !(children = children_of(process)).empty();)
        process = children.front();
    return process;
}

/// Whether the user's locale has the names of files in UTF-8, as we have. In another one, such as where none is set,
/// the office would look for and make files of other names.
bool names_are_utf8() {
    locale_t const locale = ::newlocale(LC_CTYPE_MASK, "", nullptr);
    if (locale == nullptr) // not installed
        return false;
    bool const is_utf8 = std::string_view(::nl_langinfo_l(CODESET, locale)) == "UTF-8";
    ::freelocale(locale);
    return is_utf8;
}

} // namespace

Office::Office(Settings const& settings) : profile_(settings), windows_(settings.windows) {
    if (!windows_)
        confining_ = settings.confining;
    if (is_confined()) // in there are no links that lead to its own folder
        confinement_ = {std::filesystem::canonical(program_folder()).parent_path(),
                        {settings.only_folder, profile_.folder()},
                        profile_.temporary()};
    std::signal(SIGPIPE, SIG_IGN); // LibreOffice's way to an office that has died must not take this program along
    launch();
}

Office::~Office() {
    end();
}

void Office::restart() {
    end();
    launch();
}

void Office::launch() {
    std::string const pipe = fresh_pipe_name();
    sockets_ = std::make_unique<SocketFiles>(profile_.url(), pipe, profile_.folder());
    start(pipe);
    asking("connecting to LibreOffice", [&] {
        connect(pipe);
        desktop_ = css::frame::Desktop::create(context_);
        office_id_ = is_confined() ? last_child(process_->id()) : process_->id();
    });
}

void Office::end() {
    // terminate() of an office that hangs would never come back, so that another thread asks and this one waits.
    std::thread polite([desktop = desktop_] {
        try {
            if (desktop.is())
                desktop->terminate();
        } catch (css::uno::Exception const&) { // already gone
        }
    });
    if (!desktop_.is() || !process_->wait(ending_time))
        process_->kill();
    polite.join();
    desktop_.clear();
    context_.clear();
    sockets_.reset();
}

void Office::start(std::string const& pipe) {
    std::vector<std::string> arguments{"--norestore", "--nologo", "--nodefault", "--nolockcheck",
                                       "--accept=pipe,name=" + pipe + ";urp"};
    if (!windows_)
        arguments.emplace_back("--headless");
    for (std::string const& argument : profile_.arguments())
        arguments.push_back(argument);
    std::string program = program_folder() + "/soffice.bin";
    if (is_confined()) {
        auto words = confining_->words(confinement_);
        words.push_back(std::filesystem::canonical(program));
        arguments.insert(arguments.begin(), words.begin() + 1, words.end());
        program = words.front();
    }
    // Its temporary files go where they are deleted with the profile, however it ends; and so does what its libraries
    // would put into the user's home (settings of the desktop).
    std::string const folder = profile_.folder().string();
    std::vector<std::string> settings{"TMPDIR=" + folder, "XDG_CONFIG_HOME=" + folder, "XDG_RUNTIME_DIR=" + folder,
                                      // windows drawn by the office itself, everywhere alike
                                      "SAL_USE_VCLPLUGIN=" + std::string(windows_ ? "gen" : "svp")};
    if (!names_are_utf8())
        settings.emplace_back("LC_ALL=C.UTF-8");
    process_ = std::make_unique<Process>(program, arguments, profile_.log(), settings);
}

void Office::connect(std::string const& pipe) {
    auto const end = std::chrono::steady_clock::now() + starting_time;
    int restarts = 0;
    while (std::chrono::steady_clock::now() < end) {
        std::optional<int> const code = process_->exit_code();
        if (code == wants_a_restart && ++restarts < 3)
            start(pipe);
        else if (code)
            throw std::runtime_error("LibreOffice ended with code " + std::to_string(*code) + " instead of starting. " +
                                     log_text());
        context_ = reached(pipe);
        if (context_.is())
            return;
        std::this_thread::sleep_for(20ms);
    }
    throw std::runtime_error("LibreOffice did not answer in time. " + log_text());
}

/// Nothing as long as it does not listen.
css::uno::Reference<css::uno::XComponentContext> Office::reached(std::string const& pipe) const {
    if (is_confined())
        return confining_->connected(confinement_, pipe, own_context());
    try {
        return {css::bridge::UnoUrlResolver::create(own_context())
                    ->resolve(wide("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext")),
                css::uno::UNO_QUERY_THROW};
    } catch (css::connection::NoConnectException const&) {
        return {};
    }
}

std::string Office::log_text() const {
    std::ifstream log(profile_.log());
    std::ostringstream text;
    text << "It said: " << log.rdbuf();
    return text.str();
}

std::string Office::last_words() const {
    std::optional<int> const code = process_->exit_code();
    return (code ? "It ended with code " + std::to_string(*code) + ". " : "It still runs. ") + log_text();
}

css::uno::Reference<css::frame::XDesktop2> const& Office::desktop() const {
    return desktop_;
}

css::uno::Reference<css::uno::XComponentContext> const& Office::context() const {
    return context_;
}

bool Office::alive() {
    return !process_->exit_code();
}

void Office::kill() {
    process_->kill();
}

std::vector<std::string> Office::functions(std::string const& starting_with) const {
    return asking("reading the list of functions", [&] {
        css::uno::Reference<css::container::XIndexAccess> const list(
            context_->getServiceManager()->createInstanceWithContext("com.sun.star.sheet.FunctionDescriptions",
                                                                     context_),
            css::uno::UNO_QUERY_THROW);
        std::vector<std::string> names;
        for (sal_Int32 index = 0; index < list->getCount(); ++index) {
            css::uno::Sequence<css::beans::PropertyValue> properties;
            list->getByIndex(index) >>= properties;
            for (css::beans::PropertyValue const& property : properties) {
                rtl::OUString name;
                if (property.Name == "Name" && (property.Value >>= name) && name.startsWith(wide(starting_with)))
                    names.push_back(narrow(name));
            }
        }
        return names;
    });
}

} // namespace hearthcell::office
