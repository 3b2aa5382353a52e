#pragma once
// Zip files for the fuzzer of the readers.

#include <string>
#include <utility>
#include <vector>

namespace hearthcell::tests {

/// A zip file of these entries, not compressed: quick to make, and well-formed whatever the entries hold.
std::string stored_zip(std::vector<std::pair<std::string, std::string>> const& entries);

} // namespace hearthcell::tests
