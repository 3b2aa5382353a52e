#pragma once
// What the examples of a run put into one workbook.

#include "extension/archive/example/fit.hpp"
#include "extension/archive/example/other_values.hpp"
#include "extension/archive/files/problem.hpp"

#include <memory>

namespace hearthcell::archive {

/// The examples of a run, and what is known of the archive that they go to.
struct ExampleSet {
    std::vector<std::unique_ptr<Example>> examples;
    SameWords same;
    std::vector<OtherValue> other_values; // of constants
    bool partly = false;
    std::string confirmed; // what was said of constants and of what no sheet shows
    /// Of each workbook by its number: the labels of each sheet.
    std::vector<std::vector<std::vector<Label>>> labels;
    std::vector<std::vector<Label>> labels_of_old; // of the sheets of all OLD
};

struct Plan {
    std::vector<Fit> fits;
    std::vector<Problem> problems;
};

/// relative: the workbook's path, as in the reports.
Plan plan_for(ExampleSet const& set, std::string const& relative, SeenWorkbook const& target);

/// Whether the labels are still those of the workbook, which may have been changed since they were looked at.
bool are_labels_of(Contents const& contents, std::vector<std::vector<Label>> const& labels, SameWords const& same);

} // namespace hearthcell::archive
