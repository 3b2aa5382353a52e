#pragma once
// One workbook from opening to saving, in an office.

#include "extension/archive/files/format.hpp"
#include "extension/archive/recalculation/carrying.hpp"
#include "extension/archive/recalculation/old_and_new.hpp"
#include "extension/archive/recalculation/options.hpp"
#include "extension/archive/recalculation/outcome.hpp"
#include "extension/office/office.hpp"

#include <filesystem>
#include <optional>
#include <string>

namespace hearthcell::archive {

/// A private copy of a workbook, on which the office may do as it likes.
struct PrivateCopy {
    std::filesystem::path file, original;
    Format format;
    std::optional<StoredResults> stored; // nothing: only the office can read them
};

/// What the examples of a run put into a workbook.
struct Carrying {
    PlannedWorkbook& planned;
    ExampleFormats const& formats;
    ExampleSet const& examples;
};

struct Recalculated {
    Outcome outcome;
    std::vector<Change> changes; // in the order of the cells
    std::vector<ComparedRow> compared;
    std::filesystem::path saved; // empty in a dry run
};

/// Opens, sets, recalculates, compares, collects and saves beside the copy.
Recalculated recalculate(office::Office& office, PrivateCopy const& copy, Options const& options,
                         std::string const& edition, Carrying const* carrying = nullptr);

} // namespace hearthcell::archive
