#pragma once
// The check of a workbook, as the reports of an archive tell it.

#include "extension/archive/files/value.hpp"
#include "extension/office/document.hpp"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// Something that is wrong or odd about a call.
struct CheckRemark {
    std::string sheet, cell; // D2, D2:D9, or words for what is no cell
    std::string function, value, sentence, effect;
};

/// What the check of one workbook came to.
struct CheckOutcome {
    std::uint64_t runs = 0, clean = 0; // rows of records and sheets; those without a remark
    std::uint64_t all = 0;             // remarks
    std::vector<CheckRemark> remarks;  // the first of them, the worst runs first
};

/// In English, as all reports. Changes nothing in the workbook.
CheckOutcome check(office::Office& office, office::Document const& workbook);

/// The same on some cells alone: what is wrong or odd about each.
std::map<Place, std::string> remarks_on(office::Office& office, office::Document const& workbook,
                                        std::set<Place> const& cells);

} // namespace hearthcell::archive
