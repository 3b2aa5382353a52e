#pragma once
// What a run is to do.

#include "extension/archive/recalculation/assignment.hpp"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::archive {

/// What the command line says.
struct Options {
    std::vector<std::filesystem::path> inputs;
    std::filesystem::path output;
    std::filesystem::path base; // paths in the output are relative to it; found by itself when empty
    std::filesystem::path package;
    std::filesystem::path office; // an installation of LibreOffice; found by itself when empty
    unsigned workers = 1;
    double time_limit = 60;            // seconds
    unsigned recycle = 100;            // files
    std::uint64_t size_limit = 1024;   // MiB
    std::uint64_t memory_limit = 2048; // MiB
    std::vector<std::string> collect;
    std::vector<Assignment> set;
    std::vector<ComparedPair> compare;
    std::filesystem::path same_words; // of an inventory: a file; may be empty
    struct ExamplePair {
        std::filesystem::path now, old;
    };
    std::vector<ExamplePair> examples;      // --example, --of
    std::filesystem::path values_by_folder; // may be empty
    bool yes = false, plan = false, a_few = false, partly = false;
    bool null_separated = false, merge = false, summary = true, values = false, dry_run = false, check = false,
         strict = false, inventory = false, quiet = false, json = false, progress_lines = false;
};

} // namespace hearthcell::archive
