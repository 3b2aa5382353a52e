#pragma once
// What stands in hearthcell-archive's place where a test wants to see what it is asked, and to decide what it answers.

#include "program_on_path.hpp"

namespace hearthcell::tests {

/// With an example it plans one cell with a constant and one pair, and then does nothing but leave a summary.
class StandInProgram {
public:
    /// summary: the workbook that it leaves.
    StandInProgram(std::filesystem::path const& folder, std::filesystem::path const& summary);

    /// Another file in the place of one that it gives or looks for: "carried.csv"; "slow": it takes for ever;
    /// "refusal": what it says when it cannot.
    void write(std::string const& file, std::string const& text) const;

    void leave_no_summary() const { std::filesystem::remove(folder_ / "summary.ods"); }

    /// The arguments of its runs, a line each.
    [[nodiscard]] std::string asked() const;
    /// The example that it was given last.
    [[nodiscard]] std::filesystem::path given() const { return folder_ / "given.ods"; }

private:
    std::filesystem::path const folder_;
    ProgramOnPath const program_;
};

} // namespace hearthcell::tests
