#pragma once
// What EXPLAIN says of single functions beyond what the catalogue's entry tells of every one. Each is given the
// arguments as the cell has them.

#include "functions/contract/values.hpp"

#include <span>
#include <string>
#include <vector>

namespace hearthcell::remarks {

/// How the numbers and the texts with one colon were understood.
std::vector<std::string> on_minutes(std::span<Value const> arguments);

/// The result that the doubt belongs to, and whether first order is enough.
std::vector<std::string> on_uncertainty(std::span<Value const> arguments);

/// Why the function asked about failed with these values; empty where it is not that which failed.
std::string why_no_uncertainty(std::span<Value const> arguments);

} // namespace hearthcell::remarks
