#pragma once
// The table of options, from which the command line is read, and --help and the manual page are written.

#include "extension/archive/recalculation/options.hpp"

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace hearthcell::archive {

extern char const* const description; ///< what the program does
extern char const* const footer;      ///< files, exit status, examples

/// As the command line gives it, before it is checked.
struct Raw {
    std::vector<std::string> inputs, collect, set, compare, example, of;
    std::string output, base, package, office, same_words, values_by_folder;
    Options options;
};

/// Tells the reader of the command line which options there are, and where their values go.
void describe(CLI::App& app, Raw& raw);

} // namespace hearthcell::archive
