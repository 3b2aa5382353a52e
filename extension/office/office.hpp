#pragma once
// A LibreOffice that is started for us and ends with us.

#include "extension/office/process.hpp"
#include "extension/office/profile.hpp"
#include "extension/office/socket_files.hpp"

#include <com/sun/star/frame/XDesktop2.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <memory>
#include <string>
#include <vector>

namespace hearthcell::office {

/// A headless LibreOffice of our own: a fresh profile, its own process, ended and cleared away with this object.
/// HEARTHCELL_OFFICE in the environment names the folder `program` of another one than that which this was built with.
class Office {
public:
    explicit Office(Settings const& settings = {});
    ~Office();
    Office(Office const&) = delete;
    Office& operator=(Office const&) = delete;

    /// Documents are opened through it (it is the component loader, too).
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::frame::XDesktop2> const& desktop() const;
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& context() const;

    bool alive();
    [[nodiscard]] pid_t process_id() const { return office_id_; }

    /// Whether it has no network and sees only the folder of its settings.
    [[nodiscard]] bool is_confined() const { return confining_ != nullptr; }
    [[nodiscard]] std::filesystem::path const& folder() const { return profile_.folder(); }

    /// The files of the sockets that it listens on, outside its folder, or would, if it had to take another place.
    [[nodiscard]] std::vector<std::filesystem::path> const& sockets() const { return sockets_->paths(); }

    /// Ends it at once. For an office that hangs, from another thread: the call that waits for it throws Gone.
    void kill();

    /// How it ended, if it has, and all that it said.
    [[nodiscard]] std::string last_words() const;

    /// Ends it as the user would and starts it anew with the same profile, so that memory it has not given back is
    /// free again. Documents must be closed.
    void restart();

    /// The display names of the functions Calc offers that start with this, as the function wizard lists them.
    [[nodiscard]] std::vector<std::string> functions(std::string const& starting_with) const;

private:
    void launch();
    void end();
    void connect(std::string const& pipe);
    void start(std::string const& pipe);
    [[nodiscard]] com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>
    reached(std::string const& pipe) const;
    [[nodiscard]] std::string log_text() const;

    Profile profile_;
    bool windows_;
    Confining const* confining_ = nullptr;
    Confinement confinement_ = {};
    std::unique_ptr<SocketFiles> sockets_; // before the process: they are deleted when it is dead
    std::unique_ptr<Process> process_;     // the office, or what confines it
    pid_t office_id_ = -1;
    com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> context_;
    com::sun::star::uno::Reference<com::sun::star::frame::XDesktop2> desktop_;
};

} // namespace hearthcell::office
