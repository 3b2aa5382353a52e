// The second wall alone: an office that opens a workbook from which no link was taken.

#include "extension/office/confinement.hpp"
#include "extension/office/document.hpp"
#include "extension/office/office.hpp"

#include <arpa/inet.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>
#include <fstream>
#include <thread>

namespace hearthcell::tests::archive {
namespace {

/// A server that answers nobody, and knows whether somebody has come.
class Server {
public:
    Server() : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = ::htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof address;
        ::bind(socket_, reinterpret_cast<sockaddr*>(&address), size);
        ::listen(socket_, 16);
        ::getsockname(socket_, reinterpret_cast<sockaddr*>(&address), &size);
        port_ = ::ntohs(address.sin_port);
    }
    ~Server() { ::close(socket_); }
    Server(Server const&) = delete;
    Server& operator=(Server const&) = delete;

    [[nodiscard]] bool was_asked() const {
        pollfd line{socket_, POLLIN, 0};
        return ::poll(&line, 1, 0) > 0;
    }
    [[nodiscard]] std::string url() const { return "http://127.0.0.1:" + std::to_string(port_) + "/a.png"; }

private:
    int socket_;
    unsigned port_ = 0;
};

struct Folder {
    Folder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "confined-XXXXXX").string();
        path = ::mkdtemp(pattern.data());
    }
    ~Folder() { std::filesystem::remove_all(path); }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    std::filesystem::path path;
};

std::filesystem::path workbook_with_picture(std::filesystem::path const& folder, std::string const& address) {
    std::string const names = "urn:oasis:names:tc:opendocument:xmlns:";
    std::filesystem::path const file = folder / "linked.fods";
    std::ofstream(file) << "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document xmlns:office=\"" << names
                        << "office:1.0\" xmlns:table=\"" << names << "table:1.0\" xmlns:draw=\"" << names
                        << "drawing:1.0\" xmlns:svg=\"" << names
                        << "svg-compatible:1.0\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" office:version=\"1.3\" "
                           "office:mimetype=\"application/vnd.oasis.opendocument.spreadsheet\"><office:body>"
                           "<office:spreadsheet><table:table table:name=\"Data\"><table:shapes><draw:frame "
                           "svg:width=\"2cm\" svg:height=\"2cm\"><draw:image xlink:href=\""
                        << address
                        << "\"/></draw:frame></table:shapes><table:table-row><table:table-cell/></table:table-row>"
                           "</table:table></office:spreadsheet></office:body></office:document>";
    return file;
}

void open_in(office::Office& office, std::filesystem::path const& file) {
    office::Document workbook = office::Document::open(office, file, office::Access::read_write);
    workbook.save(file.parent_path() / "copy.fods"); // pictures may be fetched only now
}

} // namespace

TEST(AConfinedOffice, AsksNoServerAndOpensNothingElsewhere) {
    if (office::confining() == nullptr)
        GTEST_SKIP() << "bubblewrap is not allowed here";
    Folder const folder, elsewhere;
    office::Office office({.confining = office::confining(), .only_folder = folder.path});
    ASSERT_TRUE(office.is_confined());
    Server const server;
    open_in(office, workbook_with_picture(folder.path, server.url()));
    EXPECT_FALSE(server.was_asked());
    // Who opens this one waits for ever.
    ASSERT_EQ(::mkfifo((elsewhere.path / "a.png").c_str(), 0600), 0);
    open_in(office, workbook_with_picture(folder.path, "file://" + (elsewhere.path / "a.png").string()));
    // It sees neither us nor our files.
    EXPECT_THROW(office::Document::open(office, "/proc/self/exe"), std::exception);
}

TEST(AnOfficeThatIsNotConfined, AsksTheServer) {
    Folder const folder;
    office::Office office;
    ASSERT_FALSE(office.is_confined());
    Server const server;
    // The server never answers: the office waits for it until it is ended.
    std::thread opening([&] {
        try {
            open_in(office, workbook_with_picture(folder.path, server.url()));
        } catch (std::exception const&) { // it was ended
        }
    });
    auto const patience = std::chrono::steady_clock::now() + std::chrono::minutes(1);
    while (!server.was_asked() && std::chrono::steady_clock::now() < patience)
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    EXPECT_TRUE(server.was_asked()) << "the test above would not notice anything";
    office.kill();
    opening.join();
}

} // namespace hearthcell::tests::archive
