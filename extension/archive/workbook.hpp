#pragma once

#include "archive/finished.hpp"
#include "archive/format.hpp"
#include "archive/options.hpp"
#include "office/office.hpp"

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

struct Recalculated {
    Finished finished;           // without key and copy
    std::string rows;            // of changes.csv
    std::filesystem::path saved; // empty in a dry run
};

/// Opens, sets, recalculates, compares, collects and saves beside the copy. `relative`: as the reports name it.
Recalculated recalculate(office::Office& office, PrivateCopy const& copy, std::string const& relative,
                         Options const& options, std::string const& edition);

} // namespace hearthcell::archive
