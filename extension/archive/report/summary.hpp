#pragma once
// The counts of a run, and the texts made of them.

#include "extension/archive/records/finished.hpp"

#include <map>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// What the checks of all workbooks came to.
struct CheckCounts {
    bool asked = false;
    std::uint64_t runs = 0, clean = 0, remarks = 0, workbooks = 0; // workbooks: those with remarks
};
/// In a sentence.
std::string words_of(CheckCounts const& counts);

/// What a run comes to. Holds nothing that would differ from one run to the next on the same files.
struct Summary {
    std::string edition;
    std::size_t workbooks = 0;
    std::size_t recalculated = 0;
    std::size_t changed = 0; // workbooks
    std::size_t copies = 0;
    std::size_t in_several_runs = 0; // workbooks, of runs that were joined
    Tally tally;
    CheckCounts remarks;
    std::map<std::string, std::size_t> problems;                // by reason
    std::vector<std::pair<std::string, std::size_t>> collected; // name and in how many workbooks it was found

    void add(Finished const& finished);
};

/// What was done, in two lines.
std::vector<std::string> opening_lines(Summary const& summary);

/// What a function computes by: why its result is another one than it was. Empty for other formulas.
std::string basis(std::string const& function);

std::string text_of(Summary const& summary);
nlohmann::json json_of(Summary const& summary);

} // namespace hearthcell::archive
