#pragma once
// What came of a check, ready to be shown.

#include "extension/checking/by_hand.hpp"
#include "extension/checking/findings.hpp"
#include "extension/checking/neighbours.hpp"

#include <set>

namespace hearthcell::checking {

/// The remarks of one run: a row of a record, or a sheet.
struct RunRemarks {
    std::string label; // as the record calls it; empty: outside of the runs
    std::vector<Remark> remarks;
};

struct Result {
    std::string summary = {}; // one sentence
    std::size_t runs = 0, clean = 0;
    std::vector<RunRemarks> remarks = {}; // the worst run first
    std::vector<std::string> whole = {};  // what holds for the whole workbook, a sentence each
    std::vector<std::string> sheets = {}; // of the document, in their order
};

/// Marks of remarks that are not to be made again.
using Seen = std::set<std::uint64_t>;

/// From what the document holds and EXPLAIN has answered. In cells of `selection` only, unless it is empty.
Result judge(Contents const& contents, Questions const& questions, Columns const& columns, Language language,
             std::vector<ByHand> const& by_hand, Seen const& seen, std::vector<Range> const& selection);

} // namespace hearthcell::checking
