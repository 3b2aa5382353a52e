#pragma once

#include "archive/change.hpp"
#include "archive/tally.hpp"
#include "office/document.hpp"

#include <filesystem>
#include <set>
#include <vector>

namespace hearthcell::archive {

/// Where a private copy lies, and the original: links that are relative must be shown as the original's.
struct Places {
    std::filesystem::path copy, original; // folders
};

struct Comparison {
    std::vector<Change> changes; // in the order of the cells
    Tally tally;
};

/// Compares the results that a file held with those that its workbook has now. `set`: cells that got another content.
Comparison compare(office::Document const& workbook, StoredResults const& stored, std::set<Place> const& set,
                   Places const& places);

} // namespace hearthcell::archive
