#pragma once
// What a run is about, known to the scheduler and, since they are forks of it, to all workers.

#include "extension/archive/example/plan.hpp"
#include "extension/archive/recalculation/options.hpp"
#include "extension/archive/records/run_index.hpp"
#include "extension/archive/workers/inputs.hpp"

#include <filesystem>
#include <memory>
#include <string>

namespace hearthcell::archive {

/// All that a run is about, settled before the first worker starts.
struct Task {
    Options options;
    Inputs inputs;
    std::filesystem::path output;         // absolute
    std::filesystem::path package;        // absolute
    std::string edition;                  // of the package: "Hearthcell 0.2.0"
    SameWords same_words;                 // of an inventory
    std::shared_ptr<ExampleSet> examples; // null: there are none
    std::string key_of_options;           // hash of package and of the options that make a difference

    [[nodiscard]] RunFacts facts() const;

    /// What a finished workbook is recognised by.
    [[nodiscard]] std::string key(std::string const& hash_of_content) const {
        return edition + " " + key_of_options + " " + hash_of_content;
    }
    [[nodiscard]] std::string key(std::size_t workbook, std::string const& hash_of_content) const;
};

/// Throws std::exception where it cannot be run.
Task make_task(Options options);

} // namespace hearthcell::archive
