#pragma once
// What UNCERTAINTY and BUDGET have to say to EXPLAIN.

#include "functions/contract/kernel.hpp"

namespace hearthcell {

/// The result that the uncertainty belongs to, and whether first order is enough.
Sentences remark_on_uncertainty(std::span<Value const> given);

/// Why the function asked about failed with these values; empty where it is not that which failed.
std::string why_no_uncertainty(std::span<Value const> given);

} // namespace hearthcell
