#pragma once
// Which runs a document holds, and which of them a cell belongs to.

#include "extension/checking/neighbours.hpp"

#include <compare>
#include <set>

namespace hearthcell::checking {

struct Run {
    int sheet = 0;
    int row = -1; // -1: the sheet as a whole
    auto operator<=>(Run const&) const = default;
};

/// A row of a record is a run: one with a call that was filled down over three rows at least. A sheet without such rows
/// is one run, if it has calls at all.
class Runs {
public:
    Runs(Contents const& contents, Questions const& questions, Columns const& columns);

    [[nodiscard]] std::set<Run> const& all() const { return runs_; }
    /// Nothing for a cell outside of the runs.
    [[nodiscard]] std::optional<Run> of(Place const& cell) const;
    /// What the record calls it: what its row begins with, or the row's number; with the sheet's name where there are
    /// runs on several sheets.
    [[nodiscard]] std::string label(Run const& run) const;

private:
    [[nodiscard]] bool is_label(std::map<Place, Content>::const_iterator const& cell) const;

    Contents const& contents_;
    std::set<Run> runs_;
    bool several_sheets_ = false;
};

} // namespace hearthcell::checking
