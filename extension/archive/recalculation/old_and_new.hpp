#pragma once
// --compare: results of today beside those that a file held.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/stored.hpp"
#include "extension/archive/recalculation/assignment.hpp"
#include "extension/archive/recalculation/beside.hpp"
#include "extension/archive/recalculation/remarks.hpp"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A new cell and the old one that it is set against.
struct CellPair {
    std::size_t pair = 0; // of those that were asked for
    Place now, old;
    bool carried = false; // the new one is there only when an example was carried into it
};

/// What stands where in one workbook. Made before anything is set, for then the old results are still there.
class OldAndNew {
public:
    OldAndNew(office::Document const& workbook, std::vector<CellPair> cells, StoredResults const& stored);

    /// Leaves out pairs whose new cell was to be carried and was not.
    void keep_written(std::set<Place> const& cells);

    /// After the workbook was recalculated. It is the same afterwards.
    [[nodiscard]] std::vector<ComparedRow> rows(office::Office& office, office::Document const& workbook) const;

private:
    std::vector<CellPair> cells_;
    std::map<Place, Value> before_;
};

/// The cells that a pair names in a workbook; none where it has one half of them or neither. found: gains two, whether
/// the workbook has the new cells, and the old ones.
std::vector<CellPair> cells_of_pair(office::Document const& workbook, std::size_t number, ComparedPair const& pair,
                                    std::vector<bool>& found, std::vector<Problem>& problems);

} // namespace hearthcell::archive
