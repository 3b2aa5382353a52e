#pragma once
// The results in a file against those of the same workbook now.

#include "extension/archive/recalculation/change.hpp"
#include "extension/archive/recalculation/links.hpp"
#include "extension/archive/recalculation/tally.hpp"
#include "extension/office/document.hpp"

#include <map>
#include <set>
#include <vector>

namespace hearthcell::archive {

struct Comparison {
    std::vector<Change> changes; // in the order of the cells
    Tally tally;
};

/// Numbers that formula cells show.
using Numbers = std::map<Place, double>;

/// Compares the results that a file held with those that its workbook has now. `set`: cells that got another content.
Comparison compare(office::Document const& workbook, StoredResults const& stored, std::set<Place> const& set,
                   Places const& places, Numbers* numbers = nullptr);

} // namespace hearthcell::archive
