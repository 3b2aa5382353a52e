#pragma once
// Which workbooks there are.

#include "extension/archive/files/problem.hpp"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// A workbook to be done.
struct Input {
    std::filesystem::path source;
    std::string relative; // in the output folder, and in the reports
};

struct Inputs {
    std::vector<Input> workbooks;            // in the order of their relative paths
    std::filesystem::path base;              // that they are relative to
    std::map<std::string, Problem> problems; // by relative path: what is no workbook, or could not be looked at
};

/// Finds the workbooks in the files and folders given. Links are followed, but not in a circle. Relative paths start
/// at `base`, or else at the deepest folder that holds all that was given.
/// Throws std::invalid_argument where output and input would mix, or an input does not exist at all.
Inputs find_inputs(std::vector<std::filesystem::path> const& given, std::filesystem::path const& base,
                   std::filesystem::path const& output);

} // namespace hearthcell::archive
