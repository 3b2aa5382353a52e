#pragma once
// One result as an OpenDocument file writes it.

#include "extension/archive/files/value.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace hearthcell::archive {

/// What an OpenDocument file says of the result in a cell.
struct OdfCell {
    std::string_view type; // float, percentage, currency, date, time, boolean, string; empty: no result
    std::string_view raw;  // the attribute of that type
    std::optional<std::string> const& string_value;
    std::string_view shown; // its paragraphs
    bool fault;             // said to be an error
    double null_date;       // days since 1970
};

/// The result as Calc would have it in the cell: a date is a number of days.
Value value_of(OdfCell const& cell);

/// "2019-05-31" or "2019-05-31T12:00:00.5" as days since 1970-01-01.
std::optional<double> days_since_1970(std::string_view text);

inline constexpr double usual_null_date = -25569; // 1899-12-30

} // namespace hearthcell::archive
