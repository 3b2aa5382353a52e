#pragma once
// A server that is not to be asked.

#include <atomic>
#include <string>
#include <thread>

namespace hearthcell::tests {

/// Serves one small picture by http on this machine, under any name, and counts who asks.
class PictureServer {
public:
    PictureServer();
    ~PictureServer();
    PictureServer(PictureServer const&) = delete;
    PictureServer& operator=(PictureServer const&) = delete;

    /// "http://127.0.0.1:40123/"
    [[nodiscard]] std::string address() const;
    [[nodiscard]] int connections() const { return connections_; }

private:
    void serve();

    int socket_ = -1;
    int port_ = 0;
    std::atomic<int> connections_ = 0;
    std::thread thread_;
};

} // namespace hearthcell::tests
