#include "extension/office/socket_connection.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/bridge/BridgeFactory.hpp>
#include <com/sun/star/connection/XConnection.hpp>
#include <com/sun/star/io/IOException.hpp>
#include <cppuhelper/implbase1.hxx>

#include <fcntl.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>

namespace css = com::sun::star;
using css::uno::Reference;

namespace hearthcell::office {
namespace {

class Connection : public cppu::WeakImplHelper1<css::connection::XConnection> {
public:
    explicit Connection(int socket) : socket_(socket) {}
    ~Connection() override { ::close(socket_); }

    /// As many bytes as wanted; fewer only at the end.
    sal_Int32 SAL_CALL read(css::uno::Sequence<sal_Int8>& bytes, sal_Int32 wanted) override {
        bytes.realloc(wanted);
        sal_Int32 got = 0;
        while (got < wanted) {
            ssize_t const now = ::recv(socket_, bytes.getArray() + got, static_cast<std::size_t>(wanted - got), 0);
            if (now < 0 && errno == EINTR)
                continue;
            if (now < 0)
                fail();
            if (now == 0)
                break;
            got += static_cast<sal_Int32>(now);
        }
        bytes.realloc(got);
        return got;
    }

    void SAL_CALL write(css::uno::Sequence<sal_Int8> const& bytes) override {
        for (sal_Int32 sent = 0; sent < bytes.getLength();) {
            ssize_t const now = ::send(socket_, bytes.getConstArray() + sent,
                                       static_cast<std::size_t>(bytes.getLength() - sent), MSG_NOSIGNAL);
            if (now < 0 && errno != EINTR)
                fail();
            sent += now > 0 ? static_cast<sal_Int32>(now) : 0;
        }
    }

    void SAL_CALL flush() override {}
    void SAL_CALL close() override { ::shutdown(socket_, SHUT_RDWR); } // another thread may be reading
    rtl::OUString SAL_CALL getDescription() override { return "hearthcell"; }

private:
    [[noreturn]] void fail() {
        throw css::io::IOException(wide(std::strerror(errno)), static_cast<cppu::OWeakObject*>(this));
    }

    int const socket_;
};

/// The socket that was made for this pipe; its name begins otherwise.
std::string socket_for(std::filesystem::path const& folder, std::string const& pipe) {
    std::error_code problem;
    for (auto const& entry : std::filesystem::directory_iterator(folder, problem))
        if (entry.path().filename().string().ends_with("_" + pipe))
            return entry.path().filename();
    return {};
}

/// The address of a socket has room for 108 letters: so it is reached through a handle of its folder.
int connected(std::filesystem::path const& folder, std::string const& name) {
    int const handle = ::open(folder.c_str(), O_PATH | O_DIRECTORY | O_CLOEXEC);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    std::string const path = "/proc/self/fd/" + std::to_string(handle) + "/" + name;
    int connection = -1;
    if (handle >= 0 && path.size() < sizeof address.sun_path) {
        std::copy(path.begin(), path.end(), address.sun_path);
        connection = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    }
    if (connection >= 0 && ::connect(connection, reinterpret_cast<sockaddr*>(&address), sizeof address) != 0) {
        ::close(connection);
        connection = -1;
    }
    if (handle >= 0)
        ::close(handle);
    return connection;
}

} // namespace

Reference<css::uno::XComponentContext> connect_in(std::filesystem::path const& folder, std::string const& pipe,
                                                  Reference<css::uno::XComponentContext> const& own) {
    std::string const name = socket_for(folder, pipe);
    int const socket = name.empty() ? -1 : connected(folder, name);
    if (socket < 0)
        return {};
    Reference<css::connection::XConnection> const connection(new Connection(socket));
    auto const bridge = css::bridge::BridgeFactory::create(own)->createBridge({}, "urp", connection, {});
    return {bridge->getInstance("StarOffice.ComponentContext"), css::uno::UNO_QUERY};
}

} // namespace hearthcell::office
