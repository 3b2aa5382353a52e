#include "picture_server.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <string_view>
#include <system_error>

namespace hearthcell::tests {
namespace {

/// One grey dot.
constexpr std::array<unsigned char, 67> picture{
    0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d, 0x49, 0x48, 0x44, 0x52, 0x00,
    0x00, 0x00, 0x01, 0x00, 0x00, 0x00, 0x01, 0x08, 0x00, 0x00, 0x00, 0x00, 0x3a, 0x7e, 0x9b, 0x55, 0x00,
    0x00, 0x00, 0x0a, 0x49, 0x44, 0x41, 0x54, 0x78, 0xda, 0x63, 0x68, 0x00, 0x00, 0x00, 0x82, 0x00, 0x81,
    0xda, 0x45, 0x08, 0x3b, 0x00, 0x00, 0x00, 0x00, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82};

void answer(int connection) {
    timeval const patience{5, 0};
    setsockopt(connection, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    std::string request;
    std::array<char, 4096> part{};
    while (request.find("\r\n\r\n") == std::string::npos) {
        ssize_t const length = recv(connection, part.data(), part.size(), 0);
        if (length <= 0)
            return;
        request.append(part.data(), std::size_t(length));
    }
    std::string reply = "HTTP/1.1 200 OK\r\nContent-Type: image/png\r\nConnection: close\r\nContent-Length: " +
                        std::to_string(picture.size()) + "\r\n\r\n";
    if (request.starts_with("GET "))
        reply.append(reinterpret_cast<char const*>(picture.data()), picture.size());
    send(connection, reply.data(), reply.size(), MSG_NOSIGNAL);
}

} // namespace

PictureServer::PictureServer() : socket_(socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    sockaddr_in place{};
    place.sin_family = AF_INET;
    place.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof place;
    if (socket_ < 0 || bind(socket_, reinterpret_cast<sockaddr*>(&place), size) != 0 || listen(socket_, 20) != 0 ||
        getsockname(socket_, reinterpret_cast<sockaddr*>(&place), &size) != 0)
        throw std::system_error(errno, std::generic_category(), "serving a picture");
    port_ = ntohs(place.sin_port);
    thread_ = std::thread([this] { serve(); });
}

PictureServer::~PictureServer() {
    shutdown(socket_, SHUT_RDWR); // ends the wait for another connection
    thread_.join();
    close(socket_);
}

std::string PictureServer::address() const {
    return "http://127.0.0.1:" + std::to_string(port_) + "/";
}

void PictureServer::serve() {
    for (int connection = accept(socket_, nullptr, nullptr); connection >= 0;
         connection = accept(socket_, nullptr, nullptr)) {
        ++connections_;
        answer(connection);
        close(connection);
    }
}

} // namespace hearthcell::tests
