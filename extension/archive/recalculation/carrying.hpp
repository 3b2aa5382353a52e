#pragma once
// What a plan puts into a workbook that is open in an office.

#include "extension/archive/files/format.hpp"
#include "extension/archive/recalculation/example_formats.hpp"

#include <set>

namespace hearthcell::archive {

/// A workbook, read without an office, and what the examples of a run put into it. Its parts refer to each other.
struct PlannedWorkbook {
    Room room;
    Contents contents;
    std::optional<SeenWorkbook> seen;
    Plan plan;

    explicit PlannedWorkbook(std::uint64_t largest) : room(Room::for_workbooks_up_to(largest)), contents(room) {}
};

struct CarriedInto {
    std::set<Place> cells; // that were written
    std::uint64_t formulas = 0, sheets = 0;
};

/// Writes what fits also by its number formats; what does not is left alone, taken out of the plan and named among the
/// problems.
CarriedInto carry(office::Document const& workbook, Format format, Plan& plan, ExampleFormats const& formats);

} // namespace hearthcell::archive
