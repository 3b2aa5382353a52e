#include "extension/archive/workers/message.hpp"

#include <nlohmann/json.hpp>

#include <sys/socket.h>

#include <cerrno>
#include <vector>

namespace hearthcell::archive {
namespace {

constexpr std::size_t longest = 60'000; // what a local socket surely takes in one piece

} // namespace

bool send(int socket, nlohmann::json const& message) {
    std::string const text = message.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    ssize_t sent = 0;
    do
        sent = ::send(socket, text.data(), text.size(), MSG_NOSIGNAL);
    while (sent < 0 && errno == EINTR);
    return sent == static_cast<ssize_t>(text.size());
}

std::optional<nlohmann::json> receive(int socket) {
    std::vector<char> buffer(longest);
    ssize_t got = 0;
    do
        got = ::recv(socket, buffer.data(), buffer.size(), 0);
    while (got < 0 && errno == EINTR);
    if (got <= 0)
        return std::nullopt;
    return nlohmann::json::parse(buffer.data(), buffer.data() + got);
}

} // namespace hearthcell::archive
