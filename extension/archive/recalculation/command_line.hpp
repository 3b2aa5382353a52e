#pragma once
// The command line, read and checked.

#include "extension/archive/recalculation/options.hpp"

#include <optional>

namespace hearthcell::archive {

/// The options; or, when there is nothing to do (--help, a mistake), the status to exit with, after having said why.
struct Read {
    std::optional<Options> options;
    int status = 0;
};
Read read_options(int count, char const* const* words);

} // namespace hearthcell::archive
