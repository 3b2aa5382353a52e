#pragma once
// The output folder, locked for one run.

#include <filesystem>

namespace hearthcell::archive {

/// The output folder while a run is at work in it: nobody else's, and with room kept for the reports of a full disk.
class OutputFolder {
public:
    explicit OutputFolder(std::filesystem::path const& output); // throws std::exception
    ~OutputFolder();
    OutputFolder(OutputFolder const&) = delete;
    OutputFolder& operator=(OutputFolder const&) = delete;

    void release_room();

private:
    std::filesystem::path state_;
    int lock_ = -1;
};

/// Of a run that was made and is now read: nobody may be at work in it meanwhile.
class QuietFolder {
public:
    explicit QuietFolder(std::filesystem::path const& output); // throws std::exception
    ~QuietFolder();
    QuietFolder(QuietFolder&& other) noexcept;
    QuietFolder(QuietFolder const&) = delete;
    QuietFolder& operator=(QuietFolder const&) = delete;

private:
    int lock_ = -1;
};

} // namespace hearthcell::archive
