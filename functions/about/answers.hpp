#pragma once
// EXPLAIN, SOURCE and VERSION as the catalogue calls them.

#include "functions/contract/values.hpp"

namespace hearthcell {

/// A function's name, then its arguments.
Outcome answer_explain(std::span<Value const> given);

/// The name of a function, or one that stands in a table of typical values.
Outcome answer_source(std::span<Value const> given);

Outcome answer_version(std::span<Value const> given);

} // namespace hearthcell
