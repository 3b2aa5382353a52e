#pragma once
// The results of formulas that a file holds, whatever its format.

#include "extension/archive/files/cells.hpp"

#include <deque>

namespace hearthcell::archive {

/// The result of one formula as the file holds it.
struct Stored {
    Place place;
    Value value;
    bool clock = false;        // a date or time: written in seconds, not in digits of the number
    bool perhaps_text = false; // the number is 0, and may stand for a text that the file does not hold
};

/// All stored results of a workbook, to be looked up by place.
class StoredResults {
public:
    void add(Stored result, Room& room); // throws Trouble(too_large)
    void sort();                         // once, when all are there

    /// Null when the file holds no formula there.
    [[nodiscard]] Stored const* find(Place const& place) const;
    [[nodiscard]] std::size_t size() const { return results_.size(); }

private:
    std::deque<Stored> results_;
};

/// Keeps the results that a reader of files finds: Calc recalculates the cells of an add-in as it opens a file, so that
/// the office cannot tell them any more.
class ResultsFound : public CellSink {
public:
    explicit ResultsFound(Room& room) : room_(room) {}
    StoredResults take();

private:
    void cell(FoundCell&& found) override;

    Room& room_;
    StoredResults results_;
};

} // namespace hearthcell::archive
