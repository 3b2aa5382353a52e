#pragma once

#include "archive/pool.hpp"
#include "archive/summary.hpp"
#include "archive/task.hpp"

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

/// Writes changes.csv, collected.csv, problems.csv and summary.txt from what is finished and what failed: in the order
/// of the files, whoever did them and when.
Summary write_reports(Task const& task, Ran const& ran);

} // namespace hearthcell::archive
