#pragma once
// Copies that an earlier run left in the output folder, for workbooks of which this run has none.

#include "extension/archive/workers/pool.hpp"

#include <string>
#include <utility>
#include <vector>

namespace hearthcell::archive {

/// What became of them.
struct EarlierCopies {
    std::vector<std::string> removed;
    std::vector<std::pair<std::string, std::string>> left; // and why
};

/// Removes the copies of workbooks that failed, are gone, or have another content or other options now. Only what the
/// records say that we wrote, and only as we wrote it. After a run that was stopped those stay which it would have
/// taken as they are.
EarlierCopies remove_earlier_copies(Task const& task, Ran const& ran);

/// "2 copies of an earlier run were removed, since this run has none of these workbooks: a.ods, b.ods"
std::string words_of(EarlierCopies const& copies);

} // namespace hearthcell::archive
