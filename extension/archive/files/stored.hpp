#pragma once
// The results of formulas that a file holds, whatever its format.

#include "extension/archive/files/room.hpp"
#include "extension/archive/files/value.hpp"

#include <deque>
#include <filesystem>
#include <optional>
#include <string>

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

/// Read from the files themselves: Calc recalculates the cells of an add-in as it opens the file.
StoredResults stored_in_flat_odf(std::filesystem::path const& file, Room& room);
StoredResults stored_in_odf(std::filesystem::path const& file, Room& room);
StoredResults stored_in_xlsx(std::filesystem::path const& file, Room& room);
std::optional<StoredResults> stored_in_xls(std::filesystem::path const& file, Room& room); // nothing: it is encrypted

} // namespace hearthcell::archive
