#pragma once
// The reports of one run, and of several joined, from the records that lie in their output folders.

#include "extension/archive/report/reports.hpp"
#include "extension/archive/workers/pool.hpp"

#include <memory>

namespace hearthcell::archive {

/// Of a workbook that a run had finished.
extern Problem const record_lost;

/// Fills the reports of a run from what is finished and what failed, whoever did it and when; and keeps what is needed
/// to join them with others'.
void fill_reports(Reports& reports, Task const& task, Ran const& ran);

/// Fills the reports of several runs as if they had been one. Each workbook counts once.
/// Throws std::exception where they cannot be joined.
class Join {
public:
    Join(std::vector<std::filesystem::path> const& outputs, std::filesystem::path const& joined);
    ~Join();
    Join(Join const&) = delete;
    Join& operator=(Join const&) = delete;

    [[nodiscard]] RunFacts facts() const;
    void fill(Reports& reports);

private:
    struct Run;
    [[nodiscard]] std::vector<Run*> due() const; // those whose next file is the first by its name
    static void add(Reports& reports, std::vector<Run*> const& runs);

    std::vector<std::unique_ptr<Run>> runs_;
};

} // namespace hearthcell::archive
