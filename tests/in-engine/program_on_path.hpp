#pragma once
// hearthcell-archive as an office finds it that is started meanwhile.

#include "tests/support/changed_variable.hpp"

#include <filesystem>
#include <string>

namespace hearthcell::tests {

/// Puts the built program first on the path, as long as this object lives. Where the office runs in another Debian, the
/// program still runs in this one, whose libraries it needs.
class ProgramOnPath {
public:
    explicit ProgramOnPath(std::filesystem::path const& folder); ///< an empty one, or none yet
    /// A script for /bin/sh in its stead.
    ProgramOnPath(std::filesystem::path const& folder, std::string const& script);

private:
    ChangedVariable path_;
};

} // namespace hearthcell::tests
