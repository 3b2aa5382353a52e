#include "extension/office/socket_files.hpp"

#include "extension/office/process.hpp"
#include "extension/office/profile.hpp"

#include <rtl/digest.h>

#include <unistd.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <system_error>
#include <thread>

namespace hearthcell::office {
namespace {

constexpr auto note_name = "sockets";
constexpr auto dying_time = std::chrono::seconds(5); // of a large process on a busy machine

/// What the office calls the socket by which a second one of the same profile would find it: a digest of the profile's
/// URL in letters of two bytes, each byte in as few digits as it needs.
std::string single_office(std::string const& profile) {
    std::string letters;
    for (char const letter : profile) { // a URL is ASCII
        letters += letter;
        letters += '\0';
    }
    std::array<sal_uInt8, RTL_DIGEST_LENGTH_MD5> digest{};
    rtl_digest_MD5(letters.data(), static_cast<sal_uInt32>(letters.size()), digest.data(), digest.size());
    std::string name = "SingleOfficeIPC_";
    for (sal_uInt8 const byte : digest) {
        std::array<char, 4> digits{};
        std::snprintf(digits.data(), digits.size(), "%x", byte);
        name += digits.data();
    }
    return name;
}

/// Where an office puts them: it takes the first of these folders that it may write to, whatever TMPDIR says.
constexpr std::array folders{"/tmp", "/var/tmp"};

std::string prefix() {
    return "OSL_PIPE_" + std::to_string(::getuid()) + "_";
}

void remove_socket(std::filesystem::path const& file) {
    std::error_code ignored;
    if (std::filesystem::is_socket(std::filesystem::symlink_status(file, ignored)))
        std::filesystem::remove(file, ignored);
}

/// An office that is dying may still be making a socket, which nobody would know of once the note is gone.
void wait_for_office(std::filesystem::path const& folder) {
    auto const end = std::chrono::steady_clock::now() + dying_time;
    while (is_written(Profile::log_in(folder)) && std::chrono::steady_clock::now() < end)
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
}

void remove_those_in(std::filesystem::path const& folder) {
    std::ifstream list(folder / note_name);
    if (!list)
        return;
    wait_for_office(folder);
    for (std::string file; std::getline(list, file);)
        if (std::filesystem::path(file).filename().string().starts_with(prefix()))
            remove_socket(file);
}

} // namespace

SocketFiles::SocketFiles(std::string const& profile, std::string const& pipe, std::filesystem::path const& folder)
    : note_(folder / note_name) {
    for (char const* place : folders)
        for (std::string const& name : {single_office(profile), pipe})
            paths_.push_back(std::filesystem::path(place) / (prefix() + name));
    std::ofstream note(note_);
    for (auto const& path : paths_)
        note << path.string() << '\n';
    if (!note.flush())
        throw std::system_error(std::make_error_code(std::errc::io_error), note_.string());
}

SocketFiles::~SocketFiles() {
    for (auto const& path : paths_)
        remove_socket(path);
    std::error_code ignored;
    std::filesystem::remove(note_, ignored);
}

void remove_noted_sockets(std::filesystem::path const& folder) {
    remove_those_in(folder);
    std::error_code ended; // it may vanish while we read
    std::filesystem::directory_iterator below(folder, ended);
    for (; !ended && below != std::filesystem::directory_iterator(); below.increment(ended))
        remove_those_in(below->path());
}

} // namespace hearthcell::office
