#pragma once
// What is said on standard error while a run goes on.

#include <chrono>
#include <cstddef>
#include <string>

namespace hearthcell::archive {

/// How progress is told.
enum class Telling { nothing, words, lines_of_json };

/// Says on standard error how far a run is: in one line that renews itself where somebody watches a terminal, in plain
/// lines now and then where the output goes into a file; or in lines for a program.
class Progress {
public:
    Progress(std::size_t workbooks, Telling telling);
    ~Progress();
    Progress(Progress const&) = delete;
    Progress& operator=(Progress const&) = delete;

    void done(std::size_t problems); // a workbook, with so many
    void tick();                     // nothing has happened, but time has passed

private:
    [[nodiscard]] std::string words() const;
    [[nodiscard]] std::string line_of_json() const;
    void show(bool now);

    std::size_t const all_;
    std::size_t done_ = 0, problems_ = 0;
    Telling const telling_;
    bool const terminal_;
    bool shown_ = false;
    std::chrono::steady_clock::time_point const start_;
    std::chrono::steady_clock::time_point last_;
};

} // namespace hearthcell::archive
