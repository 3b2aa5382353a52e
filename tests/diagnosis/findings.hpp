#pragma once
// What LOGCHECK finds in a log.

#include "log/logs.hpp"

namespace hearthcell::tests {

struct Finding {
    std::string words;
    unsigned row; ///< 0: the whole log
};

std::vector<Finding> findings_of(Outcome const& outcome);
std::vector<Finding> check(LogColumns const& log, std::vector<Value> more = {});
std::string listed(std::vector<Finding> const& findings); ///< "row: words", a line each

/// The one and only finding says this about that row.
void expect_only(std::vector<Finding> const& findings, std::string_view part, unsigned row);
void expect_nothing(std::vector<Finding> const& findings);

/// A heating with a reading every minute to plant slips in; its boiling point, mass of water and air.
LogColumns heating();
inline std::vector<Value> const known{95.0, 5000.0, 20.0};

} // namespace hearthcell::tests
